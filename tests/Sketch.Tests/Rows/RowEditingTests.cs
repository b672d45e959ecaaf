using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Rows;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Rows;

/// <summary>Cells, rows and what is written of them.</summary>
public class RowEditingTests
{
    private const string Stash = """
        stash "Shelf"   # ours
        # Papers
        paper gulls: 12 x 12, 3 sheets,   trim 1/4 bottom, # the strip
          front waves, back dots navy cream
        cardstock navy: letter, any sheets # for bases

        line silver: 1/16, 12 strips, 9 long
        envelope plain: US A2, 50
        """;

    private const string Batch = """
        batch "Lamp day"
        for "Cliff ward", 24 cards, by post # by the 20th
          date "2026-11-20"
        make 12 of "fair-winds.card"
          role sky: night
        makers "Ann" "Beth"
        """;

    [Fact]
    public void Rows_stand_in_the_table_of_their_kind()
    {
        Assert.Equal(["gulls", "navy", "silver", "plain"], RowsOf(Stash).Skip(1).Select(r => r.Cells[0]));
        Assert.Equal(["This stash", "Papers", "Cardstock", "Offcuts", "Supplies"], Tables(Stash).Select(t => t.Title));
    }

    [Theory]
    [InlineData(3, "stock", "5", "12 x 12, 5 sheets,   trim")]
    [InlineData(3, "stock", "1", "12 x 12, 1 sheet,   trim")]
    [InlineData(3, "stock", "any", "12 x 12, any sheets,   trim")]
    [InlineData(3, "size", "A4", "gulls: A4, 3 sheets,   trim")]
    [InlineData(3, "name", "terns", "paper terns: 12 x 12")]
    [InlineData(3, "front", "plaid red cream", "  front plaid red cream, back dots navy cream")]
    [InlineData(3, "trim-bottom", "1/2", ",   trim 1/2 bottom, # the strip")]
    [InlineData(3, "trim-left", "1/8", "back dots navy cream, trim 1/8 left\n")]
    [InlineData(3, "price", "0.99", "back dots navy cream, price 0.99")]
    [InlineData(3, "collection", "Sea \"air\"", "back dots navy cream, collection \"Sea \"\"air\"\"\"")]
    [InlineData(3, "upright", "upright", "back dots navy cream, upright")]
    [InlineData(3, "back", "", "  front waves\ncardstock")]
    [InlineData(5, "stock", "25", "letter, 25 sheets # for bases")]
    [InlineData(5, "weight", "80 lb cover", "any sheets, weight 80 lb cover # for bases")]
    [InlineData(7, "stock", "3", "1/16, 3 strips, 9 long")]
    [InlineData(7, "long", "12", "12 strips, 12 long")]
    [InlineData(8, "stock", "40", "plain: US A2, 40")]
    [InlineData(1, "title", "Our shelf", "stash \"Our shelf\"   # ours")]
    public void A_cell_of_a_stash_is_written_into_its_clause(int line, string field, string value, string expected) =>
        Assert.Contains(expected, Changed(Stash, line, field, value), StringComparison.Ordinal);

    [Theory]
    [InlineData(2, "cards", "30", "ward\", 30 cards, by post")]
    [InlineData(2, "way", "by hand", "24 cards, by hand # by")]
    [InlineData(2, "way", "", "24 cards # by")]
    [InlineData(2, "spare", "1", "by post, spare 1 # by")]
    [InlineData(2, "date", "2026-12-01", "  date \"2026-12-01\"")]
    [InlineData(2, "date", "", "# by the 20th\nmake")]
    [InlineData(2, "note", "At the desk", "# by the 20th\n  note \"At the desk\"\n")]
    [InlineData(2, "whom", "Reading room", "for \"Reading room\", 24 cards")]
    [InlineData(4, "count", "18", "make 18 of \"fair-winds.card\"")]
    [InlineData(4, "card", "boat.card", "make 12 of \"boat.card\"")]
    [InlineData(4, "made-by", "Ann, Beth", "card\", made by \"Ann\" and \"Beth\"\n")]
    [InlineData(1, "makers", "2", "\nmakers 2")]
    [InlineData(1, "spare", "1", "\"Lamp day\"\nspare 1\nfor")]
    [InlineData(1, "stash", "museum.stash", "\"Lamp day\"\nstash \"museum.stash\"\n")]
    public void A_cell_of_a_batch_is_written_into_its_clause(int line, string field, string value, string expected) =>
        Assert.Contains(expected, Changed(Batch, line, field, value), StringComparison.Ordinal);

    [Theory]
    [InlineData("front", "waves, price 2")]
    [InlineData("stock", "3 sheets, upright")]
    [InlineData("price", "2\npaper terns: A4, 2 sheets")]
    [InlineData("front", "waves # all of it")]
    public void What_reaches_beyond_its_cell_is_refused(string field, string value)
    {
        var refused = RowEditing.Change(Of(Stash), 3, field, value);
        Assert.StartsWith("That would change more than this cell. ", refused.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_that_a_row_needs_is_not_emptied() => Assert.Equal(
        "\"Name\" is empty. Enter a value such as gulls.", RowEditing.Change(Of(Stash), 3, "name", " ").Problem);

    [Fact]
    public void A_line_with_a_mistake_is_fixed_in_the_text()
    {
        const string text = "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheeps\n";
        Assert.NotNull(RowsOf(text)[1].Locked);
        Assert.Equal(RowsOf(text)[1].Locked, RowEditing.Change(Of(text), 2, "price", "1").Problem);
    }

    [Fact]
    public void Notes_that_several_lines_give_are_changed_in_the_text()
    {
        const string text = "batch \"A\"\nfor \"B\", 2 cards\n  note \"C\"\n  note \"D\"\n";
        Assert.Equal(
            "The text has several values after note. Change them in the text.", RowEditing.Change(Of(text), 2, "note", "E").Problem);
    }

    [Fact]
    public void A_row_that_is_deleted_leaves_the_others_alone()
    {
        Assert.Equal(Stash.Replace("cardstock navy: letter, any sheets # for bases\n", "", StringComparison.Ordinal), Deleted(Stash, 5));
        Assert.Equal(Stash[..Stash.LastIndexOf('\n')], Deleted(Stash, 8));
        Assert.Equal(Batch.Replace("make 12 of \"fair-winds.card\"\n  role sky: night\n", "", StringComparison.Ordinal), Deleted(Batch, 4));
    }

    [Fact]
    public void A_comment_above_a_deleted_row_stays() =>
        Assert.StartsWith("stash \"Shelf\"   # ours\n# Papers\ncardstock navy", Deleted(Stash, 3), StringComparison.Ordinal);

    [Fact]
    public void A_row_is_added_below_the_last_of_its_table() => Assert.Equal(
        Stash.Replace("cream\n", "cream\npaper night: 12 x 12, 1 sheet, front stars\n", StringComparison.Ordinal),
        Added(Stash, "paper", ("name", "night"), ("size", "12 x 12"), ("stock", "1"), ("front", "stars")));

    [Fact]
    public void The_first_row_of_a_table_is_added_at_the_end() => Assert.Equal(
        Stash + "\noffcut gulls: 6 x 4, 2", Added(Stash, "offcut", ("name", "gulls"), ("size", "6 x 4"), ("stock", "2")));

    [Fact]
    public void A_recipient_is_added_with_the_lines_beneath_it() => Assert.Contains(
        "  date \"2026-11-20\"\nfor \"Reading room\", 18 cards, by hand\n  date \"2026-12-01\"\nmake",
        Added(Batch, "for", ("whom", "Reading room"), ("cards", "18"), ("way", "by hand"), ("date", "2026-12-01")),
        StringComparison.Ordinal);

    [Fact]
    public void Rows_under_the_title_keep_their_indentation() => Assert.Equal(
        "batch \"A\"\r\n\tmake 2 of \"a.card\"\r\n\tmake 3 of \"b.card\"\r\n",
        Added("batch \"A\"\r\n\tmake 2 of \"a.card\"\r\n", "make", ("count", "3"), ("card", "b.card")));

    [Fact]
    public void A_row_without_what_it_needs_is_not_added()
    {
        var values = new Dictionary<string, string> { ["name"] = "night" };
        Assert.Equal("\"Sheet\" is empty. Enter a value such as 12 in x 12 in.", RowEditing.Add(Of(Stash), "paper", values).Problem);
    }

    [Fact]
    public void The_example_of_each_field_makes_a_row_without_errors()
    {
        foreach (var kind in Tables("stash \"A\"\n").Skip(1).SelectMany(t => t.Kinds))
        {
            var text = Added("stash \"A\"\nunits mm\npaper gulls: 305 x 305, 2 sheets\n", kind.Word,
                [.. kind.Fields.Select(f => (f.Name, kind.Word is "paper" or "cardstock" && f.Name == "name" ? "terns" : f.Example))]);
            Assert.DoesNotContain(Compiler.Compile(Of(text), new TestWorld()).Findings, f => f.Severity == Severity.Error);
        }
    }

    private static SourceText Of(string text) => new("a.stash", text);

    private static ImmutableArray<RowTable> Tables(string text) => RowEditing.Tables(Of(text));

    private static List<Row> RowsOf(string text) => [.. Tables(text).SelectMany(t => t.Rows)];

    private static string Changed(string text, int line, string field, string value) =>
        TextEdit.Apply(text, RowEditing.Change(Of(text), line, field, value).Value);

    private static string Deleted(string text, int line) => TextEdit.Apply(text, RowEditing.Delete(Of(text), line).Value);

    private static string Added(string text, string kind, params (string Field, string Value)[] values) =>
        TextEdit.Apply(text, [RowEditing.Add(Of(text), kind, values.ToDictionary(v => v.Field, v => v.Value)).Value.Edit]);
}
