using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Tests.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Tests.Reports;

/// <summary>A laid-out card built by hand, so that reports are tested without reading and layout.</summary>
internal static class SampleCard
{
    public static readonly SourceText Source =
        new("fair-winds.card", "card \"Fair winds\"\nbase A2, fold left, of white\n\tsky: panel, showing 1/8, of skye\n");

    public static readonly Paint White = new("white", null, PaperSide.Front, PaperLook.Plain(new Rgb(255, 255, 255)));
    public static readonly Paint Sky = White with { Role = "sky", Paper = "gulls" };
    public static readonly Paint Deep = White with { Role = "deep", Paper = "navy", Side = PaperSide.Back };

    public static LaidOutCard With(params Piece[] pieces) => new(
        "Fair winds",
        new(new(Length.Inch(4, 1, 4), Length.Inch(5, 1, 2)), Fold.Left, "A2", White, Outline.Empty, At(0, 4)),
        [new(FaceKind.Front, new(Length.Inch(4, 1, 4), Length.Inch(5, 1, 2)), null, null, null, At(0, 4))],
        [.. pieces],
        UnitSystem.Inches,
        At(0, 4));

    public static Piece Paper(string path, PieceKind kind, Rect box, Paint? paint = null) =>
        new(path.Path(), kind, paint ?? White, box, Outline.Empty, At(0, 4));

    public static Rect Box(Length left, Length top, Length width, Length height) => new(left, top, width, height);

    /// <summary>A box with all four measures in sixteenths of an inch.</summary>
    public static Rect Sixteenths(long left, long top, long width, long height) =>
        new(Length.Inch(0, left, 16), Length.Inch(0, top, 16), Length.Inch(0, width, 16), Length.Inch(0, height, 16));

    public static Location At(int start, int end) => new(Source, new(start, end));

    /// <summary>A panel of 3 7/8 x 5 1/8 on a mat of 4 x 5 1/4, three gems in a row, and a wrapped rope of silver.</summary>
    public static LaidOutCard FairWinds() => With(
        Paper("front/sky/mat", PieceKind.Mat, Sixteenths(2, 2, 64, 84), Deep) with { Border = Insets.All(Length.Inch(0, 1, 16)) },
        Paper("front/sky", PieceKind.Panel, Sixteenths(3, 3, 62, 82), Sky),
        Paper("front/sky/line", PieceKind.Line,
            Sixteenths(3, 60, 62, 1)) with
        { Wrap = new(Length.Inch(0, 1, 2), default, Length.Inch(0, 1, 2), default) },
        Gem(1),
        Gem(2),
        Gem(3));

    private static Piece Gem(int number) =>
        Paper($"front/sky/gem[{number}]", PieceKind.Gem, Sixteenths(40 + 3 * number, 70, 2, 2));

    public static string Written(Action<TextWriter> write)
    {
        var output = new StringWriter { NewLine = "\n" };
        write(output);
        return output.ToString();
    }

    public static Compilation Compiled(LaidOutCard card, ImmutableArray<Finding>? findings = null) =>
        new(Source, card, findings ?? []);
}
