using System.Net;
using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>A stash or batch changed by its tables.</summary>
public sealed class RowTests : OnOpenedPage
{
    private const string Stash = "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front waves # ours\noffcut gulls: 6 x 4, 2\n";
    private const string Batch = "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 12 of \"lamp.card\"\n";

    [Fact]
    public async Task The_tables_of_a_stash_show_its_papers_beside_their_rows()
    {
        Page.Write("shelf.stash", Stash);
        var (_, rows) = await Page.Ask(Page.Read($"rows?file=shelf.stash&window={OpenedPage.Window}"));
        var paper = rows.GetProperty("tables")[1].GetProperty("rows")[0];
        Assert.Equal("gulls", paper.GetProperty("cells")[0].GetString());
        Assert.Equal(2, paper.GetProperty("swatches").GetArrayLength());
    }

    [Theory]
    [InlineData("stash \"Shelf\"\npapper gulls: 12 x 12, 3 sheets\n", "One line of the text cannot be read")]
    [InlineData("stash Shelf\n", "The text does not begin with the title")]
    [InlineData(Stash, "")]
    public async Task What_no_table_shows_is_said(string text, string sentence)
    {
        Page.Write("shelf.stash", text);
        var (_, rows) = await Page.Ask(Page.Read($"rows?file=shelf.stash&window={OpenedPage.Window}"));
        Assert.StartsWith(sentence, rows.GetProperty("missing").GetString(), StringComparison.Ordinal);
        Assert.Equal(sentence.Length == 0, rows.GetProperty("missing").GetString()!.Length == 0);
    }

    [Fact]
    public async Task A_batch_is_offered_the_cards_and_stashes_of_its_own_folder()
    {
        Page.Write("shelf.stash", Stash);
        Page.Write("away/other.card", OpenedPage.Card);
        Page.Write("away/day.batch", Batch);
        var (_, rows) = await Page.Ask(Page.Read($"rows?file=away/day.batch&window={OpenedPage.Window}"));
        var offers = rows.GetProperty("offers").EnumerateArray().ToDictionary(
            o => o.GetProperty("name").GetString()!, o => o.GetProperty("values").EnumerateArray().Select(v => v.GetString()!).ToArray());
        Assert.Equal(["other.card"], offers["Cards"]);
        Assert.Empty(offers["Stashes"]);
    }

    [Fact]
    public async Task A_changed_cell_answers_with_the_text_and_writes_nothing()
    {
        Page.Write("shelf.stash", Stash);
        var values = new[] { new { field = "stock", value = "5" } };
        var done = await Row("shelf.stash", Stash, new { action = "change", line = 2, values });
        Assert.Equal(Stash.Replace("3 sheets", "5 sheets", StringComparison.Ordinal), done.Text);
        Assert.Equal("gulls is changed.", done.Said);
        Assert.Equal(Stash, await File.ReadAllTextAsync(Page.At("shelf.stash"), OpenedPage.Stop));
    }

    [Theory]
    [InlineData("name", "sea gulls", "A name is one word. Join the words: sea-gulls.")]
    [InlineData("size", "leter", "There is no sheet called leter. Write letter.")]
    [InlineData("stock", "three sheets", "That is not possible: line 2. ")]
    [InlineData("stock", "", "The number of sheets of gulls is missing. Add 3 sheets, or any sheets.")]
    [InlineData("weight", "80 lb", "Pounds need their grade")]
    public async Task A_new_error_is_refused_with_its_sentence(string field, string value, string sentence)
    {
        var done = await Row("shelf.stash", Stash, new { action = "change", line = 2, values = new[] { new { field, value } } });
        Assert.Equal(Stash, done.Text);
        Assert.Contains(sentence, done.Refused, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_card_that_is_not_there_is_refused_with_the_one_that_was_probably_meant()
    {
        Page.Write("shelf.stash", Stash);
        var done = await Row("day.batch", Batch, new
        {
            action = "add",
            kind = "make",
            values = new[] { new { field = "count", value = "3" }, new { field = "card", value = "lamb.card" } },
        });
        Assert.Equal(Batch, done.Text);
        Assert.Contains("Did you mean \"lamp.card\"?", done.Refused, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_that_is_added_is_named_in_what_is_said()
    {
        var done = await Row("shelf.stash", Stash, new
        {
            action = "add",
            kind = "cardstock",
            values = new[]
            {
                new { field = "name", value = "cream" }, new { field = "size", value = "letter" },
                new { field = "stock", value = "any sheets" },
            },
        });
        Assert.StartsWith("cream is added.", done.Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_warning_is_said_with_what_is_done()
    {
        var done = await Row("shelf.stash", Stash, new
        {
            action = "change",
            line = 2,
            values = new[] { new { field = "front", value = "wavse" } },
        });
        Assert.Contains("front wavse # ours", done.Text, StringComparison.Ordinal);
        Assert.Contains("Did you mean waves?", done.Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_begins_with_a_stash_and_numbers_of_cards()
    {
        Page.Write("shelf.stash", Stash);
        await Page.Status(Page.Say("begin", new
        {
            file = "lamp-day.batch",
            stash = "shelf.stash",
            makes = new[] { new { card = "lamp.card", count = 24 } },
        }));
        Assert.EndsWith("stash \"shelf.stash\"\nmake 24 of \"lamp.card\"\n",
            await File.ReadAllTextAsync(Page.At("lamp-day.batch"), OpenedPage.Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stash_begins_empty_and_in_millimetres()
    {
        await Page.Status(Page.Say("begin", new { file = "our-shelf.stash", from = "empty", isMetric = true }));
        Assert.Equal("stash \"Our shelf\"\n# Papers and supplies on hand: a name, the size of a sheet, and how many.\nunits mm\n",
            await File.ReadAllTextAsync(Page.At("our-shelf.stash"), OpenedPage.Stop));
    }

    private async Task<(string Text, string Said, string Refused)> Row(string file, string text, object action)
    {
        var asked = JsonSerializer.SerializeToNode(action)!.AsObject();
        asked["sheet"] = JsonSerializer.SerializeToNode(new { file, window = OpenedPage.Window, text });
        var (status, done) = await Page.Ask(Page.Say("row", asked));
        Assert.Equal(HttpStatusCode.OK, status);
        return (done.GetProperty("text").GetString()!, done.GetProperty("said").GetString()!, done.GetProperty("refused").GetString()!);
    }
}
