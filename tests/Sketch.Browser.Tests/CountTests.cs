using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>The count of a batch: add and take back for each card and stage.</summary>
public sealed partial class CountTests(Browsers browsers) : OnPage(browsers)
{
    private ILocator Stage(string title) => Page.Locator("#panel-count").GetByRole(
        AriaRole.Group, new() { Name = $"{title}, Keepers' watch" });

    private ILocator Number(string title) => Stage(title).Locator(".count");

    private async Task OpenCount()
    {
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await OpenTab("Count");
        await Expect(Number("Cut")).ToHaveTextAsync("0");
    }

    [Fact]
    public async Task An_entry_is_on_the_disk_when_the_page_shows_it()
    {
        await OpenCount();
        await Page.GetByLabel("How many").FillAsync("5");
        await Page.GetByLabel("Note", new() { Exact = true }).FillAsync("by lamplight");
        await Button("Add to Cut, Keepers' watch").ClickAsync();
        await Expect(Number("Cut")).ToHaveTextAsync("5");
        Assert.Matches(Entry(), Read("lamp-day.count"));
    }

    [Fact]
    public async Task Cards_are_taken_back_but_never_more_than_there_are()
    {
        await OpenCount();
        await Button("Add to Glued, Keepers' watch").ClickAsync();
        await Button("Take back from Glued, Keepers' watch").ClickAsync();
        await Expect(Number("Glued")).ToHaveTextAsync("0");
        await Button("Take back from Glued, Keepers' watch").ClickAsync();
        await Expect(Page.Locator("#panel-count").GetByRole(AriaRole.Status)).ToContainTextAsync("Only 0 of");
    }

    [Fact]
    public async Task The_keyboard_counts_and_keeps_its_place()
    {
        await OpenCount();
        var add = Button("Add to In envelope, Keepers' watch");
        await add.FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Number("In envelope")).ToHaveTextAsync("1");
        await Expect(add).ToBeFocusedAsync();
        await Expect(Page.Locator("#panel-count legend").First).ToContainTextAsync("left");
    }

    [Fact]
    public async Task Another_window_sees_the_count_and_neither_loses_an_entry()
    {
        await OpenCount();
        var other = await Page.Context.NewPageAsync();
        await other.GotoAsync(Page.Url);
        await other.GetByRole(AriaRole.Tab, new() { Name = "Count" }).ClickAsync();
        foreach (var page in new[] { Page, other, Page, other })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Add to Cut, Keepers' watch" }).ClickAsync();
        }

        await Expect(Number("Cut")).ToHaveTextAsync("4");
        Assert.Equal(4, Read("lamp-day.count").Count(c => c == '\n'));
    }

    [Fact]
    public async Task An_entry_whose_answer_is_lost_counts_once_when_it_is_sent_again()
    {
        await OpenCount();
        await Page.RouteAsync("**/count", async route =>
        {
            await route.FetchAsync();
            await route.AbortAsync();
        }, new() { Times = 1 });
        await Button("Add to Cut, Keepers' watch").ClickAsync();
        await Expect(Page.GetByText("Sketch does not answer").First).ToBeVisibleAsync();
        await Button("Add to Cut, Keepers' watch").ClickAsync();
        await Expect(Page.Locator("#panel-count").GetByRole(AriaRole.Status)).ToContainTextAsync("Added");
        await Expect(Number("Cut")).ToHaveTextAsync("1");
    }

    [GeneratedRegex("^\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d cut 5 \"Keepers' watch\" note \"by lamplight\" #[0-9a-f]{16}\n$")]
    private static partial Regex Entry();
}
