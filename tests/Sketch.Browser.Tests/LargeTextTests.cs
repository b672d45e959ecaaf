using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Narrow windows, and text twice as large: nothing is cut off, nothing overlaps, and the page moves only up and down.</summary>
public sealed class LargeTextTests(Browsers browsers) : OnPage(browsers)
{
    /// <summary>Width of the window and size of text: a desktop at 200 % (WCAG 2.2, 1.4.4), tablets, and 320 px wide (1.4.10).</summary>
    public static TheoryData<int, int> Windows() => new() { { 1280, 200 }, { 640, 200 }, { 768, 100 }, { 600, 100 }, { 320, 100 } };

    private static readonly string[] States = ["Picture", "Papers", "Sizes", "Templates", "findings", "question", "Shelf", "Sheets"];

    private async Task Show(string state)
    {
        switch (state)
        {
            case "findings":
                await TypeAt(9, ", rigth 1/4");
                await Expect(Findings.First).ToContainTextAsync("rigth");
                await Page.Keyboard.PressAsync("Escape");
                break;
            case "question":
                await TypeAt(1, " # mine");
                Write("watch.card", Card + "# theirs\n");
                await Expect(Page.Locator("#notice")).ToBeVisibleAsync();
                break;
            case "Sheets":
                await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
                await Button("Work out the sheets").ClickAsync();
                await Expect(Page.Locator(".plan svg").First).ToBeVisibleAsync();
                break;
            case "Shelf":
                await Page.Locator("#file").SelectOptionAsync("museum.stash");
                await Expect(Page.Locator("#panel-shelf .swatch").First).ToBeVisibleAsync();
                break;
            case "Papers":
                await OpenTab("Papers");
                await Button("Show the card in many papers").ClickAsync();
                await Expect(Page.Locator(".variant").First).ToBeVisibleAsync();
                break;
            default:
                await OpenTab(state);
                break;
        }
    }

    [Theory]
    [MemberData(nameof(Windows))]
    public async Task Nothing_is_cut_off_and_nothing_overlaps(int width, int percent)
    {
        await Page.SetViewportSizeAsync(width, 900);
        await Page.EvaluateAsync("percent => { document.documentElement.style.fontSize = `${percent}%`; }", percent);
        var faults = new List<string>();
        foreach (var state in States)
        {
            await Show(state);
            faults.AddRange((await Page.EvaluateAsync<string[]>(Faults)).Select(f => $"{state}: {f}"));
        }

        Assert.Empty(faults);
    }

    /// <summary>Looks at every control: within the window, its words within itself, and none upon another.</summary>
    private const string Faults = """
        () => {
          const faults = [];
          const page = document.documentElement;
          if (page.scrollWidth > page.clientWidth) faults.push(`the page is ${page.scrollWidth} px wide in a window of ${page.clientWidth}`);
          const name = (c) => `${c.tagName} ${c.id || c.textContent.trim().slice(0, 30)}`;
          const controls = [...document.querySelectorAll('a[href], button, select, input, summary, legend, h1, h2, h3, label')]
            .filter((c) => c.checkVisibility() && !c.closest('.cm-editor, dialog') && !c.matches('.skip, #words-title'));
          const boxes = controls.map((c) => c.getBoundingClientRect());
          controls.forEach((c, i) => {
            const scrolls = c.closest('.table, figure.large');
            if (!scrolls && (boxes[i].left < -.5 || boxes[i].right > page.clientWidth + .5)) faults.push(`${name(c)} is cut off at the side`);
            if (c.tagName === 'BUTTON' && (c.scrollWidth > c.clientWidth + 1 || c.scrollHeight > c.clientHeight + 1)) faults.push(`${name(c)} is too small for its words`);
            controls.slice(i + 1).forEach((d, j) => {
              if (c.contains(d) || d.contains(c)) return;
              const [a, b] = [boxes[i], boxes[i + 1 + j]];
              const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
              const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
              if (across > 1 && down > 1 && !(c.tagName === 'LEGEND' || d.tagName === 'LEGEND')) faults.push(`${name(c)} and ${name(d)} overlap`);
            });
          });
          return faults;
        }
        """;
}
