using Microsoft.Playwright;

namespace Sketch.Benchmarks;

/// <summary>
/// A piece moved by the pointer on the page, in Chromium: the time from each move of the pointer to the frame that shows the piece there,
/// and from letting go to the frame that shows the picture which the program draws from the changed text. For comparison, a bare square
/// that follows the pointer in the same browser: a lower bound. Goal: 50 ms for 95 of 100 moves on a card of 15 pieces.
/// </summary>
internal static class Moving
{
    private const int Drops = 20;
    private const int MovesOfDrop = 4;

    private const string Watch = """
        () => {
          window.moves = [];
          window.drops = [];
          let [movedAt, droppedAt] = [0, 0];
          const framed = (done) => requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => done(performance.now());
            port2.postMessage(0);
          });
          addEventListener('pointermove', (event) => { movedAt = event.timeStamp; }, true);
          addEventListener('pointerup', (event) => { droppedAt = event.timeStamp; }, true);
          const watched = document.querySelector('.faces .picture')?.shadowRoot ?? document.body;
          new MutationObserver((all) => {
            if (movedAt && all.some((m) => m.attributeName === 'style')) {
              const at = movedAt;
              movedAt = 0;
              framed((now) => window.moves.push(now - at));
            }
            if (droppedAt && all.some((m) => [...m.addedNodes].some((n) => !n.classList?.contains('marked')))) {
              const at = droppedAt;
              droppedAt = 0;
              framed((now) => window.drops.push(now - at));
            }
          }).observe(watched, { attributes: true, childList: true, subtree: true });
        }
        """;

    private const string BareSquare = """
        <div style="position:absolute;left:0;top:0;width:80px;height:80px;background:teal"></div>
        <script>
          addEventListener('pointermove', (event) => {
            document.querySelector('div').style.translate = `${event.clientX}px ${event.clientY}px`;
          });
        </script>
        """;

    /// <summary>Prints a table.</summary>
    /// <param name="moves">The number of moves on each card.</param>
    /// <param name="tool">The published program that serves the page; null for this process.</param>
    public static int Run(int moves, string? tool)
    {
        Clock.Print("| card | moves | median ms | 95 of 100 below ms | most ms | bare square: median, 95 of 100 | let go: median, "
            + "95 of 100 |");
        Clock.Print("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
        Measure("15 pieces", Cards.FifteenPieces, moves, tool).GetAwaiter().GetResult();
        Measure("200 pieces", Cards.TwoHundredPieces, moves, tool).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task Measure(string name, string card, int moves, string? tool)
    {
        await using var open = await OpenPage.Start(tool, card).ConfigureAwait(false);
        var page = open.Page;
        await page.EvaluateAsync(Watch).ConfigureAwait(false);
        var glow = await Glow(page).ConfigureAwait(false);
        await page.Mouse.ClickAsync(glow.X, glow.Y).ConfigureAwait(false);
        await page.Locator(".faces .overlay .handle").First.WaitForAsync().ConfigureAwait(false);
        var times = await Move(page, glow, moves).ConfigureAwait(false);
        await page.Keyboard.PressAsync("Escape").ConfigureAwait(false);
        await page.Mouse.UpAsync().ConfigureAwait(false);
        var drops = await Drop(page).ConfigureAwait(false);
        var bare = await open.Bare(BareSquare).ConfigureAwait(false);
        await bare.EvaluateAsync(Watch).ConfigureAwait(false);
        var least = await Move(bare, (100, 100), moves).ConfigureAwait(false);
        Clock.Print($"| {name} | {times.Length} | {Clock.Quantile(times, 0.5):0.0} | {Clock.Quantile(times, 0.95):0.0} | "
            + $"{times.Max():0.0} | {Clock.Quantile(least, 0.5):0.0}, {Clock.Quantile(least, 0.95):0.0} | "
            + $"{Clock.Quantile(drops, 0.5):0}, {Clock.Quantile(drops, 0.95):0} |");
    }

    /// <summary>Where the small star is on the screen; nothing covers its middle.</summary>
    private static async Task<(float X, float Y)> Glow(IPage page)
    {
        var star = page.Locator(".faces .picture svg g:has(> title:text-matches('star'))").Nth(1);
        var box = await star.BoundingBoxAsync().ConfigureAwait(false) ?? throw new InvalidOperationException("The star is not visible.");
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    /// <summary>Carries the piece round and round with the button pressed; each move changes its place.</summary>
    private static async Task<double[]> Move(IPage page, (float X, float Y) from, int moves)
    {
        await page.Mouse.MoveAsync(from.X, from.Y).ConfigureAwait(false);
        await page.Mouse.DownAsync().ConfigureAwait(false);
        await page.EvaluateAsync("() => { window.moves.length = 0; }").ConfigureAwait(false);
        for (var i = 0; i < moves; i++)
        {
            var angle = i * 0.7;
            await page.Mouse.MoveAsync(from.X + 40 * (float)Math.Cos(angle), from.Y + 40 * (float)Math.Sin(angle)).ConfigureAwait(false);
            await page.WaitForFunctionAsync($"() => window.moves.length > {i}").ConfigureAwait(false);
        }

        return await page.EvaluateAsync<double[]>("() => window.moves").ConfigureAwait(false);
    }

    /// <summary>Moves the piece to and fro, and waits each time for the picture that the program draws.</summary>
    private static async Task<double[]> Drop(IPage page)
    {
        await page.EvaluateAsync("() => { window.drops.length = 0; }").ConfigureAwait(false);
        for (var i = 0; i < Drops; i++)
        {
            var (x, y) = await Glow(page).ConfigureAwait(false);
            await page.Mouse.MoveAsync(x, y).ConfigureAwait(false);
            await page.Mouse.DownAsync().ConfigureAwait(false);
            await page.Mouse.MoveAsync(x, y + (i % 2 == 0 ? 48 : -48), new() { Steps = MovesOfDrop }).ConfigureAwait(false);
            await page.Mouse.UpAsync().ConfigureAwait(false);
            await page.WaitForFunctionAsync($"() => window.drops.length > {i}").ConfigureAwait(false);
        }

        return await page.EvaluateAsync<double[]>("() => window.drops").ConfigureAwait(false);
    }
}
