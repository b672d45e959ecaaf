using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Editors.Server;

/// <summary>What an editor is answered about a card, over the real streams.</summary>
public sealed class LanguageServerTests(RunningEditor editor) : IClassFixture<RunningEditor>
{
    private const string Name = "lamp.card";

    private const string Card = """
        card "Lamp"
        base A2, fold left, of white
        role sky: waves #d8e9ee #8fbccb
        role deep: navy

        front
          sky: panel, showing 1/8, of sky
            mat +1/8, of deep
            lamp: star 1 3/4, of deep, raised 2 mm
            glow: circle 1, above lamp by 1/8, of gold

        """;

    private async Task<JsonElement> Ask(string method, object about, string text = Card)
    {
        await editor.Begin();
        await editor.Open(Name, text);
        return await editor.Ask($"textDocument/{method}", about);
    }

    [Fact]
    public async Task Roles_come_first_after_of_then_papers_of_the_stash_then_colours()
    {
        File.WriteAllText(Path.Combine(editor.Folder, "museum.stash"), "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front waves\n");

        var answer = await Ask("completion", editor.At(Name, 6, 31));

        var offered = answer.GetProperty("items").EnumerateArray().Select(i => i.GetProperty("label").GetString()).ToList();
        Assert.Equal(["sky", "deep", "gulls", "white"], offered.Take(4));
        Assert.Contains("navy", offered);
    }

    [Fact]
    public async Task An_offered_word_is_explained_on_request()
    {
        await editor.Begin();

        var explained = await editor.Ask("completionItem/resolve", new { label = "raised" });

        Assert.Contains("foam", explained.GetProperty("documentation").GetProperty("value").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_word_shows_its_meaning_and_a_name_its_declaration()
    {
        var word = await Ask("hover", editor.At(Name, 8, 32));
        var role = await Ask("hover", editor.At(Name, 6, 30));

        Assert.Contains("foam", word.GetProperty("contents").GetProperty("value").GetString(), StringComparison.Ordinal);
        Assert.Equal(
            "```card\nrole sky: waves #d8e9ee #8fbccb\n```", role.GetProperty("contents").GetProperty("value").GetString());
    }

    [Fact]
    public async Task The_declaration_of_a_name_is_found()
    {
        var piece = await Ask("definition", editor.At(Name, 9, 28));

        Assert.Equal("""{"line":8,"character":4}""", piece[0].GetProperty("range").GetProperty("start").GetRawText());
    }

    [Fact]
    public async Task Another_name_is_written_wherever_the_old_one_is()
    {
        var answer = await Ask("rename", editor.At(Name, 9, 28, newName: "star-lamp"));

        var edits = answer.GetProperty("changes").GetProperty(editor.UriOf(Name)).EnumerateArray().ToList();
        Assert.Equal([8, 9], edits.Select(e => e.GetProperty("range").GetProperty("start").GetProperty("line").GetInt32()));
    }

    [Fact]
    public async Task Formatting_gives_the_canonical_spelling()
    {
        var text = Card.Replace("  mat +1/8, of deep", "  MAT  +1/8 , of deep").Replace("raised 2 mm", "raised 2mm");

        var edit = Assert.Single((await Ask("formatting", editor.About(Name), text)).EnumerateArray());

        await editor.Change(Name, 2, new { range = edit.GetProperty("range"), text = edit.GetProperty("newText").GetString() });
        Assert.Empty((await editor.Ask("textDocument/formatting", editor.About(Name))).EnumerateArray());
    }

    [Fact]
    public async Task A_line_folds_with_what_lies_on_it() => Assert.Contains(
        """{"startLine":6,"endLine":9}""", (await Ask("foldingRange", editor.About(Name))).GetRawText(), StringComparison.Ordinal);

    [Fact]
    public async Task The_outline_holds_the_pieces_where_they_lie()
    {
        var card = (await Ask("documentSymbol", editor.About(Name)))[0];

        Assert.Equal("Lamp", card.GetProperty("name").GetString());
        var front = card.GetProperty("children").EnumerateArray().Single(c => c.GetProperty("name").GetString() == "front");
        Assert.Equal(["mat", "lamp", "glow"], front.GetProperty("children")[0].GetProperty("children").EnumerateArray()
            .Select(c => c.GetProperty("name").GetString()));
    }

    [Fact]
    public async Task A_role_is_shown_in_the_colour_of_its_paper()
    {
        var colours = (await Ask("documentColor", editor.About(Name))).EnumerateArray().ToList();

        var role = colours.Single(c => c.GetProperty("range").GetProperty("start").GetRawText() == """{"line":6,"character":30}""");
        Assert.Equal(0xd8 / 255.0, role.GetProperty("color").GetProperty("red").GetDouble(), 6);
    }

    [Fact]
    public async Task A_changed_colour_is_written_in_hex_digits_and_a_role_stays_a_role()
    {
        var red = new { red = 1, green = 0, blue = 0, alpha = 1 };

        await Ask("documentColor", editor.About(Name));
        Assert.Equal("#ff0000", await Written(RunningEditor.Range(2, 16, 2, 23)));
        Assert.Equal("sky", await Written(RunningEditor.Range(6, 30, 6, 33)));

        async Task<string?> Written(object range) =>
            (await editor.Ask(
                "textDocument/colorPresentation", new { textDocument = new { uri = editor.UriOf(Name) }, color = red, range }))
                [0].GetProperty("label").GetString();
    }

    [Fact]
    public async Task The_cut_size_stands_behind_the_line_of_each_piece()
    {
        var hints = (await Ask("inlayHint", editor.Whole(Name))).EnumerateArray()
            .ToDictionary(h => h.GetProperty("position").GetProperty("line").GetInt32(), h => h.GetProperty("label").GetString());

        // 4 1/4 x 5 1/2 less an eighth on each side is the mat, less an eighth in total is the panel.
        Assert.Equal("cut 4 x 5 1/4", hints[7]);
        Assert.Equal("cut 3 7/8 x 5 1/8", hints[6]);
    }

    [Fact]
    public async Task The_picture_of_a_card_is_drawn_as_svg()
    {
        await Ask("documentSymbol", editor.About(Name));

        var drawn = await editor.Ask("sketch/pictures", editor.About(Name));

        Assert.StartsWith("<svg ", drawn.GetProperty("pictures")[0].GetProperty("svg").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_finding_is_explained_with_its_fix()
    {
        await editor.Begin();

        var explained = await editor.Ask("sketch/explanation", new { code = "SK210" });

        Assert.Contains("**Fix:**", explained.GetProperty("markdown").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_canonical_text_is_that_of_the_formatter_also_with_other_line_ends()
    {
        var text = Card.Replace(", of deep", " ,  of  deep").ReplaceLineEndings("\r\n");

        var edit = (await Ask("formatting", editor.About(Name), text))[0];
        var source = new SourceText(Name, text);
        var (start, end) = (Offset("start"), Offset("end"));

        Assert.Equal(
            Formatter.Format(source, new FindingBag())!.ReplaceLineEndings("\r\n"),
            text[..start] + edit.GetProperty("newText").GetString() + text[end..]);

        int Offset(string which)
        {
            var place = edit.GetProperty("range").GetProperty(which);
            return source.LineStart(place.GetProperty("line").GetInt32()) + place.GetProperty("character").GetInt32();
        }
    }
}
