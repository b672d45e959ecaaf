using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Typing that cannot be written to the disk is kept in memory, and the page says so.</summary>
public sealed class RefusedDiskTests(Browsers browsers) : OnPage(browsers)
{
    private const string Refused = "Not saved, and not on the disk";

    /// <summary>Types while the folder of drafts cannot be created because a file is in its place.</summary>
    private async Task TypeRefused()
    {
        Write(".sketch", "");
        // At once, so that the state tells about the whole of it.
        await GoToLine(1);
        await Page.Keyboard.InsertTextAsync(" # mine");
        await Expect(State).ToHaveTextAsync(Refused);
    }

    private async Task OpenFile(string name, string part)
    {
        await Page.Locator("#file").SelectOptionAsync(name);
        await Expect(Text).ToContainTextAsync(part);
    }

    [Fact]
    public async Task The_status_says_that_typing_is_not_on_the_disk_until_it_is()
    {
        await TypeRefused();
        File.Delete(Path.Combine(Folder, ".sketch"));
        await Expect(State).ToHaveTextAsync("Not saved");
        Assert.Contains(Drafts(), d => d.Contains("# mine", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Switching_files_loses_nothing()
    {
        await TypeRefused();
        await OpenFile("museum.stash", "Museum shelf");
        await Expect(State).ToHaveTextAsync("Saved; watch.card is not on the disk");
        await OpenFile("watch.card", "# mine");
        await Expect(State).ToHaveTextAsync(Refused);
    }

    [Fact]
    public async Task Reloading_loses_nothing()
    {
        await TypeRefused();
        await Page.ReloadAsync();
        await Expect(Text).ToContainTextAsync("# mine");
        await Expect(State).ToHaveTextAsync(Refused);
    }

    [Fact]
    public async Task Unsaved_typing_of_a_closed_window_is_offered()
    {
        await TypeRefused();
        await Page.CloseAsync();
        var next = await Window();
        await next.GetByRole(AriaRole.Button, new() { Name = "Restore it" }).ClickAsync();
        await Expect(next.Locator(".cm-content")).ToContainTextAsync("# mine");
    }

    [Fact]
    public async Task Leaving_asks()
    {
        await TypeRefused();
        Assert.True(await LeavingAsks());
    }

    [Fact]
    public async Task Leaving_asks_when_another_file_is_open()
    {
        await TypeRefused();
        await OpenFile("museum.stash", "Museum shelf");
        Assert.True(await LeavingAsks());
    }

    [Fact]
    public async Task Leaving_does_not_ask_when_the_typing_is_on_the_disk()
    {
        await TypeAt(1, " # mine");
        await Until(() => Drafts().Any(d => d.Contains("# mine", StringComparison.Ordinal)));
        // The page hears of it with the next answer.
        var asks = await LeavingAsks();
        for (var tries = 0; asks && tries < 50; tries++)
        {
            asks = await LeavingAsks();
        }

        Assert.False(asks);
    }

    [Fact]
    public async Task A_file_whose_folder_is_deleted_is_not_called_saved()
    {
        var elsewhere = Folder + "-elsewhere";
        await Expect(State).ToHaveTextAsync("Saved");
        Directory.Move(Folder, elsewhere);
        await Expect(State).ToHaveTextAsync(Refused);
        Directory.Move(elsewhere, Folder);
        await Expect(State).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_deleted_empty_file_is_not_called_saved()
    {
        await TypeAll("");
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        File.Delete(Path.Combine(Folder, "watch.card"));
        await Expect(State).ToHaveTextAsync("Not saved");
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Equal("", Read("watch.card"));
    }
}
