using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Tests.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Tests.Drawing;

/// <summary>Builds laid-out cards by hand, in millimetres, for tests of the drawing alone.</summary>
internal sealed class CardFixture
{
    private static readonly Location Nowhere = new(new SourceText("hand.card", ""), default);
    private readonly List<Piece> _pieces = [];
    private readonly List<Face> _faces = [];
    private readonly Size _closed;
    private readonly Fold _fold;
    private Paint _basePaint = Of("white");
    private Outline? _base;

    internal CardFixture(double width = 107.95, double height = 139.7, Fold fold = Fold.Left) =>
        (_closed, _fold) = (new(Mm(width), Mm(height)), fold);

    internal string Title { get; init; } = "Fair winds";

    internal UnitSystem Units { get; init; } = UnitSystem.Inches;

    internal static Length Mm(double millimetres) => Length.NearestMillimetres(millimetres);

    internal static Rect Box(double left, double top, double width, double height) => new(Mm(left), Mm(top), Mm(width), Mm(height));

    /// <summary>A paper from its words as in a file; the first word is its role.</summary>
    internal static Paint Of(string words, string? role = null)
    {
        var look = BuiltIn.FromWords(words.Split(' ')) ?? throw new ArgumentException(words);
        return new(role ?? words.Split(' ')[0], null, PaperSide.Front, look);
    }

    internal CardFixture BaseOf(string words, Outline? outline = null)
    {
        (_basePaint, _base) = (Of(words), outline);
        return this;
    }

    internal CardFixture Envelope(FaceKind side, double width, double height, string words, double? flap = null)
    {
        _faces.Add(new(side, new(Mm(width), Mm(height)), Of(words), null, flap is { } depth ? Mm(depth) : null, Nowhere));
        return this;
    }

    internal CardFixture Add(Piece piece)
    {
        _pieces.Add(piece);
        return this;
    }

    /// <summary>A piece of a shape; <paramref name="foam"/> is the height in millimetres of the foam beneath it.</summary>
    internal CardFixture Add(
        string path, PieceKind kind, Shape shape, Rect box, string words, double foam = 0, double turn = 0,
        ShapeStyle? style = null) =>
        Add(Make(path, kind, shape, box, words, foam, turn, style));

    internal static Piece Make(
        string path, PieceKind kind, Shape shape, Rect box, string words, double foam = 0, double turn = 0,
        ShapeStyle? style = null)
    {
        var bounds = Bounds.Of(box);
        return new(path.Path(), kind, Of(words), box, ShapeOutline.Build(shape, style ?? ShapeStyle.Plain, box), Nowhere)
        {
            Foam = Mm(foam),
            Raised = Mm(foam),
            Turn = turn,
            Turning = turn == 0 ? Affine.Identity : Affine.Turn(turn, bounds.Centre),
        };
    }

    internal LaidOutCard Card() => new(
        Title,
        new(_closed, _fold, null, _basePaint, _base
            ?? Outline.Rectangle(new(Length.Zero, Length.Zero, _closed.Width, _closed.Height)), Nowhere),
        [.. _faces],
        [.. _pieces],
        Units,
        Nowhere);
}
