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
        await OpenEmptyFolder();
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
    public async Task The_keyboard_alone_makes_a_card_from_an_empty_folder_to_its_templates()
    {
        await OpenEmptyFolder();
        await Press(Button("Create one"));
        await Expect(Page.GetByLabel("Title of the card")).ToBeFocusedAsync();
        await Page.Keyboard.TypeAsync("Keepers' night");
        await TabTo(Page.Locator("input[name=layout]").First);
        await Page.Keyboard.PressAsync("ArrowRight");
        await Press(Page.GetByLabel("Start a stash with sample papers"), "Space");
        await Press(Button("Create the card"));
        await Expect(Text).ToBeFocusedAsync();

        await Press(Button("Put something on…"));
        for (var presses = 0; presses < 40 && !await IsFocused(Button("Heart")); presses++)
        {
            await Page.Keyboard.PressAsync("ArrowRight");
        }

        await Page.Keyboard.PressAsync("Enter");
        await Expect(Button("Put it in the middle")).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("Enter");
        var line = Page.Locator(".cm-line.cm-marked");
        await Expect(line).ToHaveTextAsync(new Regex("^ +heart [^,]+, of \\w+$"));

        await TabTo(Page.Locator(".stage").First);
        await Page.Keyboard.PressAsync("Enter");
        var spoken = Page.Locator("#panel-picture .spoken");
        for (var presses = 0; presses < 40 && !(await spoken.TextContentAsync())!.StartsWith("heart", StringComparison.Ordinal); presses++)
        {
            var before = await spoken.TextContentAsync();
            await Page.Keyboard.PressAsync("Tab");
            await Expect(spoken).Not.ToHaveTextAsync(before!);
        }

        await Page.Keyboard.PressAsync("Shift+ArrowDown");
        await Expect(line).ToHaveTextAsync(new Regex("^ +heart [^,]+, (of \\w+, )?(top|bottom) [^,]+"));
        await Page.Keyboard.PressAsync("Control+ArrowRight");
        await Expect(spoken).ToContainTextAsync(" x ");
        await Page.Keyboard.PressAsync("Enter");
        await Press(Page.Locator(".papers-of summary").First);
        var paper = Page.Locator(".papers-of .chip[aria-pressed=false]").First;
        var name = await paper.TextContentAsync();
        await Press(paper);
        await Expect(line).ToHaveTextAsync(new Regex($", of {name}\\b"));
        await Expect(Page.Locator("#summary")).Not.ToContainTextAsync("error");
        await Page.Keyboard.PressAsync("Control+S");
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Contains("heart", Read("keepers-night.card"), StringComparison.Ordinal);

        await TabTo(Page.GetByRole(AriaRole.Tab, new() { Name = "Picture" }), back: true);
        for (var presses = 0; presses < 6 && !await IsFocused(Page.GetByRole(AriaRole.Tab, new() { Name = "Templates" })); presses++)
        {
            await Page.Keyboard.PressAsync("ArrowRight");
        }

        var link = Page.GetByRole(AriaRole.Link, new() { Name = "Open the templates (PDF)" });
        await TabTo(link);
        var pdf = await Page.APIRequest.GetAsync(
            new Uri(new Uri(Address.GetLeftPart(UriPartial.Path)), await link.GetAttributeAsync("href")).AbsoluteUri);
        Assert.StartsWith("%PDF", Encoding.Latin1.GetString(await pdf.BodyAsync()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_is_begun_by_choices_and_gets_its_recipients_in_the_table()
    {
        await Button("New file…").ClickAsync();
        await Page.GetByLabel("A batch: which cards, and how many").CheckAsync();
        await Field("File name").FillAsync("spring");
        await Field("watch.card").FillAsync("24");
        await Button("Create").ClickAsync();
        await Expect(Page.Locator("#file")).ToHaveValueAsync("spring.batch");
        await Expect(Field("Title, Spring")).ToBeFocusedAsync();
        await Field("For, new recipient").FillAsync("Cliff ward");
        await Field("Cards, new recipient").FillAsync("20");
        await Field("Delivery, new recipient").SelectOptionAsync("by hand");
        await Button("Add a recipient").ClickAsync();
        await Expect(Field("Cards, Cliff ward")).ToHaveValueAsync("20");
        await Expect(Text).ToContainTextAsync("make 24 of \"watch.card\"for \"Cliff ward\", 20 cards, by hand");
        await Expect(Page.Locator("#summary")).Not.ToContainTextAsync("error");
    }

    /// <summary>Deletes all files once no window shows one: what a window shows is kept as unsaved text.</summary>
    private async Task OpenEmptyFolder()
    {
        await Page.GotoAsync("about:blank");
        Array.ForEach(Directory.GetFiles(Folder), File.Delete);
        await Page.GotoAsync(Address.GetLeftPart(UriPartial.Path));
    }

    /// <summary>Goes to something by the Tab key, and presses a key there.</summary>
    private async Task Press(ILocator part, string key = "Enter")
    {
        await TabTo(part);
        await Page.Keyboard.PressAsync(key);
    }

    private async Task TabTo(ILocator part, bool back = false)
    {
        await Expect(part).ToBeVisibleAsync();
        for (var presses = 0; presses < 80 && !await IsFocused(part); presses++)
        {
            await Page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
        }

        await Expect(part).ToBeFocusedAsync();
    }

    private static Task<bool> IsFocused(ILocator part) => part.EvaluateAsync<bool>("part => part === document.activeElement");
}
