using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Editors.Server;

/// <summary>The findings that an editor gets for its open texts.</summary>
public sealed class FindingFeedTests(RunningEditor editor) : IClassFixture<RunningEditor>
{
    private const string Card = "card \"Lamp\"\nbase A2, of white\nfront\n  panel 3 x 4, of navy\n";

    [Fact]
    public async Task A_finding_has_its_place_its_code_its_hint_and_the_address_of_its_explanation()
    {
        await editor.Begin();

        var found = Assert.Single(await editor.Open("slip.card", Card.Replace("navy", "nayv")));

        Assert.Equal("""{"start":{"line":3,"character":18},"end":{"line":3,"character":22}}""", found.GetProperty("range").GetRawText());
        Assert.Equal("SK210", found.GetProperty("code").GetString());
        Assert.Equal(2, found.GetProperty("severity").GetInt32());
        Assert.EndsWith("Did you mean navy?", found.GetProperty("message").GetString(), StringComparison.Ordinal);
        Assert.Equal("sketch-finding:SK210.md", found.GetProperty("codeDescription").GetProperty("href").GetString());
    }

    [Fact]
    public async Task A_character_of_two_units_counts_as_two()
    {
        await editor.Begin();

        var found = Assert.Single(await editor.Open("units.card", Card + "  text \"🗼\", of nayv\n"), IsSlip);

        Assert.Equal("""{"line":4,"character":16}""", found.GetProperty("range").GetProperty("start").GetRawText());
    }

    [Fact]
    public async Task Changes_count_in_units_and_each_follows_the_one_before()
    {
        await editor.Begin();
        await editor.Open("changes.card", Card.ReplaceLineEndings("\r\n") + "  text \"🗼\", of navy\r\n");

        var found = await editor.Change("changes.card", 2,
            new { range = RunningEditor.Range(4, 8, 4, 10), text = "two words" },
            new { range = RunningEditor.Range(4, 23, 4, 27), text = "nayv" });

        Assert.Equal(
            """{"start":{"line":4,"character":23},"end":{"line":4,"character":27}}""",
            Assert.Single(found, IsSlip).GetProperty("range").GetRawText());
    }

    [Fact]
    public async Task The_fix_of_a_finding_cures_it()
    {
        await editor.Begin();
        await editor.Open("fixed.card", Card.Replace("navy", "nayv"));

        var fix = Assert.Single((await editor.Ask("textDocument/codeAction", editor.Whole("fixed.card"))).EnumerateArray());
        var edit = fix.GetProperty("edit").GetProperty("changes").GetProperty(editor.UriOf("fixed.card"))[0];
        var left = await editor.Change("fixed.card", 2,
            new { range = edit.GetProperty("range"), text = edit.GetProperty("newText").GetString() });

        Assert.Equal("Change to navy", fix.GetProperty("title").GetString());
        Assert.Empty(left);
    }

    [Fact]
    public async Task A_finding_in_a_card_of_a_batch_stands_where_the_batch_names_it()
    {
        await editor.Begin();
        File.WriteAllText(Path.Combine(editor.Folder, "lamp.card"), Card.Replace("navy", "nayv"));

        var found = Assert.Single(
            await editor.Open("day.batch", "batch \"Day\"\nmake 2 of \"lamp.card\"\n"), f => f.GetProperty("code").GetString() == "SK210");

        Assert.Equal("""{"line":1,"character":10}""", found.GetProperty("range").GetProperty("start").GetRawText());
        Assert.StartsWith("lamp.card:4: ", found.GetProperty("message").GetString(), StringComparison.Ordinal);
        var related = found.GetProperty("relatedInformation")[0].GetProperty("location");
        Assert.Equal(editor.UriOf("lamp.card"), related.GetProperty("uri").GetString());
    }

    [Fact]
    public async Task An_open_card_counts_in_a_batch_as_it_is_typed()
    {
        await editor.Begin();
        File.WriteAllText(Path.Combine(editor.Folder, "typed.card"), Card);
        await editor.Open("typed.card", Card);
        Assert.DoesNotContain(await editor.Open("typed.batch", "batch \"Day\"\nmake 2 of \"typed.card\"\n"), IsSlip);

        await editor.Change("typed.card", 2, new { text = Card.Replace("navy", "nayv") });

        Assert.Contains(await editor.Findings("typed.batch", 1), IsSlip);
    }

    [Fact]
    public async Task A_text_that_is_far_too_long_is_one_finding()
    {
        await editor.Begin();

        var found = Assert.Single(await editor.Open("long.card", new string('x', 2_000_000)));

        Assert.Equal(1, found.GetProperty("severity").GetInt32());
    }

    private static bool IsSlip(JsonElement finding) => finding.GetProperty("code").GetString() == "SK210";
}
