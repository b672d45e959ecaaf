using Sketch.CutFiles;
using Sketch.Diagnostics;
using Sketch.Shapes;
using Sketch.Stashes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.CutFiles;

public sealed class CutSheetsTests
{
    private const string Window =
        "card \"Test\"\nbase 3 x 4, fold left, of white\nfront\n  field: panel 2 x 3, of blue\n    window circle 1\n"
            + "    disc: circle 1/2, upper left 0, of red\n  band: strip 2 1/2 x 1/4, bottom 0, of red, wrap 1/4\n"
            + "  text \"ahoy\", letters 1/4, bottom 1/2\n";

    private static IEnumerable<CutPath> On(IEnumerable<CutSheet> sheets, CutLayer layer) =>
        sheets.SelectMany(s => s.Paths).Where(p => p.Layer == layer);

    private static Bounds Box(CutPath path) => new Outline([path.Line]).Bounds;

    private static Bounds BoxOf(CutSheet sheet) => new Outline([.. sheet.Paths.Select(p => p.Line)]).Bounds;

    [Fact]
    public void Every_piece_of_every_sample_is_cut_at_its_listed_size() => Assert.All(Machine.Samples(), sample =>
    {
        var pieces = sample.Card.Pieces.Where(p => p is { Cut: not null, Outline.IsEmpty: false }).ToList();
        var listed = pieces.Where(p => p.CutParts == 1).Select(p => p.Cut!.Value).Append(sample.Card.Base.Flat).Select(Machine.Sides);
        var cut = On(sample.Sheets, CutLayer.Cut).Where(p => !p.Name.EndsWith(" inside", StringComparison.Ordinal))
            .Select(Box).Select(b => Machine.Sides(b.Width, b.Height)).ToList();
        Assert.Equal(1 + pieces.Sum(p => p.CutParts), cut.Count);
        foreach (var (shorter, longer) in listed)
        {
            var found = cut.FindIndex(c => Math.Abs(c.Item1 - shorter) < 0.02 && Math.Abs(c.Item2 - longer) < 0.02);
            Assert.True(found >= 0, $"{sample.Card.Title}: nothing of {shorter} x {longer} mm is cut.");
            cut.RemoveAt(found);
        }
    });

    [Fact]
    public void Every_outline_of_every_sample_is_one_closed_path() => Assert.All(Machine.Samples(), sample =>
    {
        var cut = On(sample.Sheets, CutLayer.Cut).ToList();
        var pieces = sample.Card.Pieces.Where(p => p.Cut is not null);
        Assert.Equal(sample.Card.Base.CutSheet.Contours.Length + pieces.Sum(p => p.Outline.Contours.Length), cut.Count);
        Assert.All(cut, p => Assert.True(p.IsClosed));
    });

    [Fact]
    public void What_lies_inside_an_outline_is_cut_before_it() => Assert.All(Machine.Samples().SelectMany(s => s.Sheets), sheet =>
    {
        var cuts = sheet.Paths.Where(p => p.Layer == CutLayer.Cut).ToList();
        for (var i = 0; i < cuts.Count; i++)
        {
            Assert.DoesNotContain(cuts[(i + 1)..], later => Box(cuts[i]) != Box(later) && Box(cuts[i]).Covers(Box(later))
                && new Outline([cuts[i].Line]).Covers(new([later.Line]), 0));
        }
    });

    [Fact]
    public void Drawing_comes_first_and_cutting_last() => Assert.All(Machine.Samples().SelectMany(s => s.Sheets), sheet =>
        Assert.Equal(
            sheet.Paths.Select(p => CutLayer.All.IndexOf(p.Layer)).Order(), sheet.Paths.Select(p => CutLayer.All.IndexOf(p.Layer))));

    [Fact]
    public void A_paper_with_an_upright_print_is_not_turned()
    {
        // Wider than the page; only a turn would make it fit.
        const string card = "card \"Wide\"\nbase 4 x 5, fold left, of white\nrole sky: gulls\nfront\n  strip 3 1/2 x 1, of sky\n";
        var narrow = Machine.Usual with { Page = CutPage.Read("3x4").Value };
        CutOn(narrow, card, "paper gulls: 12 x 12", out var turned);
        CutOn(narrow, card, "paper gulls: 12 x 12, upright", out var upright);
        Assert.Equal(["base"], turned);
        Assert.Equal(["base", "strip"], upright);
    }

    /// <summary>Lays a card on pages with a paper of a stash, and gives the pieces that are too large for a page.</summary>
    private static void CutOn(CutFileOptions options, string card, string paper, out string[] tooLarge)
    {
        var stash = Compiler.Compile(new SourceText("s.stash", $"stash \"S\"\n{paper}\n"), new TestWorld()).Stash;
        var laidOut = Compiler.Compile(new SourceText("a.card", card), new TestWorld(), new RoleFilling(stash, [])).Card!;
        var findings = new FindingBag();
        CutSheets.Make([laidOut], options, findings);
        tooLarge = [.. findings.ToImmutable().Select(f => f.Message.Split(" is ")[0])];
    }

    [Fact]
    public void All_lies_on_the_sheet_clear_of_its_edges() => Assert.All(Machine.Samples().SelectMany(s => s.Sheets), sheet =>
    {
        var gap = CutFileOptions.UsualGap.Millimetres;
        var room = new Bounds(0, 0, sheet.Page.Width.Millimetres, sheet.Page.Height.Millimetres).Grow(0.01 - gap);
        Assert.All(sheet.Paths, p => Assert.True(room.Covers(Box(p)), p.Name));
    });

    [Fact]
    public void No_two_pieces_come_nearer_than_the_gap()
    {
        var sheets = Machine.Of(Window, Machine.Usual with { Copies = 7, Page = CutPage.Read("a4").Value });
        Assert.Contains(sheets, s => s.Number == 2);
        Assert.All(sheets, sheet =>
        {
            var outer = sheet.Paths.Where(p => p.Layer == CutLayer.Cut && !p.Name.EndsWith(" inside", StringComparison.Ordinal))
                .Select(Box).ToList();
            Assert.Equal(sheet.Pieces, outer.Count);
            Assert.All(outer, (a, i) => Assert.DoesNotContain(outer[(i + 1)..], b => a.Grow(3.17).Overlaps(b)));
        });
    }

    [Fact]
    public void Copies_are_cut_as_often_as_asked() => Assert.Equal(
        7, On(Machine.Of(Window, Machine.Usual with { Copies = 7 }), CutLayer.Cut).Count(p => p.Name == "disc: circle"));

    [Fact]
    public void Plain_rectangles_can_be_left_out() => Assert.Equal(
        ["band: strip", "disc: circle", "field: panel", "field: panel inside"],
        On(
            Machine.Of(Window.Replace("  text \"ahoy\", letters 1/4, bottom 1/2\n", "", StringComparison.Ordinal),
                Machine.Usual with { OnlyShapes = true }),
            CutLayer.Cut).Select(p => p.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Papers_come_on_sheets_of_their_own() =>
        Assert.Equal([("white", 1), ("blue", 1), ("red", 2)], Machine.Of(Window).Select(s => (s.Material, s.Pieces)));

    [Fact]
    public void Scores_folds_and_words_have_layers_of_their_own()
    {
        var sheets = Machine.Of(Window);
        Assert.Equal("base score", Assert.Single(On(sheets, CutLayer.Score)).Name);
        Assert.Equal(["band: strip fold", "band: strip fold"], On(sheets, CutLayer.Fold).Select(p => p.Name));
        Assert.Equal("ahoy".Length + 2, On(sheets, CutLayer.Draw).Count());
    }

    [Fact]
    public void Words_inside_are_drawn_first_on_the_other_side_of_the_sheet()
    {
        var sheets = Machine.Of(Window + "inside\n  text \"ahoy\", letters 1/4\n");
        Assert.Equal([("white, other side", 1), ("white", 1)], sheets.Take(2).Select(s => (s.Material, s.Pieces)));
        Assert.All(sheets[0].Paths, p => Assert.Equal(CutLayer.Draw, p.Layer));

        // Inside is the right half of a card folded on the left, so its middle lies behind the left half of the sheet with the front.
        var (words, flat) = (BoxOf(sheets[0]), BoxOf(sheets[1]));
        var width = sheets[0].Page.Width.Millimetres;
        var (across, down) = (width - (words.Left + words.Right) / 2 - flat.Left, (words.Top + words.Bottom) / 2 - flat.Top);
        Assert.True(Math.Abs(across / flat.Width - 0.25) < 0.02 || Math.Abs(down / flat.Height - 0.25) < 0.02, $"{across} {down}");
    }

    [Fact]
    public void Words_on_the_front_lie_on_the_front_half_of_the_flat_base()
    {
        var flat = Machine.Of(Window)[0];
        var score = flat.Paths.Single(p => p.Layer == CutLayer.Score).Line;
        var isUpright = Math.Abs(score.Start.X - score.Segments[0].End.X) < 1e-9;
        Assert.All(flat.Paths.Where(p => p.Layer == CutLayer.Draw), p => Assert.True(
            isUpright ? Box(p).Left > score.Start.X : Box(p).Top > score.Start.Y));
    }

    [Fact]
    public void Words_on_a_turned_piece_lie_on_it_as_written()
    {
        const string turned = "card \"Test\"\nbase 4 x 4, fold left, of white\nfront\n  sign: panel 2 x 1, turn 20, of blue\n"
            + "    text \"l\", letters 1/2\n";
        var letter = Box(Assert.Single(On(Machine.Of(turned), CutLayer.Draw)));
        Assert.Equal(12.7, Math.Max(letter.Width, letter.Height), 0.7);
        Assert.True(Math.Min(letter.Width, letter.Height) < 3);
    }

    [Fact]
    public void A_hidden_middle_is_cut_before_its_layer()
    {
        var sheets = Machine.Of(
            "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  sky: panel, showing 1/8, of blue\n    mat +1/8, of navy\n",
            Machine.Usual with { Hollow = GlueMargin.Usual });
        Assert.Equal(["mat behind sky inside", "mat behind sky"], On(sheets.Where(s => s.Material == "navy"), CutLayer.Cut)
            .Select(p => p.Name));
    }

    [Fact]
    public void A_mirrored_sheet_is_seen_from_the_back()
    {
        var (plain, mirrored) = (Machine.Of(Window), Machine.Of(Window, Machine.Usual with { IsMirrored = true }));
        Assert.All(plain[0].Paths.Zip(mirrored[0].Paths), pair =>
        {
            Assert.Equal(304.8 - Box(pair.First).Right, Box(pair.Second).Left, 6);
            Assert.Equal(Box(pair.First).Top, Box(pair.Second).Top, 6);
        });
    }

    [Fact]
    public void A_piece_larger_than_the_page_is_an_error()
    {
        var findings = new FindingBag();
        Assert.Null(CutSheets.Make(
            [Laid.Out("card \"Long\"\nbase 6 x 9, fold left, of white\nfront\n  panel 1 x 1, of red\n")], Machine.Usual, findings));
        var found = Assert.Single(findings.ToImmutable());
        Assert.Equal(
            ("SK513", "base is 12 x 9 in: with 1/8 in on each side it does not fit a page of 12 x 12 in."), (found.Code, found.Message));
    }
}
