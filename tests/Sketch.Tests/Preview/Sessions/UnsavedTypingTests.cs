using System.Net;
using System.Text.Json;
using Sketch.Preview.Sessions;
using Xunit;

namespace Sketch.Tests.Preview.Sessions;

/// <summary>Unsaved typing survives the window and the server.</summary>
public sealed class UnsavedTypingTests : OnOpenedPage
{
    private const string Other = "window0000000002";
    private const string Typed = "card \"Lamp\"\n# typed\n";

    private async Task<JsonElement?> Offered(string window, string file = "lamp.card")
    {
        var (_, json) = await Page.Ask(Page.Read($"text?file={file}&window={window}"));
        return json.TryGetProperty("unsaved", out var unsaved) ? unsaved : null;
    }

    private static string? Text(JsonElement? unsaved) => unsaved?.GetProperty("text").GetString();

    [Fact]
    public async Task Typing_is_written_to_the_disk_automatically()
    {
        await Page.Status(Page.See(Typed));
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
    }

    [Fact]
    public async Task Continuous_typing_is_written_to_the_disk_without_a_pause()
    {
        for (var i = 0; !Page.Keeps(".json", Typed); i++)
        {
            Assert.True(i < 10_000, "Nothing was on the disk after 10,000 keys.");
            Assert.NotEqual(HttpStatusCode.InternalServerError, await Page.Status(Page.See($"{Typed}# {i}\n")));
        }
    }

    [Fact]
    public async Task Typing_does_not_change_the_file_itself()
    {
        await Page.Status(Page.See(Typed));
        await Offered(Other);
        Assert.Equal(OpenedPage.Card, await File.ReadAllTextAsync(Page.At("lamp.card"), OpenedPage.Stop));
    }

    [Fact]
    public async Task A_reloaded_window_gets_its_own_typing()
    {
        await Page.Status(Page.See(Typed));
        var unsaved = await Offered(OpenedPage.Window);
        Assert.Equal((Typed, true), (Text(unsaved), unsaved?.GetProperty("own").GetBoolean()));
    }

    [Fact]
    public async Task A_new_window_is_offered_the_typing_of_a_closed_one()
    {
        await Page.Status(Page.See(Typed));
        var unsaved = await Offered(Other);
        Assert.Equal((Typed, false), (Text(unsaved), unsaved?.GetProperty("own").GetBoolean()));
    }

    [Fact]
    public async Task Typing_of_a_window_that_is_still_open_is_not_offered_to_another()
    {
        using var window = await Page.Listen(OpenedPage.Window);
        await Page.Status(Page.See(Typed));
        Assert.Null(await Offered(Other));
    }

    [Fact]
    public async Task Typing_of_two_windows_is_separate()
    {
        await Page.Status(Page.See(Typed));
        await Page.Status(Page.See(Typed + "# other\n", window: Other));
        Assert.Equal((Typed, Typed + "# other\n"), (Text(await Offered(OpenedPage.Window)), Text(await Offered(Other))));
    }

    [Fact]
    public async Task Typing_in_two_files_of_a_window_is_separate()
    {
        Page.Write("other.card", OpenedPage.Card);
        await Page.Status(Page.See(Typed));
        Assert.Null(await Offered(OpenedPage.Window, "other.card"));
    }

    [Fact]
    public async Task Typing_survives_when_the_server_is_stopped()
    {
        await Page.Status(Page.See(Typed));
        await Page.Serve();
        Assert.Equal(Typed, Text(await Offered(Other)));
    }

    [Fact]
    public async Task Typing_in_a_deleted_file_is_still_offered()
    {
        await Page.Status(Page.See(Typed));
        File.Delete(Page.At("lamp.card"));
        Assert.Equal(Typed, Text(await Offered(Other)));
    }

    [Fact]
    public async Task A_deleted_file_is_listed_as_long_as_typing_in_it_is_kept()
    {
        await Page.Status(Page.See(Typed));
        File.Delete(Page.At("lamp.card"));
        Assert.Equal(["lamp.card"], await Listed());
        await Page.Status(Page.Say("forget", new { file = "lamp.card", window = OpenedPage.Window, keep = true }));
        Assert.Empty(await Listed());
    }

    [Fact]
    public async Task A_draft_of_a_file_outside_the_folder_is_not_listed()
    {
        Page.Write(".sketch/drafts/a.json", "{\"window\":\"window0000000002\",\"file\":\"../seen.card\",\"base\":\"\",\"text\":\"\"}");
        Assert.Equal(["lamp.card"], await Listed());
    }

    private async Task<string?[]> Listed()
    {
        var (_, json) = await Page.Ask(Page.Read("files"));
        return [.. json.GetProperty("files").EnumerateArray().Select(f => f.GetString())];
    }

    [Fact]
    public async Task Typing_is_offered_even_if_many_other_files_have_drafts()
    {
        for (var i = 0; i < 3000; i++)
        {
            Page.Write($".sketch/drafts/{i:x24}.json",
                $"{{\"window\":\"window0000000002\",\"file\":\"{i}.card\",\"base\":\"\",\"text\":\"\"}}");
        }

        await Page.Status(Page.See(Typed));
        Assert.Equal(Typed, Text(await Offered(Other)));
    }

    [Fact]
    public void The_last_of_several_concurrent_drafts_is_kept()
    {
        using var drafts = new UnsavedTexts(new(Page.Root));
        for (var i = 0; i < 200; i++)
        {
            drafts.Keep(Other, new("lamp.card", $"{i}", "", null, []));
            Parallel.Invoke(drafts.Flush, drafts.Flush, () => drafts.Keep(Other, new("lamp.card", $"{i}, later", "", null, [])),
                drafts.Flush);
        }

        Assert.Equal("199, later", Assert.Single(drafts.Of("lamp.card")).Sheet.Text);
    }

    [Fact]
    public async Task Typing_that_could_not_be_written_is_written_later()
    {
        Page.Write(".sketch", "");
        await Page.Status(Page.See(Typed));
        File.Delete(Page.At(".sketch"));
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
    }

    [Theory]
    [InlineData(OpenedPage.Window)]
    [InlineData(Other)]
    public async Task Typing_that_cannot_be_written_is_offered_from_memory(string window)
    {
        Page.Write(".sketch", "");
        await Page.Status(Page.See(Typed));
        Assert.Equal(Typed, Text(await Offered(window)));
        await Page.Status(Page.See(Typed + "# and on\n"));
        Assert.Equal(Typed + "# and on\n", Text(await Offered(window)));
    }

    [Fact]
    public async Task Typing_that_cannot_be_written_takes_precedence_over_an_older_draft()
    {
        await Page.Status(Page.See(Typed));
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
        // A folder in place of each draft, so that the draft cannot be replaced but can still be read elsewhere.
        var draft = Assert.Single(Directory.GetFiles(Page.At(".sketch/drafts")));
        File.Move(draft, Page.At(".sketch/drafts/other.json"));
        Directory.CreateDirectory(draft);
        await Page.Status(Page.See(Typed + "# and on\n"));
        Assert.Equal(Typed + "# and on\n", Text(await Offered(OpenedPage.Window)));
    }

    [Fact]
    public async Task Typing_continued_in_another_window_stays_on_the_disk_until_the_new_text_is_written()
    {
        await Page.Status(Page.See(Typed, window: Other));
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
        var taker = Assert.Single(Directory.GetFiles(Page.At(".sketch/drafts")));
        await Page.Status(Page.Say("forget", new { file = "lamp.card", window = Other, keep = false }));
        await OpenedPage.Until(() => !File.Exists(taker));
        Directory.CreateDirectory(taker);
        await Page.Status(Page.See(Typed));
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
        await Page.Status(Page.See(Typed, window: Other));
        await Page.Status(Page.Say("forget", new { file = "lamp.card", window = OpenedPage.Window, keep = false }));
        Assert.Equal((Typed, Other), (Text(await Offered(Other)), (await Offered(Other))?.GetProperty("window").GetString()));
        Assert.True(Page.Keeps(".json", Typed));
        Directory.Delete(taker);
        await OpenedPage.Until(() => File.Exists(taker) && Directory.GetFiles(Page.At(".sketch/drafts")).Length == 1);
    }

    [Fact]
    public async Task A_deleted_file_with_typing_that_cannot_be_written_is_listed()
    {
        Page.Write(".sketch", "");
        await Page.Status(Page.See(Typed));
        File.Delete(Page.At("lamp.card"));
        Assert.Equal(["lamp.card"], await Listed());
    }

    [Fact]
    public async Task Typing_that_cannot_be_written_is_no_longer_offered_once_it_is_saved()
    {
        var (_, stamp) = await Page.Open();
        Page.Write(".sketch", "");
        await Page.Status(Page.See(OpenedPage.Card, stamp: stamp));
        await Page.Save(OpenedPage.Card, stamp);
        Page.Write("lamp.card", "# later\n");
        Assert.Null(await Offered(Other));
    }

    [Fact]
    public async Task A_window_is_notified_which_of_its_typing_is_only_in_memory()
    {
        Page.Write(".sketch", "");
        using var window = await Page.Listen(OpenedPage.Window);
        using var other = await Page.Listen(Other);
        await Page.Status(Page.See(Typed));
        while (await OpenedPage.InMemoryOnly(window) is not ["lamp.card"])
        {
            // Not yet failed.
        }

        Assert.Empty(await OpenedPage.InMemoryOnly(other));
        File.Delete(Page.At(".sketch"));
        while (await OpenedPage.InMemoryOnly(window) is not [])
        {
            // Not yet written.
        }

        Assert.True(Page.Keeps(".json", Typed));
    }

    [Fact]
    public async Task Typing_sent_only_to_be_kept_is_kept()
    {
        await Page.Status(Page.Say(
            "typed", new { file = "lamp.card", window = OpenedPage.Window, text = Typed, stamp = "", saved = false }));
        Assert.Equal(Typed, Text(await Offered(Other)));
    }

    [Fact]
    public async Task Typing_is_kept_while_other_texts_take_long_to_compile()
    {
        // Far more than the machine has processors, and each takes long: a mat around a word is the offset of all its letters.
        var word = string.Concat(Enumerable.Repeat("lighthouse", 10));
        var hostile = OpenedPage.Card + string.Concat(Enumerable.Repeat($"  word \"{word}\", 4 wide\n    mat +1/8\n", 20));
        var slow = Enumerable.Range(10, 3 * Environment.ProcessorCount)
            .Select(i => Page.Status(Page.See(hostile, window: $"window00000000{i}"))).ToArray();
        await OpenedPage.Until(() => Directory.Exists(Page.At(".sketch/drafts")));
        var typed = Page.Status(Page.See(Typed));
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
        Assert.Contains(slow, s => !s.IsCompleted);
        await Task.WhenAll(slow.Append(typed));
    }

    [Fact]
    public async Task Saved_typing_is_no_longer_offered()
    {
        var (_, stamp) = await Page.Open();
        await Page.Status(Page.See(Typed, stamp: stamp));
        await Page.Save(Typed, stamp);
        Page.Write("lamp.card", "# later\n");
        Assert.Null(await Offered(Other));
    }

    [Fact]
    public async Task Typing_during_a_save_is_kept_as_changes_to_the_saved_text()
    {
        var (_, stamp) = await Page.Open();
        await Page.Status(Page.See(Typed + "# and on\n", stamp: stamp));
        var (_, json) = await Page.Save(Typed, stamp);
        var unsaved = await Offered(Other);
        Assert.Equal((Typed + "# and on\n", json.GetProperty("stamp").GetString()),
            (Text(unsaved), unsaved?.GetProperty("stamp").GetString()));
    }

    [Fact]
    public async Task Discarded_typing_is_kept_among_the_earlier_versions()
    {
        await Page.Status(Page.See(Typed));
        await Page.Status(Page.Say("forget", new { file = "lamp.card", window = OpenedPage.Window, keep = true }));
        var (_, json) = await Page.Ask(Page.Read("earlier?file=lamp.card"));
        var name = json.GetProperty("earlier")[0].GetProperty("name").GetString();
        var (_, text) = await Page.Ask(Page.Read($"earlier-text?file=lamp.card&name={name}"));
        Assert.Equal((Typed, true), (text.GetProperty("text").GetString(), await Offered(Other) is null));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{\"window\":null,\"file\":\"lamp.card\",\"base\":null,\"text\":null}")]
    [InlineData("{\"window\":7,\"file\":\"lamp.card\",\"base\":\"\",\"text\":\"x\"}")]
    public async Task A_broken_draft_is_ignored(string content)
    {
        Page.Write(".sketch/drafts/broken.json", content);
        Assert.Null(await Offered(Other));
    }
}
