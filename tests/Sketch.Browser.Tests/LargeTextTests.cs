using Xunit;

namespace Sketch.Browser.Tests;

/// <summary>Narrow windows and text at twice the size: nothing is clipped or overlaps, and the page scrolls only vertically.</summary>
public sealed class LargeTextTests(Browsers browsers) : OnEachState(browsers)
{
    /// <summary>Width of the window and size of text: a desktop at 200 % (WCAG 2.2, 1.4.4), tablets, and 320 px wide (1.4.10).</summary>
    private static readonly (int Width, int Percent)[] Sizes = [(1280, 200), (640, 200), (768, 100), (600, 100), (320, 100)];

    [Theory]
    [MemberData(nameof(States))]
    public async Task Nothing_is_clipped_or_overlaps(string state)
    {
        await Show(state);
        var faults = new List<string>();
        foreach (var (width, percent) in Sizes)
        {
            await Page.SetViewportSizeAsync(width, 900);
            await Page.EvaluateAsync(SetTextSize, percent);
            faults.AddRange((await Page.EvaluateAsync<string[]>(Faults)).Select(fault => $"{width} px wide, text at {percent} %: {fault}"));
        }

        Assert.Empty(faults);
    }

    /// <summary>Sets the text size and waits until the page has been laid out and painted again.</summary>
    private const string SetTextSize = """
        async (percent) => {
          document.documentElement.style.fontSize = `${percent}%`;
          for (let frames = 0; frames < 2; frames += 1) await new Promise(requestAnimationFrame);
        }
        """;

    /// <summary>
    /// Checks every control (only those of a question if one is open): it is in the window, contains its words and overlaps no other.
    /// </summary>
    private const string Faults = """
        () => {
          // Scrolled content goes beneath the bar, and in a question beneath its answers.
          scrollTo(0, 0);
          document.querySelector('dialog[open]')?.scrollTo(0, 100000);
          const faults = [];
          const page = document.documentElement;
          if (page.scrollWidth > page.clientWidth)
              faults.push(`the page is ${page.scrollWidth} px wide in a window of ${page.clientWidth}`);
          const name = (c) => `${c.tagName} ${c.id || c.textContent.trim().slice(0, 30)}`;
          const asked = document.querySelector('dialog[open]') ?? document;
          const controls = [...asked.querySelectorAll('a[href], button, select, input, summary, legend, h1, h2, h3, label')]
            .filter((c) => c.checkVisibility() && !c.closest('.cm-editor') && !c.matches('.skip, #words-title'));
          const boxes = controls.map((c) => c.getBoundingClientRect());
          controls.forEach((c, i) => {
            const scrolls = c.closest('.table, figure.large');
            if (!scrolls && (boxes[i].left < -.5 || boxes[i].right > page.clientWidth + .5))
                faults.push(`${name(c)} is cut off at the side`);
            if (c.tagName === 'BUTTON' && (c.scrollWidth > c.clientWidth + 1 || c.scrollHeight > c.clientHeight + 1))
                faults.push(`${name(c)} is too small for its words`);
            controls.slice(i + 1).forEach((d, j) => {
              if (c.contains(d) || d.contains(c)) return;
              const [a, b] = [boxes[i], boxes[i + 1 + j]];
              const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
              const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
              if (across > 1 && down > 1 && !(c.tagName === 'LEGEND' || d.tagName === 'LEGEND'))
                  faults.push(`${name(c)} and ${name(d)} overlap`);
            });
          });
          return faults;
        }
        """;
}
