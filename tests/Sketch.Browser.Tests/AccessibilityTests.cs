using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Each state of the page, judged by axe-core in light and in dark.</summary>
public sealed class AccessibilityTests(Browsers browsers) : OnPage(browsers)
{
    private async Task Show(string state)
    {
        switch (state)
        {
            case "Papers":
                await OpenTab("Papers");
                await Button("Show the card in many papers").ClickAsync();
                await Page.Locator(".variant").First.ClickAsync();
                break;
            case "Shelf":
                await Page.Locator("#file").SelectOptionAsync("museum.stash");
                await Expect(Page.Locator("#panel-shelf .swatch").First).ToBeVisibleAsync();
                break;
            case "Sheets":
                await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
                await Button("Work out the sheets").ClickAsync();
                await Expect(Page.Locator(".plan svg").First).ToBeVisibleAsync();
                break;
            case "findings":
                await TypeAt(9, ", rigth 1/4");
                await TypeAt(8, ", left 3");
                await Expect(Findings.First).ToContainTextAsync("Line");
                await Page.Locator("summary").First.ClickAsync();
                break;
            case "question":
                await TypeAt(1, " # mine");
                Write("watch.card", Card + "# theirs\n");
                await Expect(Page.Locator("#notice")).ToBeVisibleAsync();
                break;
            case "new file":
                await Button("Begin a new file…").ClickAsync();
                break;
            case "earlier texts":
                await TypeAt(1, " # mine");
                await Button("Save").ClickAsync();
                await Expect(State).ToHaveTextAsync("Saved");
                await Button("Earlier texts…").ClickAsync();
                await Expect(Page.Locator("#earlier-list")).ToBeVisibleAsync();
                break;
            default:
                await OpenTab(state);
                break;
        }
    }

    [Theory]
    [InlineData("Picture")]
    [InlineData("Papers")]
    [InlineData("Sizes")]
    [InlineData("Templates")]
    [InlineData("Shelf")]
    [InlineData("Sheets")]
    [InlineData("findings")]
    [InlineData("question")]
    [InlineData("new file")]
    [InlineData("earlier texts")]
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
    public async Task The_severity_of_a_finding_is_told_in_words()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings.First).ToContainTextAsync("Error");
    }

    [Fact]
    public async Task Each_picture_says_what_it_shows() => await Expect(Page.GetByRole(AriaRole.Img, new() { Name = "Front, 4 1/4 x 5 1/2 in" })).ToBeVisibleAsync();

    [Fact]
    public async Task What_was_found_is_told_to_screen_readers()
    {
        await Expect(Page.Locator("#summary")).ToHaveAttributeAsync("role", "status");
        await TypeAt(9, ", rigth 1/4");
        await Expect(Page.Locator("#summary")).ToContainTextAsync("1 error");
    }
}
