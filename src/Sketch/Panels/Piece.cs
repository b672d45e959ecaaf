using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Panels;

/// <summary>One physical piece or printed thing, laid out. Boxes and outlines ignore all turns.</summary>
/// <param name="Path">Its path.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Paint">What it is made of, or the ink.</param>
/// <param name="Box">Its own box on its face, by which it and what lies on it are placed: without wraps, windows or mats.</param>
/// <param name="Outline">
/// The finished outline on its face in millimetres, windows cut out. For ink the inked outline. Empty for a group.
/// </param>
/// <param name="Location">The line that describes it.</param>
public sealed record Piece(
    PiecePath Path,
    PieceKind Kind,
    Paint Paint,
    Rect Box,
    Outline Outline,
    Location Location)
{
    /// <summary>The face it belongs to.</summary>
    public FaceKind Face => Path.Face;

    /// <summary>What it physically is.</summary>
    public PieceMatter Matter => Kind.Traits.Matter;

    /// <summary>Paper beyond the finished box on each side that wraps to the back.</summary>
    public Insets Wrap { get; init; }

    /// <summary>For a mat: what it shows beyond what lies directly on it, on each side.</summary>
    public Insets? Border { get; init; }

    /// <summary>
    /// For a mat: whether the file writes sides that differ (<c>border bottom 1/2</c>, <c>+1/8 x 1/4</c>), or the piece runs to its
    /// parent's edge.
    /// </summary>
    public bool UnevenAsWritten { get; init; }

    /// <summary>
    /// The measure that the file gives if the other follows from the shape's proportions; null if both are given or both follow.
    /// </summary>
    public WrittenMeasure? Written { get; init; }

    /// <summary>What determines the width and the height of the piece itself.</summary>
    public (Sizing Width, Sizing Height) Sizing { get; init; }

    /// <summary>
    /// The point that stays fixed when the piece is resized: an edge of its outermost mat, or its own middle. Null for
    /// copies, whose places depend on each other's sizes.
    /// </summary>
    public Place? Anchor { get; init; }

    /// <summary>Whether its line shifts it across and down.</summary>
    public (bool Across, bool Down) IsShifted { get; init; }

    /// <summary>The turn of its stack about its centre in degrees clockwise, not counting what it lies on.</summary>
    public double Turn { get; init; }

    /// <summary>All turns, its own and those of what it lies on: from the unturned face to its actual place.</summary>
    public Affine Turning { get; init; } = Affine.Identity;

    /// <summary>Height of the foam directly beneath it.</summary>
    public Length Foam { get; init; }

    /// <summary>Height of its underside above the base by foam alone: all foam beneath it.</summary>
    public Length Raised { get; init; }

    /// <summary>
    /// The index in <see cref="LaidOutCard.Pieces"/> of the piece it lies on, or -1 for the face.
    /// </summary>
    public int LiesOn { get; init; } = -1;

    /// <summary>The words written, inked or cut; null for none.</summary>
    public PieceWords? Words { get; init; }

    /// <summary>How many copies its line makes.</summary>
    public int CopiesOfLine { get; init; } = 1;

    /// <summary>Depth of a swallowtail's notch at the left and right end; zero if straight.</summary>
    public (Length Left, Length Right) Notches { get; init; }

    /// <summary>How far inside its edge a dashed line of stitches runs; null for none.</summary>
    public Length? Stitched { get; init; }

    /// <summary>The stitches on its finished outline, each an open line in millimetres on its face, unturned.</summary>
    public ImmutableArray<Contour> Stitches => Stitched is { } inside ? Stitching.Of(Outline, inside.Millimetres) : [];

    /// <summary>Where it is scored to be folded: distances from sides of its box.</summary>
    public ImmutableArray<(Edge From, Length Distance)> Scored { get; init; } = [];

    /// <summary>The score lines across its finished outline, in millimetres on its face, unturned.</summary>
    public ImmutableArray<(Point From, Point To)> Scores => [.. Scored.SelectMany(s => Outline.Sections(s.From is Edge.Left or Edge.Right,
        s.From switch
        {
            Edge.Left => (Box.Left + s.Distance).Millimetres,
            Edge.Right => (Box.Right - s.Distance).Millimetres,
            Edge.Top => (Box.Top + s.Distance).Millimetres,
            _ => (Box.Bottom - s.Distance).Millimetres,
        }))];

    /// <summary>The kind whose outline it has: its own unless its line names a shape, as in <c>gem star 1/4</c>.</summary>
    public PieceKind Shape { get => _shape ?? Kind; init => _shape = value; }

    private readonly PieceKind? _shape;

    /// <summary>The distance from one writing line to the next; null for what has none.</summary>
    public Length? LinesApart { get; init; }

    /// <summary>Length of each of two ends that hang loose from its middle; they count in no size and no check.</summary>
    public Length Tails { get; init; }

    /// <summary>The name of the die or rubber stamp that makes it; null for none.</summary>
    public string? Tool { get; init; }

    /// <summary>Whether it is bought by its thickness and only cut to length, if at all: foil lines, gems, tape.</summary>
    public bool IsReadyMade => Matter == PieceMatter.Ready || Kind == PieceKind.Line;

    /// <summary>The box of its finished outline: its own box, unless a window takes a whole edge away.</summary>
    public Rect Finished { get => _finished ?? Box; init => _finished = value; }

    private readonly Rect? _finished;

    /// <summary>The box of what is cut: that of the finished outline with its wraps; null for what is not cut from paper.</summary>
    public Size? Cut => Matter == PieceMatter.Paper ? Finished.Grow(Wrap).Size : null;

    /// <summary>How many parts it falls into when it is cut, such as letters that do not touch; 1 for what is not cut from paper.</summary>
    public int CutParts => Matter == PieceMatter.Paper ? Math.Max(1, Outline.Parts) : 1;

    /// <summary>The finished outline at its actual place, with all turns.</summary>
    public Outline TurnedOutline => Turning.IsIdentity ? Outline : Outline.Transform(Turning);
}

/// <summary>The one measure given for a shape with proportions of its own.</summary>
public enum WrittenMeasure
{
    /// <summary>Its width; also for a single number.</summary>
    Width,

    /// <summary>Its height.</summary>
    Height,
}

/// <summary>What determines a measure of a piece.</summary>
public enum Sizing
{
    /// <summary>Something else: what it lies on, its mats, its neighbours or its proportions.</summary>
    Follows,

    /// <summary>A length written on its line.</summary>
    Written,

    /// <summary>The words that it fits.</summary>
    Words,
}

/// <summary>Words on or of a piece.</summary>
/// <param name="Text">The words.</param>
/// <param name="Ink">The inked outline on the face, unturned, in millimetres; empty for a cut-out word, whose outline is the piece's
/// own.</param>
/// <param name="NamedInk">The ink that the file names, for a cut-out word its paper; null if the file names none.</param>
/// <param name="LetterHeight">Height of a capital.</param>
/// <param name="Fits">Whether the words fit their piece at that height.</param>
public sealed record PieceWords(string Text, Outline Ink, Paint? NamedInk, Length LetterHeight, bool Fits)
{
    /// <summary>
    /// The part of the piece's box in which the words are centred: all of it, but for a banner the part between its notches.
    /// </summary>
    public required Rect Room { get; init; }

    /// <summary>
    /// Millimetres from the top of the first capital to the last baseline; for words on an arc the height of their ink.
    /// </summary>
    public required double Height { get; init; }

    /// <summary>The height of a small x; that of a capital where the words have no small letters.</summary>
    public Length SmallLetterHeight { get; init; } = LetterHeight;

    /// <summary>The ink of the words: the named one, else black.</summary>
    public Paint InkPaint => NamedInk ?? Paint.BlackInk;

    /// <summary>
    /// The word of the clause that names the ink or could: <c>ink</c>, or <c>of</c> for cut-out words and text written with it.
    /// </summary>
    public string InkClause { get; init; } = "ink";
}
