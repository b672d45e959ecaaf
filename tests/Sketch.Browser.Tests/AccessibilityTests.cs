using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Each state of the page, checked by axe-core in light and in dark mode.</summary>
public sealed class AccessibilityTests(Browsers browsers) : OnEachState(browsers)
{
    /// <summary>The rules of axe-core about colours. The other rules give the same result in light and in dark mode.</summary>
    private static readonly AxeRunOptions OnlyColours = new()
    {
        RunOnly = RunOnlyOptions.Rules("color-contrast", "link-in-text-block"),
        ResultTypes = [ResultType.Violations],
    };

    private static readonly AxeRunOptions All = new() { ResultTypes = [ResultType.Violations] };

    [Theory]
    [MemberData(nameof(States))]
    public async Task The_page_has_no_accessibility_violations(string state)
    {
        await Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce, ColorScheme = ColorScheme.Light });
        await Show(state);
        Assert.Empty(Barriers(await Page.RunAxe(All)));
        await Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        Assert.Empty(Barriers(await Page.RunAxe(OnlyColours)));
    }

    [Fact]
    public async Task The_severity_of_a_finding_is_given_in_words()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings.First).ToContainTextAsync("Error");
    }

    [Fact]
    public async Task Each_picture_has_a_text_alternative() =>
        await Expect(Page.GetByRole(AriaRole.Img, new() { Name = "Front, 4 1/4 x 5 1/2 in" })).ToBeVisibleAsync();

    [Fact]
    public async Task Findings_are_announced_to_screen_readers()
    {
        await Expect(Page.Locator("#summary")).ToHaveAttributeAsync("role", "status");
        await TypeAt(9, ", rigth 1/4");
        await Expect(Page.Locator("#summary")).ToContainTextAsync("1 error");
    }

    private static IEnumerable<string> Barriers(AxeResult result) =>
        result.Violations.Select(v => $"{v.Id}: {v.Help} ({string.Join(", ", v.Nodes.Select(n => n.Html))})");
}
