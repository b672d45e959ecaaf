using System.Net;
using System.Text;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>Saving replaces a file entirely or not at all, and never overwrites another program's changes.</summary>
public sealed class SavingTests : OnOpenedPage
{
    private const string Changed = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  lamp: panel 3 x 3, of red\n";

    private string OnDisk => File.ReadAllText(Page.At("lamp.card"));

    private async Task<string[]> Earlier(string file = "lamp.card")
    {
        var (_, json) = await Page.Ask(Page.Read($"earlier?file={file}"));
        return [.. json.GetProperty("earlier").EnumerateArray().Select(e => e.GetProperty("name").GetString()!)];
    }

    private async Task<string> EarlierText(string name)
    {
        var (_, json) = await Page.Ask(Page.Read($"earlier-text?file=lamp.card&name={name}"));
        return json.GetProperty("text").GetString()!;
    }

    [Fact]
    public async Task A_saved_text_is_in_the_file()
    {
        Assert.Equal(HttpStatusCode.OK, (await Page.Save(Changed, (await Page.Open()).Stamp)).Status);
        Assert.Equal(Changed, OnDisk);
    }

    [Fact]
    public async Task The_returned_stamp_is_valid_for_the_next_save()
    {
        var (_, json) = await Page.Save(Changed, (await Page.Open()).Stamp);
        Assert.Equal(HttpStatusCode.OK, (await Page.Save(OpenedPage.Card, json.GetProperty("stamp").GetString()!)).Status);
    }

    [Fact]
    public async Task The_previous_text_is_kept()
    {
        await Page.Save(Changed, (await Page.Open()).Stamp);
        Assert.Equal(OpenedPage.Card, await EarlierText((await Earlier())[0]));
    }

    [Fact]
    public async Task Saving_the_same_text_keeps_it_once()
    {
        await Page.Save(OpenedPage.Card, (await Page.Open()).Stamp);
        Assert.Empty(await Earlier());
    }

    [Fact]
    public async Task Earlier_versions_are_listed_newest_first_and_the_oldest_are_deleted()
    {
        var (_, stamp) = await Page.Open();
        for (var i = 0; i < 30; i++)
        {
            stamp = (await Page.Save($"# {i}\n{Changed}", stamp)).Json.GetProperty("stamp").GetString()!;
        }

        var kept = await Earlier();
        Assert.InRange(kept.Length, 10, 29);
        Assert.Equal($"# 28\n{Changed}", await EarlierText(kept[0]));
    }

    [Fact]
    public async Task Earlier_versions_of_two_files_are_separate()
    {
        Page.Write("other.card", "# other\n");
        await Page.Save(Changed, (await Page.Open()).Stamp);
        Assert.Empty(await Earlier("other.card"));
    }

    [Theory]
    [InlineData("\r\n", false)]
    [InlineData("\n", true)]
    [InlineData("\r\n", true)]
    public async Task Line_endings_and_a_byte_order_mark_are_kept(string lineEnd, bool hasMark)
    {
        byte[] Bytes(string text) =>
            [.. hasMark ? Encoding.UTF8.Preamble.ToArray() : [],
                .. Encoding.UTF8.GetBytes(text.Replace("\n", lineEnd, StringComparison.Ordinal))];

        Page.Write("lamp.card", Bytes(OpenedPage.Card));
        var (text, stamp) = await Page.Open();
        Assert.Equal(OpenedPage.Card, text);
        await Page.Save(Changed, stamp);
        Assert.Equal(Bytes(Changed), await File.ReadAllBytesAsync(Page.At("lamp.card"), OpenedPage.Stop));
    }

    [Fact]
    public async Task Carriage_returns_sent_by_the_page_are_not_written()
    {
        await Page.Save(Changed.Replace("\n", "\r\n", StringComparison.Ordinal), (await Page.Open()).Stamp);
        Assert.Equal(Changed, OnDisk);
    }

    [Fact]
    public async Task Other_line_separators_are_unchanged()
    {
        // Form feed, next line, line separator and paragraph separator: line breaks for Unicode (UAX 14) but not in cards.
        const string Text = "# a\fb\u0085c\u2028d\u2029e\n";
        await Page.Save(Text, (await Page.Open()).Stamp);
        Assert.Equal((Text, Text), (OnDisk, (await Page.Open()).Text));
    }

    [Theory]
    [InlineData(@"\ud83d", "\ufffd")]
    [InlineData(@"\uDE00", "\ufffd")]
    [InlineData(@"\ud83d\ud83d\ude00", "\ufffd😀")]
    [InlineData(@"\ud83d\n", "\ufffd\n")]
    [InlineData(@"\\ud83d\ud83d", @"\ud83d" + "\ufffd")]
    [InlineData(@"\u00e9\ude00", "é\ufffd")]
    public async Task A_lone_surrogate_loses_no_other_characters(string sent, string saved)
    {
        var (_, stamp) = await Page.Open();
        var body = $$"""{"file":"lamp.card","window":"{{OpenedPage.Window}}","stamp":"{{stamp}}","text":"# a{{sent}}b"}""";
        Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Say("save", new StringContent(body, Encoding.UTF8, "application/json"))));
        Assert.Equal($"# a{saved}b", OnDisk);
    }

    [Fact]
    public async Task Letters_of_all_scripts_are_kept()
    {
        var text = $"# Grüße, ✨ 𝓐, Ελλάδα, שלום\n{Changed}";
        await Page.Save(text, (await Page.Open()).Stamp);
        Assert.Equal((text, text), (OnDisk, (await Page.Open()).Text));
    }

    [Fact]
    public async Task A_file_changed_by_another_program_is_not_overwritten()
    {
        var (_, stamp) = await Page.Open();
        Page.Write("lamp.card", "# by another hand\n");
        var (status, _) = await Page.Save(Changed, stamp);
        Assert.Equal((HttpStatusCode.Conflict, "# by another hand\n"), (status, OnDisk));
    }

    [Fact]
    public async Task A_conflict_returns_the_other_text_and_its_stamp()
    {
        var (_, stamp) = await Page.Open();
        Page.Write("lamp.card", "# by another hand\n");
        var (_, json) = await Page.Save(Changed, stamp);
        var now = await Page.Open();
        Assert.Equal(now, (json.GetProperty("text").GetString()!, json.GetProperty("stamp").GetString()!));
    }

    [Fact]
    public async Task A_file_deleted_by_another_program_is_not_restored_without_asking()
    {
        var (_, stamp) = await Page.Open();
        File.Delete(Page.At("lamp.card"));
        Assert.Equal(HttpStatusCode.Conflict, (await Page.Save(Changed, stamp)).Status);
        Assert.False(File.Exists(Page.At("lamp.card")));
    }

    [Fact]
    public async Task One_of_two_windows_saving_at_once_gets_a_conflict()
    {
        var (_, stamp) = await Page.Open();
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Page.Save($"# window {i}\n", stamp)));
        Assert.Single(answers, a => a.Status == HttpStatusCode.OK);
        Assert.Equal(7, answers.Count(a => a.Status == HttpStatusCode.Conflict));
    }

    [Fact]
    public async Task A_reader_sees_either_the_old_text_or_the_new_text()
    {
        var texts = Enumerable.Range(0, 2).Select(i => $"# {new string((char)('a' + i), 500_000)}\n").ToArray();
        Page.Write("lamp.card", texts[0]);
        var saving = Task.Run(async () =>
        {
            var (_, stamp) = await Page.Open();
            for (var i = 1; i <= 20; i++)
            {
                stamp = (await Page.Save(texts[i % 2], stamp)).Json.GetProperty("stamp").GetString()!;
            }
        }, OpenedPage.Stop);
        while (!saving.IsCompleted)
        {
            Assert.Contains(OnDisk, texts);
        }

        await saving;
    }

    [Fact]
    public async Task No_partial_file_is_left_behind()
    {
        await Page.Save(Changed, (await Page.Open()).Stamp);
        Assert.DoesNotContain(Directory.GetFiles(Page.Root, "*", SearchOption.AllDirectories), f =>
            f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nothing_is_saved_if_the_previous_text_cannot_be_kept()
    {
        // A file in place of the folder of earlier versions; this stops even a super-user.
        Page.Write(".sketch", "");
        var (status, json) = await Page.Save(Changed, (await Page.Open()).Stamp);
        Assert.Equal((HttpStatusCode.InternalServerError, OpenedPage.Card), (status, OnDisk));
        Assert.Matches("^\"lamp.card\" is not saved.*\\.$", json.GetProperty("problem").GetString()!);
    }

    [Fact]
    public async Task No_file_is_created_below_a_file()
    {
        Page.Write("sub", "");
        var (status, json) = await Page.Ask(Page.Say("begin", new { file = "sub/new.card" }));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains("Type \"sub-new.card\" instead.", json.GetProperty("problem").GetString());
    }

    [Fact]
    public async Task A_write_protected_file_is_unchanged_and_the_message_says_what_to_do()
    {
        File.SetAttributes(Page.At("lamp.card"), FileAttributes.ReadOnly);
        var (status, json) = await Page.Save(Changed, (await Page.Open()).Stamp);
        File.SetAttributes(Page.At("lamp.card"), FileAttributes.Normal);
        Assert.Equal((HttpStatusCode.InternalServerError, OpenedPage.Card), (status, OnDisk));
        Assert.Matches("^\"lamp.card\" is not saved: .*protected.*save again.*\\.$", json.GetProperty("problem").GetString()!);
    }

    [Fact]
    public async Task Typing_survives_a_rejected_save()
    {
        File.SetAttributes(Page.At("lamp.card"), FileAttributes.ReadOnly);
        var (_, stamp) = await Page.Open();
        await Page.Status(Page.See(Changed, stamp: stamp));
        await Page.Save(Changed, stamp);
        File.SetAttributes(Page.At("lamp.card"), FileAttributes.Normal);
        await Page.Serve();
        var (_, json) = await Page.Ask(Page.Read("text?file=lamp.card&window=window0000000009"));
        Assert.Equal(Changed, json.GetProperty("unsaved").GetProperty("text").GetString());
    }

    [Fact]
    public async Task A_file_that_is_not_text_is_not_overwritten()
    {
        Page.Write("lamp.card", [0, 1, 2]);
        var (status, _) = await Page.Save(Changed, "");
        Assert.Equal((HttpStatusCode.InternalServerError, 3L), (status, new FileInfo(Page.At("lamp.card")).Length));
    }

    [Theory]
    [InlineData("new.card")]
    [InlineData("new.stash")]
    [InlineData("new.batch")]
    [InlineData("lamp day/Grüße.card")]
    public async Task A_new_file_has_no_errors(string file)
    {
        Page.Write("museum.stash", "stash \"Shelf\"\ncardstock white: letter, any sheets\ncardstock navy: letter, any sheets\n");
        Directory.CreateDirectory(Page.At("lamp day"));
        Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Say("begin", new { file })));
        var (_, json) = await Page.Ask(Page.See((await Page.Open(file)).Text, file));
        Assert.DoesNotContain(json.GetProperty("findings").EnumerateArray(), f => f.GetProperty("severity").GetString() == "error");
    }

    [Fact]
    public async Task Creating_a_file_never_overwrites_one()
    {
        var (status, json) = await Page.Ask(Page.Say("begin", new { file = "lamp.card" }));
        Assert.Equal((HttpStatusCode.Conflict, OpenedPage.Card), (status, OnDisk));
        Assert.Contains("lamp.card", json.GetProperty("problem").GetString(), StringComparison.Ordinal);
    }
}
