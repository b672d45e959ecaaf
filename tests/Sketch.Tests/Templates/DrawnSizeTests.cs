using CsCheck;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Tests.Layout;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Templates;

/// <summary>The listed size of a piece is that of its picture and of its template.</summary>
public sealed class DrawnSizeTests
{
    /// <summary>Offsets of curves are accurate to a hundredth of a millimetre.</summary>
    private const double True = 0.011;

    private const string Head = "card \"Test\"\nbase A2, of white\nfront\n";

    private static readonly string[] Inner =
    [
        "star 1", "heart 1", "circle 1", "panel 1 x 3/4", "tag 1/2", "banner 1 1/2 x 1/2 \"ahoy\", swallowtail both",
        "word 1 wide \"ahoy\"", "word \"calm\" \"and clear seas\"", "text \"ahoy\"", "text \"calm\" \"and clear\", letters 1/4",
        "group 1 x 1/2", "ruled 1 x 1, lines 1/4 apart",
        "gem 1/2", "scallop 1", "arch 1", "hexagon 1", "outline 1 wide, file \"boat.svg\"", "strip full x 1/2, wrap 1/4", "tape 1 x 1/4",
        "frame 1 x 1", "panel 1 1/2 x 1, torn", "strip 2 x 3/4, wavy bottom, scalloped top", "panel 1 x 1, pointed bottom, stitched 1/8",
        "tile 1", "notched 1 x 3/4", "tag 1/2, torn bottom", "2 star 1/2, in a row",
    ];

    private const string Ring = "  ring: frame 1/8, around it, of gold\n";

    private static readonly string[] Around = ["", Ring, Ring + "    mat border 1/8, of red\n"];

    private static readonly string[] Mats = ["", "    mat +1/8, of white\n"];

    private static readonly string[] Windows =
    [
        "", "    window circle 1/4\n", "    window 1/4 x full, left 0\n", "    window 1/4 x 1/4, upper left -1/8\n",
        "    window full x 1/8, top 0\n", "    window 1/8 x full\n",
    ];

    private static readonly string[] WithoutMats = ["text", "ruled", "group", "gem", "tape"];

    private static readonly Gen<string> Cards =
        Gen.Select(Gen.OneOf(Inner), Gen.OneOf(Around), Gen.OneOf(Windows), Gen.OneOf(Mats)).Select(
            (inner, around, window, mat) =>
                $"{Head}  it: {inner}, of navy\n{(WithoutMats.Contains(inner.Split(' ')[0]) ? "" : mat + window)}{around}");

    public static TheoryData<int> Samples => [.. Enumerable.Range(0, LayoutSamples.All.Length)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_piece_of_a_sample_is_listed_at_its_drawn_size(int sample) =>
        AssertSizes(Compiler.Compile(new SourceText("card.card", LayoutSamples.All[sample]), LayoutSamples.World()).Card!);

    [Fact]
    public void Every_piece_of_the_sketches_is_listed_at_its_drawn_size() => Assert.All(Printed.Samples(), AssertSizes);

    [Fact]
    public void Every_piece_of_any_card_is_listed_at_its_drawn_size() => Cards.Sample(
        text =>
        {
            var compilation = Compiler.Compile(new SourceText("card.card", text), LayoutSamples.World());
            if (!compilation.HasErrors)
            {
                AssertSizes(compilation.Card!);
            }
        },
        iter: 150);

    [Fact]
    public void Letters_with_descenders_are_listed_at_their_drawn_size() => AssertSizes(Printed.Lay(
        Head + "  word \"gypsy\" \"quay\", top 1, of navy\n  it: text \"gypsy quay\"\n" + Ring));

    [Fact]
    public void A_frame_around_a_group_is_a_rectangle()
    {
        var frame = Laid.OnA2("  pair: group 2 x 1\n    star 1, of red\n  ring: frame 1/8, around pair, of gold").Piece("front/ring");
        Assert.Equal(Measure.Size("2 1/4 x 1 1/4"), frame.Outline.Bounds.ToRect().Size);
        Assert.Equal((50.8 + 6.35) * (25.4 + 6.35) - 50.8 * 25.4, frame.Outline.Area, 1e-6);
    }

    [Theory]
    [InlineData("text 2 wide \"gypsy\"")]
    [InlineData("text \"Calm seas\" \"may they stay\", top 1")]
    [InlineData("text 3 x 2 \"gypsy\"")]
    public void A_frame_around_text_is_a_rectangle_clear_of_its_ink(string text)
    {
        var card = Printed.Lay(Head + $"  it: {text}\n" + Ring);
        var (ring, ink) = (card.Piece("front/ring"), card.Piece("front/it").Outline);
        Assert.Equal(2, ring.Outline.Contours.Length);
        Assert.True(ring.Box.Size.Width >= card.Piece("front/it").Box.Width + Length.Inch(0, 1, 4));
        Assert.True(ring.Outline.WithoutHoles().Bounds.Grow(-3.175 + 0.001).Covers(ink.Bounds), $"{ring.Box} {ink.Bounds}");
    }

    [Theory]
    [InlineData("  it: star 1, of red\n  frame 0, around it, of gold")]
    [InlineData("  frame 0, showing 1/4, of gold")]
    public void A_frame_of_zero_width_is_an_error(string pieces)
    {
        var compilation = Compiler.Compile(new SourceText("card.card", $"{Head}{pieces}\n"), new TestWorld());
        Assert.Equal(FindingCatalogue.BadSize, Assert.Single(compilation.Findings, f => f.Severity == Severity.Error).Kind);
    }

    [Fact]
    public void A_window_that_removes_an_edge_makes_the_piece_smaller()
    {
        var panel = Laid.OnA2("  panel 3 x 2, upper left 1/4, of red\n    window 1/2 x full, left 0").Piece("front/panel");
        Assert.Equal(Measure.Size("2 1/2 x 2"), panel.Cut);
        Assert.Equal((Measure.Length("3/4"), Measure.Length("1/4")), (panel.Finished.Left, panel.Finished.Top));
        Assert.Equal(Measure.Size("3 x 2"), panel.Box.Size);
    }

    [Fact]
    public void A_window_that_notches_an_edge_keeps_the_size() =>
        Assert.Equal(Measure.Size("3 x 2"), Laid.OnA2("  panel 3 x 2, of red\n    window 1/2 x 1/2, left -1/4").Piece("front/panel").Cut);

    [Fact]
    public void A_strip_without_the_end_that_a_window_removed_wraps_from_the_new_end()
    {
        var strip = Laid.OnA2("  strip 3 x 1/2, wrap 1/4, of red\n    window 1/2 x full, left 0").Piece("front/strip");
        Assert.Equal(Measure.Size("3 x 1/2"), strip.Cut);
        AssertSizes(Laid.OnA2("  strip 3 x 1/2, wrap 1/4, of red\n    window 1/2 x full, left 0"));
    }

    [Fact]
    public void A_window_that_leaves_nothing_is_an_error()
    {
        var compilation = Compiler.Compile(
            new SourceText("card.card", Head + "  panel 1 x 1, of red\n    window 2 x 2\n"), new TestWorld());
        Assert.Equal(FindingCatalogue.NothingLeft, Assert.Single(compilation.Findings, f => f.Severity == Severity.Error).Kind);
    }

    private static void AssertSizes(LaidOutCard card)
    {
        foreach (var piece in card.Pieces.Where(p => p.Matter == PieceMatter.Paper))
        {
            var drawn = piece.Outline.Bounds;
            Assert.True(IsLike(drawn, Bounds.Of(piece.Finished)), $"{piece.Path}: listed {piece.Finished}, drawn {drawn}");
        }

        foreach (var piece in Printed.Of([card]).Pieces.Where(p => !p.Names[0].StartsWith("base", StringComparison.Ordinal)))
        {
            var (width, height) = (piece.Cut.Width.Millimetres, piece.Cut.Height.Millimetres);
            Assert.True(
                IsLike(piece.Outline.Bounds, new(0, 0, width, height)),
                $"{piece.Name}: listed {piece.Cut}, drawn {piece.Outline.Bounds}");
        }
    }

    private static bool IsLike(Bounds a, Bounds b) =>
        Math.Abs(a.Left - b.Left) < True && Math.Abs(a.Top - b.Top) < True
        && Math.Abs(a.Right - b.Right) < True && Math.Abs(a.Bottom - b.Bottom) < True;
}
