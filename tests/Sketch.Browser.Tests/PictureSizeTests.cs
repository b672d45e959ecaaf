using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>The size of pictures on the screen. CSS Values and Units 3: 96 px to the inch.</summary>
public sealed class PictureSizeTests(Browsers browsers) : OnPage(browsers)
{
    [Theory]
    [InlineData(1280, "True size", 1)]
    [InlineData(1280, "Double size", 2)]
    [InlineData(820, "True size", 1)]
    [InlineData(820, "Double size", 2)]
    [InlineData(400, "True size", 1)]
    public async Task An_inch_has_the_chosen_length_even_in_a_narrow_window(int width, string size, int times)
    {
        await Page.SetViewportSizeAsync(width, 900);
        await Page.GetByLabel("Unfolded, with the score line").CheckAsync();
        await Page.GetByLabel("Size", new() { Exact = true }).SelectOptionAsync(size);
        await Expect(Page.Locator("figcaption").First).ToContainTextAsync("8 1/2 x 5 1/2 in");
        var box = (await Picture.First.BoundingBoxAsync())!;
        Assert.Equal(8.5 * 96 * times, box.Width, 0.5);
        Assert.Equal(5.5 * 96 * times, box.Height, 0.5);
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(820)]
    public async Task A_picture_too_large_for_its_pane_scrolls_in_the_pane(int width)
    {
        await Page.SetViewportSizeAsync(width, 900);
        await Page.GetByLabel("Unfolded, with the score line").CheckAsync();
        await Page.GetByLabel("Size", new() { Exact = true }).SelectOptionAsync("Double size");
        await Expect(Page.Locator("figcaption").First).ToContainTextAsync("8 1/2 x 5 1/2 in");
        const string PaneScrolls = "pane => pane.scrollWidth > pane.clientWidth && pane.clientHeight < innerHeight";
        const string PageScrollsAcross = "page => page.scrollWidth > page.clientWidth";
        Assert.True(await Page.Locator(".faces").EvaluateAsync<bool>(PaneScrolls));
        Assert.False(await Page.Locator("html").EvaluateAsync<bool>(PageScrollsAcross));
    }

    [Theory]
    [InlineData(1280, 900)]
    [InlineData(1280, 600)]
    [InlineData(1920, 700)]
    [InlineData(820, 700)]
    public async Task A_fitted_picture_is_entirely_visible(int width, int height)
    {
        await Page.SetViewportSizeAsync(width, height);
        // Within the room that the bar leaves, which stays visible only in large windows.
        await Page.Locator(".shown").EvaluateAsync("pane => pane.scrollIntoView()");
        await Page.WaitForFunctionAsync("() => document.querySelector('.faces figcaption').getBoundingClientRect().bottom <= innerHeight");
        var box = (await Picture.First.BoundingBoxAsync())!;
        Assert.InRange(box.X + box.Width, 0, width);
        Assert.InRange(box.Y, 0, height);
        // The room is used as well: a card that is taller than wide takes most of the height.
        Assert.InRange(box.Height, height * 0.4, height);
    }

    [Theory]
    [InlineData("True size")]
    [InlineData("Fit to window")]
    public async Task A_newly_opened_file_is_shown_from_its_top(string size)
    {
        var more = string.Concat(Enumerable.Repeat("# more\n", 200));
        Write("first.card", Card.Replace("base A2", "base 9 x 12", StringComparison.Ordinal) + more);
        Write("second.card", Card.Replace("base A2", "base 9 x 12", StringComparison.Ordinal) + more + "# end\n");
        await Expect(Page.Locator("#file option[value='second.card']")).ToHaveCountAsync(1);
        await Page.GetByLabel("Size", new() { Exact = true }).SelectOptionAsync(size);
        await Page.SetViewportSizeAsync(1000, 400);
        await Page.Locator("#file").SelectOptionAsync("first.card");
        await Expect(Page.Locator("figcaption").First).ToContainTextAsync("9 x 12 in");
        Assert.NotEqual([0], (await Scrolled(to: 200)).Distinct());
        await Page.Locator("#file").SelectOptionAsync("second.card");
        await Expect(State).ToHaveTextAsync("Saved");
        await Expect(Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("second.card$"));
        Assert.Equal([0], (await Scrolled()).Distinct());
    }

    [Theory]
    [InlineData(1920)]
    [InlineData(1280)]
    [InlineData(820)]
    public async Task The_picture_covers_none_of_the_variants(int width)
    {
        await Page.SetViewportSizeAsync(width, 800);
        await OpenTab("Papers");
        await Button("Show the card in many papers").ClickAsync();
        await Expect(Page.Locator(".variant").First).ToBeVisibleAsync();
        Assert.Empty(await Page.EvaluateAsync<string[]>("""
            () => {
              const covered = [];
              for (const variant of document.querySelectorAll('.variant')) {
                variant.scrollIntoView({ block: 'center' });
                const box = variant.getBoundingClientRect();
                for (const across of [.1, .5, .9]) {
                  for (const down of [.1, .5, .9]) {
                    const met = document.elementFromPoint(box.left + box.width * across, box.top + box.height * down);
                    if (!variant.contains(met)) covered.push(`${variant.textContent}: ${met?.className}`);
                  }
                }
              }
              return covered;
            }
            """));
    }

    /// <summary>The scroll positions of the window, the text and the pictures.</summary>
    /// <param name="to">The position to scroll to first, or null.</param>
    private Task<int[]> Scrolled(int? to = null) => Page.EvaluateAsync<int[]>("""
        (to) => {
          const parts = [document.scrollingElement, ...['.words', '.cm-scroller', '.faces'].map((name) => document.querySelector(name))];
          if (to !== null) parts.forEach((part) => part.scrollTo(to, to));
          return parts.flatMap((part) => [Math.round(part.scrollTop), Math.round(part.scrollLeft)]);
        }
        """, to);
}
