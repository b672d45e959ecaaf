using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>A card by hand: nobody has to know a word of the language.</summary>
public sealed class WithoutTypingTests(Browsers browsers) : OnPage(browsers)
{
    [Fact]
    public async Task An_empty_folder_leads_to_templates_without_a_word_of_the_language()
    {
        Array.ForEach(Directory.GetFiles(Folder), File.Delete);
        await Page.GotoAsync("about:blank");
        await Page.GotoAsync(Address.GetLeftPart(UriPartial.Path));
        await Button("Create one").ClickAsync();
        await Page.GetByLabel("Title of the card").FillAsync("Keepers' night");
        await Page.GetByText("A round hole through the front").ClickAsync();
        await Page.GetByLabel("Size, closed").SelectOptionAsync("US A7");
        await Page.GetByLabel("Start a stash with sample papers").CheckAsync();
        await Button("Create the card").ClickAsync();
        await Expect(Page.Locator("#file")).ToHaveValueAsync("keepers-night.card");
        await Button("Put something on…").ClickAsync();
        await Button("Heart").ClickAsync();
        await Picture.First.ClickAsync(new() { Position = new() { X = 60, Y = 60 } });
        await Expect(Page.Locator(".cm-line.cm-marked")).ToHaveTextAsync(new Regex("^    heart [^,]+, left [^,]+, top [^,]+, of \\w+$"));
        await Expect(Page.Locator("#summary")).ToHaveTextAsync("no problems found");
        await OpenTab("Templates");
        var templates = await Page.GetByRole(AriaRole.Link, new() { Name = "Open the templates (PDF)" }).GetAttributeAsync("href");
        var pdf = await Page.APIRequest.GetAsync(new Uri(new Uri(Address.GetLeftPart(UriPartial.Path)), templates).AbsoluteUri);
        Assert.StartsWith("%PDF", Encoding.Latin1.GetString(await pdf.BodyAsync()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_keyboard_alone_puts_something_on_and_one_undo_takes_it_back()
    {
        await GoToLine(7);
        await Button("Put something on…").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Button("Panel").FocusAsync();
        await Page.Keyboard.PressAsync("ArrowRight");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Button("Put it in the middle")).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".cm-line").Nth(8)).ToHaveTextAsync(new Regex("^    mat [+]1/8, of "));
        await Page.Keyboard.PressAsync("Control+Z");
        Assert.Equal(Card, await TextOf(Page));
    }
}
