using Microsoft.Playwright;

namespace Sketch.Benchmarks;

/// <summary>
/// From a key on the page to the new picture on the screen, in Chromium: the time from the key's event to the frame after the picture's SVG
/// was replaced. Each key is typed as soon as the picture of the previous one is there, and again a tenth of a second later: a good typist
/// makes about eight keys a second (100 words a minute, five characters a word). For comparison, the same keys in a bare text area of the
/// same browser, from the key to the next frame: a lower bound. Goal: 50 ms for 95 of 100 keys on a card of 15 pieces. Then the time from a
/// save by another program to the new picture on the screen; goal: a tenth of a second.
/// </summary>
internal static class Typing
{
    private const string Watch = """
        () => {
          window.times = [];
          window.shownAt = 0;
          let pressed = 0;
          const framed = () => requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => { window.shownAt = performance.timeOrigin + performance.now();
                if (pressed) { window.times.push(performance.now() - pressed); pressed = 0; console.debug('timed'); } };
            port2.postMessage(0);
          });
          addEventListener('keydown', (event) => { pressed = event.timeStamp; if (window.bare) framed(); }, true);
          for (const host of document.querySelectorAll('.faces .picture'))
            new MutationObserver((all) => {
              if (all.some((m) => [...m.addedNodes].some((n) => !n.classList?.contains('marked')))) framed(); })
                .observe(host.shadowRoot, { childList: true, subtree: true });
        }
        """;

    /// <summary>The point before the first letter of the words of the banner, in the pixels of the window.</summary>
    private const string StartOfWords = """
        () => {
          const nodes = document.createTreeWalker(document.querySelector('#editor .cm-content'), NodeFilter.SHOW_TEXT);
          const letter = document.createRange();
          let isBanner = false;
          for (let node = nodes.nextNode(); node; node = nodes.nextNode()) {
            isBanner ||= node.data.includes('banner');
            const at = isBanner ? node.data.indexOf('"') : -1;
            if (at < 0) continue;
            letter.setStart(node, at + 1);
            letter.setEnd(node, at + 2);
            const { left, top, height } = letter.getBoundingClientRect();
            return [left + 1, top + height / 2];
          }
        }
        """;

    /// <summary>Prints a table.</summary>
    /// <param name="keys">The number of keys to type on each card.</param>
    /// <param name="tool">The published program that serves the page; null for this process.</param>
    public static int Run(int keys, string? tool)
    {
        Clock.Print("| card | pause ms | keys | median ms | 95 of 100 below ms | most ms | bare text area: median, 95 of 100 | saved by "
            + "another program: median, 95 of 100 |");
        Clock.Print($"| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var (name, card) in ((string, string)[])[("15 pieces", Cards.FifteenPieces), ("200 pieces", Cards.TwoHundredPieces)])
        {
            foreach (var pause in (int[])[0, 100])
            {
                Measure(name, card, keys, pause, tool).GetAwaiter().GetResult();
            }
        }

        return 0;
    }

    private static async Task Measure(string name, string card, int keys, int pause, string? tool)
    {
        await using var open = await OpenPage.Start(tool, card).ConfigureAwait(false);
        var page = open.Page;
        // First, so that the code of the benchmark is compiled when the keys on the page are measured; nothing of the page is.
        var bare = await open.Bare("<textarea autofocus></textarea>").ConfigureAwait(false);
        await bare.FocusAsync("textarea").ConfigureAwait(false);
        await bare.EvaluateAsync("() => { window.bare = true; }").ConfigureAwait(false);
        var least = await Type(bare, keys, pause, "").ConfigureAwait(false);
        await bare.CloseAsync().ConfigureAwait(false);
        await page.GetByText("banner", new() { Exact = true }).ClickAsync().ConfigureAwait(false);
        var times = await Type(page, keys, pause, ".faces .picture").ConfigureAwait(false);
        var saved = await Save(page, open.CardFile, card).ConfigureAwait(false);
        Clock.Print($"| {name} | {pause} | {times.Length} | {Clock.Quantile(times, 0.5):0.0} | {Clock.Quantile(times, 0.95):0.0} | "
            + $"{times.Max():0.0} | {Clock.Quantile(least, 0.5):0.0}, {Clock.Quantile(least, 0.95):0.0} | "
            + $"{Clock.Quantile(saved, 0.5):0}, {Clock.Quantile(saved, 0.95):0} |");
    }

    /// <summary>Saves the file repeatedly with other words, like another editor.</summary>
    private static async Task<double[]> Save(IPage page, string path, string card)
    {
        const int Times = 40;
        // The typed text is removed again, so the file and the page agree.
        await page.Keyboard.PressAsync("Control+S").ConfigureAwait(false);
        await page.GetByText("Saved", new() { Exact = true }).WaitForAsync().ConfigureAwait(false);
        var times = new double[Times];
        for (var i = 0; i < Times; i++)
        {
            var text = card.Replace("\"Fair winds\", left", $"\"Fair winds {i % 2}\", left", StringComparison.Ordinal);
            var before = (DateTime.UtcNow - DateTime.UnixEpoch).TotalMilliseconds;
            await File.WriteAllTextAsync(path, text).ConfigureAwait(false);
            await page.WaitForFunctionAsync($"() => window.shownAt > {before.ToString(System.Globalization.CultureInfo.InvariantCulture)}")
                .ConfigureAwait(false);
            times[i] = await page.EvaluateAsync<double>("() => window.shownAt").ConfigureAwait(false) - before;
        }

        return times;
    }

    /// <summary>Types letters into the words of the banner and deletes them again; each key changes the picture.</summary>
    private static async Task<double[]> Type(IPage page, int keys, int pause, string pictures)
    {
        if (pictures.Length > 0)
        {
            // The line may wrap, so the keys Home and End would not reach the words.
            var start = await page.EvaluateAsync<float[]>(StartOfWords).ConfigureAwait(false);
            await page.Mouse.ClickAsync(start[0], start[1]).ConfigureAwait(false);
        }

        await page.EvaluateAsync(Watch).ConfigureAwait(false);
        // The page says when a picture is there: asking for that while it is drawn would take the processor from the browser.
        var timed = new SemaphoreSlim(0);
        void Note(object? sender, IConsoleMessage said)
        {
            if (said.Text == "timed")
            {
                timed.Release();
            }
        }

        page.Console += Note;
        for (var i = 0; i < keys; i++)
        {
            await page.Keyboard.PressAsync(i % 2 == 0 ? "k" : "Backspace").ConfigureAwait(false);
            await timed.WaitAsync().ConfigureAwait(false);
            if (pause > 0)
            {
                await page.WaitForTimeoutAsync(pause).ConfigureAwait(false);
            }
        }

        page.Console -= Note;
        return await page.EvaluateAsync<double[]>("() => window.times").ConfigureAwait(false);
    }
}
