using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Each state of the page, judged by axe-core in light and in dark.</summary>
public sealed class AccessibilityTests(Browsers browsers) : OnEachState(browsers)
{
    [Theory]
    [MemberData(nameof(States))]
    public async Task The_page_has_no_barriers(string state)
    {
        await Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        await Show(state);
        foreach (var colours in (ColorScheme[])[ColorScheme.Light, ColorScheme.Dark])
        {
            await Page.EmulateMediaAsync(new() { ColorScheme = colours });
            var result = await Page.RunAxe();
            Assert.Empty(result.Violations.Select(v => $"{colours}: {v.Id}: {v.Help} ({string.Join(", ", v.Nodes.Select(n => n.Html))})"));
        }
    }

    [Fact]
    public async Task The_severity_of_a_finding_is_reported_in_words()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings.First).ToContainTextAsync("Error");
    }

    [Fact]
    public async Task Each_picture_says_what_it_shows() =>
        await Expect(Page.GetByRole(AriaRole.Img, new() { Name = "Front, 4 1/4 x 5 1/2 in" })).ToBeVisibleAsync();

    [Fact]
    public async Task What_was_found_is_reported_to_screen_readers()
    {
        await Expect(Page.Locator("#summary")).ToHaveAttributeAsync("role", "status");
        await TypeAt(9, ", rigth 1/4");
        await Expect(Page.Locator("#summary")).ToContainTextAsync("1 error");
    }
}
