using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>No typing is lost, even if other programs change the file.</summary>
public sealed class SavingTests(Browsers browsers) : OnPage(browsers)
{
    private ILocator Notice => Page.Locator(".notice");

    private const string Theirs = Card + "# by another hand\n";

    private static Task<string> Shown(IPage page) => TextOf(page);

    private async Task TypeAMark() => await TypeAt(1, " # mine");

    private static async Task ExpectText(IPage page, string part) => await Expect(page.Locator(".cm-content")).ToContainTextAsync(part);

    [Fact]
    public async Task Save_writes_the_text()
    {
        await TypeAMark();
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Equal(Card.Replace("watch\"", "watch\" # mine", StringComparison.Ordinal), Read("watch.card"));
    }

    [Fact]
    public async Task Ctrl_S_saves()
    {
        await TypeAMark();
        await Page.Keyboard.PressAsync("Control+s");
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Contains("# mine", Read("watch.card"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_saved_by_another_program_is_shown()
    {
        Write("watch.card", Card.Replace("star 1 1/2", "heart 2", StringComparison.Ordinal));
        await ExpectText(Page, "heart 2");
        await Expect(Page.Locator(".picture svg title", new() { HasText = "heart" })).ToHaveCountAsync(1);
        await Expect(State).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_stash_saved_by_another_program_is_shown()
    {
        await OpenTab("Papers");
        await Expect(Page.Locator(".swatch", new() { HasText = "sails" })).ToHaveCountAsync(0);
        Write("museum.stash", Read("museum.stash") + "paper sails: 12 x 12, 1 sheet, front dots, back plain red\n");
        await Expect(Page.Locator(".swatch", new() { HasText = "sails" })).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task A_new_file_of_another_program_is_listed()
    {
        Write("porthole.card", Card);
        await Expect(Page.Locator("#file option[value='porthole.card']")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_change_by_another_program_with_unsaved_typing_asks()
    {
        await TypeAMark();
        Write("watch.card", Theirs);
        await Expect(Notice).ToBeVisibleAsync();
        await ExpectText(Page, "# mine");
        Assert.Equal(Theirs, Read("watch.card"));
    }

    [Fact]
    public async Task A_question_is_visible_at_any_scroll_position()
    {
        await Page.SetViewportSizeAsync(700, 600);
        await TypeAMark();
        await Page.EvaluateAsync("() => scrollTo(0, document.body.scrollHeight)");
        Write("watch.card", Theirs);
        await Expect(Notice).ToBeInViewportAsync();
    }

    [Fact]
    public async Task Saving_keeps_the_offer_of_unsaved_typing_open()
    {
        await TypeAMark();
        await KeptByTheServer();
        await Page.CloseAsync();
        var next = await Window();
        await Expect(next.Locator(".notice")).ToContainTextAsync("unsaved text");
        await next.Locator(".cm-line").Nth(2).ClickAsync();
        await next.Keyboard.PressAsync("End");
        await next.Keyboard.TypeAsync(" # other");
        await next.Keyboard.PressAsync("Control+s");
        await Expect(next.Locator("#state")).ToHaveTextAsync("Saved");
        await Expect(next.Locator(".notice")).ToContainTextAsync("unsaved text");
    }

    [Fact]
    public async Task Saving_a_changed_file_asks_and_overwrites_nothing()
    {
        // Without notifications about files the page learns of the other text only by saving. The server still sends its pulse.
        await Profile.RouteWebSocketAsync("**/news?*", page => page.ConnectToServer().OnMessage(message =>
        {
            if (!message.Text!.Contains("changed", StringComparison.Ordinal))
            {
                page.Send(message.Text);
            }
        }));
        await Page.ReloadAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        await TypeAMark();
        Write("watch.card", Theirs);
        await Button("Save").ClickAsync();
        await Expect(Notice).ToBeVisibleAsync();
        await ExpectText(Page, "# mine");
        Assert.Equal(Theirs, Read("watch.card"));
    }

    [Fact]
    public async Task Keeping_my_text_keeps_theirs_among_the_earlier_versions()
    {
        await TypeAMark();
        Write("watch.card", Theirs);
        await Button("Keep my text").ClickAsync();
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Contains("# mine", Read("watch.card"), StringComparison.Ordinal);
        await Button("Earlier versions…").ClickAsync();
        await Button("Restore").ClickAsync();
        await ExpectText(Page, "# by another hand");
    }

    [Fact]
    public async Task Taking_the_other_text_keeps_mine_among_the_earlier_versions()
    {
        await TypeAMark();
        Write("watch.card", Theirs);
        await Button("Use the other text").ClickAsync();
        await ExpectText(Page, "# by another hand");
        await Page.ReloadAsync();
        await ExpectText(Page, "# by another hand");
        await Button("Earlier versions…").ClickAsync();
        await Button("Restore").ClickAsync();
        await ExpectText(Page, "# mine");
    }

    [Fact]
    public async Task The_last_of_two_files_opened_at_once_is_shown()
    {
        await Page.RouteAsync("**/text?file=museum.stash*", async route =>
        {
            await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
            await ExpectText(Page, "Lamp day");
            await route.ContinueAsync();
        });
        var answered = Page.WaitForResponseAsync("**/text?file=museum.stash*");
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await answered;
        await Expect(Page.Locator("#file")).ToHaveValueAsync("lamp-day.batch");
        await ExpectText(Page, "Lamp day");
    }

    [Fact]
    public async Task Typing_in_a_deleted_file_is_explained_after_a_reload()
    {
        await TypeAMark();
        await KeptByTheServer();
        File.Delete(Path.Combine(Folder, "watch.card"));
        await Page.ReloadAsync();
        await Expect(Notice).ToContainTextAsync("no longer in the folder");
        await ExpectText(Page, "# mine");
    }

    [Fact]
    public async Task Taking_the_other_text_can_be_undone()
    {
        await TypeAMark();
        Write("watch.card", Theirs);
        await Button("Use the other text").ClickAsync();
        await ExpectText(Page, "# by another hand");
        await Button("Undo").ClickAsync();
        await ExpectText(Page, "# mine");
    }

    [Fact]
    public async Task A_deleted_file_can_be_saved_again()
    {
        await TypeAMark();
        File.Delete(Path.Combine(Folder, "watch.card"));
        await Expect(Notice).ToContainTextAsync("no longer in the folder");
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Contains("# mine", Read("watch.card"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_show_the_same_file_after_one_of_them_saves()
    {
        var other = await Window();
        await TypeAMark();
        await Button("Save").ClickAsync();
        await ExpectText(other, "# mine");
    }

    [Fact]
    public async Task The_eighth_window_shows_the_text_that_the_first_one_saves()
    {
        // A browser opens at most six HTTP connections to a server.
        var last = Page;
        for (var i = 2; i <= 8; i++)
        {
            last = await Window();
        }

        await TypeAMark();
        await Button("Save").ClickAsync();
        await ExpectText(last, "# mine");
    }

    [Fact]
    public async Task Typing_in_two_windows_is_separate()
    {
        var other = await Window();
        await TypeAMark();
        await Expect(State).ToHaveTextAsync("Not saved");
        Assert.Equal(Card, await Shown(other));
    }

    [Fact]
    public async Task The_second_of_two_windows_to_save_asks()
    {
        var other = await Window();
        await other.Locator(".cm-line").Nth(1).ClickAsync();
        await other.Keyboard.PressAsync("End");
        await other.Keyboard.TypeAsync(" # other");
        await TypeAMark();
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        await Expect(other.Locator(".notice")).ToBeVisibleAsync();
        await ExpectText(other, "# other");
        Assert.DoesNotContain("# other", Read("watch.card"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reloading_loses_nothing()
    {
        await TypeAMark();
        await KeptByTheServer();
        await Page.ReloadAsync();
        await ExpectText(Page, "# mine");
        await Expect(State).ToHaveTextAsync("Not saved");
        Assert.Equal(Card, Read("watch.card"));
    }

    [Fact]
    public async Task Unsaved_typing_of_a_closed_window_is_offered()
    {
        await TypeAMark();
        await KeptByTheServer();
        await Page.CloseAsync();
        var next = await Window();
        await next.GetByRole(AriaRole.Button, new() { Name = "Restore it" }).ClickAsync();
        await ExpectText(next, "# mine");
    }

    [Fact]
    public async Task Discarded_typing_can_be_restored()
    {
        await TypeAMark();
        await KeptByTheServer();
        await Page.CloseAsync();
        var next = await Window();
        await next.GetByRole(AriaRole.Button, new() { Name = "Discard it" }).ClickAsync();
        await next.GetByRole(AriaRole.Button, new() { Name = "Earlier versions…" }).ClickAsync();
        await next.GetByRole(AriaRole.Button, new() { Name = "Restore" }).ClickAsync();
        await ExpectText(next, "# mine");
    }

    [Fact]
    public async Task Switching_files_loses_nothing()
    {
        await TypeAMark();
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await ExpectText(Page, "Museum shelf");
        await Page.Locator("#file").SelectOptionAsync("watch.card");
        await ExpectText(Page, "# mine");
    }

    [Fact]
    public async Task Typing_while_an_earlier_text_takes_long_is_kept()
    {
        await LoadWithoutSocket();
        // The first key never gets a response, so the later ones cannot be sent with the next request for a picture.
        await Page.RouteAsync("**/see", _ => Task.CompletedTask);
        await TypeAMark();
        await KeptByTheServer();
    }

    [Fact]
    public async Task An_earlier_version_is_restored_without_saving()
    {
        await TypeAMark();
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        await Button("Earlier versions…").ClickAsync();
        await Button("Restore").ClickAsync();
        await Expect(State).ToHaveTextAsync("Not saved");
        Assert.Equal(Card, await Shown(Page));
    }

    [Theory]
    [InlineData("A card: its layout", "porthole.card")]
    [InlineData("A stash: your papers and supplies", "porthole.stash")]
    [InlineData("A batch: which cards, and how many", "porthole.batch")]
    public async Task A_new_file_is_created_and_opened(string kind, string file)
    {
        await Button("New file…").ClickAsync();
        await Page.GetByLabel("File name").FillAsync("porthole.card");
        await Page.GetByLabel(kind).CheckAsync();
        await Button("Create").ClickAsync();
        await Expect(Page.Locator("#file")).ToHaveValueAsync(file);
        await Expect(Page.Locator("#summary")).Not.ToContainTextAsync("error");
        Assert.Equal(Read(file), await Shown(Page));
    }

    [Fact]
    public async Task A_name_in_use_is_explained_and_nothing_is_overwritten()
    {
        await Button("New file…").ClickAsync();
        await Page.GetByLabel("File name").FillAsync("watch.card");
        await Button("Create").ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("There is a file \"watch.card\" already");
        await Expect(Page.GetByLabel("File name")).ToHaveValueAsync("watch.card");
        Assert.Equal(Card, Read("watch.card"));
    }

    [Theory]
    [InlineData("lamp/day", "cannot contain the character /", "lamp-day.card")]
    [InlineData("12:30", "cannot contain the character :", "12-30.card")]
    [InlineData("ready?", "cannot contain the character ?", "ready.card")]
    public async Task An_impossible_name_is_explained_with_a_possible_one(string name, string reason, string instead)
    {
        await Button("New file…").ClickAsync();
        await Page.GetByLabel("File name").FillAsync(name);
        await Button("Create").ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync($"{reason}. Type \"{instead}\" instead.");
        Assert.DoesNotContain(Directory.GetDirectories(Folder), d => !d.EndsWith(".sketch", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_rejected_save_is_explained()
    {
        Write(".sketch", "");
        await TypeAMark();
        await Button("Save").ClickAsync();
        await Expect(Notice).ToContainTextAsync("\"watch.card\" is not saved");
        await Expect(State).ToContainTextAsync("Not saved");
    }

    /// <summary>Waits until the typing is on the disk, which takes at most half a second.</summary>
    private Task KeptByTheServer() => Until(() => Drafts().Any(d => d.Contains("# mine", StringComparison.Ordinal)));
}
