using System.Collections.Immutable;
using Sketch.Lettering;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>A clause, recognized by its first word (two for <c>left of</c>, <c>in turn</c>).</summary>
public abstract record Clause(TextSpan Span);

/// <summary>A direction to move in.</summary>
public enum Direction
{
    /// <summary>To the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>Upwards.</summary>
    Up,

    /// <summary>Downwards.</summary>
    Down,
}

/// <summary><c>of navy</c>, <c>of blue and cream</c>.</summary>
public sealed record OfClause(ImmutableArray<PaintSyntax> Paints, TextSpan Span) : Clause(Span);

/// <summary><c>ink navy</c>: the colour of the words on a paper piece.</summary>
public sealed record InkClause(PaintSyntax Paint, TextSpan Span) : Clause(Span);

/// <summary><c>alternating</c> (neighbours differ) or <c>in turn</c> (reading order).</summary>
public sealed record TakeTurnsClause(bool Alternating, TextSpan Span) : Clause(Span);

/// <summary><c>with deep as red</c>.</summary>
public sealed record WithClause(NameSyntax Role, PaintSyntax Paint, TextSpan Span) : Clause(Span);

/// <summary><c>showing 1/8</c>, <c>showing bottom 1/2</c>.</summary>
public sealed record ShowingClause(Edge? Edge, Length Amount, TextSpan Span) : Clause(Span);

/// <summary><c>border 1/16</c>, <c>border bottom 1/2</c>.</summary>
public sealed record BorderClause(Edge? Edge, Length Amount, TextSpan Span) : Clause(Span);

/// <summary><c>left 1/4</c>.</summary>
public sealed record EdgeClause(Edge Edge, Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>lower right 3/8</c>.</summary>
public sealed record CornerClause(Edge Vertical, Edge Horizontal, Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>centre</c>.</summary>
public sealed record CentreClause(TextSpan Span) : Clause(Span);

/// <summary><c>shift up 1/8</c>.</summary>
public sealed record ShiftClause(Direction Direction, Length Distance, TextSpan Span) : Clause(Span);

/// <summary>A side of another piece.</summary>
public enum Side
{
    /// <summary>Above it.</summary>
    Above,

    /// <summary>Below it.</summary>
    Below,

    /// <summary>Left of it.</summary>
    LeftOf,

    /// <summary>Right of it.</summary>
    RightOf,
}

/// <summary><c>above low by 1/4</c>.</summary>
public sealed record BesideClause(Side Side, PathSyntax Of, Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>measured from wide</c>.</summary>
public sealed record MeasuredFromClause(PathSyntax From, TextSpan Span) : Clause(Span);

/// <summary><c>over bottom of pic</c>.</summary>
public sealed record OverClause(Edge Edge, PathSyntax Of, TextSpan Span) : Clause(Span);

/// <summary><c>along top</c>, <c>along top of sky</c>.</summary>
public sealed record AlongClause(Edge Edge, PathSyntax? Of, TextSpan Span) : Clause(Span);

/// <summary><c>around porthole</c>.</summary>
public sealed record AroundClause(PathSyntax What, TextSpan Span) : Clause(Span);

/// <summary><c>same size as sky</c>.</summary>
public sealed record SameSizeClause(PathSyntax As, TextSpan Span) : Clause(Span);

/// <summary>How the copies of a repeat are arranged.</summary>
public enum ArrangementKind
{
    /// <summary>Side by side.</summary>
    Row,

    /// <summary>One below the other.</summary>
    Column,

    /// <summary>Rows with a given number of copies across.</summary>
    Grid,

    /// <summary>The same, but every second row is half a copy further to the right and fits between the copies above it.</summary>
    Honeycomb,
}

/// <summary><c>in a row</c>, <c>in a grid 2 x 3</c> (across x down; down is null when omitted),
/// <c>in a honeycomb 4 across</c>.</summary>
public sealed record ArrangeClause(ArrangementKind Arrangement, int Across, int? Down, TextSpan Span) : Clause(Span);

/// <summary><c>gap 1/16</c>, <c>gap 1/8 x 1/4</c>.</summary>
public sealed record GapClause(Length Across, Length Down, TextSpan Span) : Clause(Span);

/// <summary><c>spread</c>, <c>spread edge to edge</c>.</summary>
public sealed record SpreadClause(bool EdgeToEdge, TextSpan Span) : Clause(Span);

/// <summary><c>lined up left</c>.</summary>
public sealed record LinedUpClause(Edge Edge, TextSpan Span) : Clause(Span);

/// <summary><c>step right 3/8</c>.</summary>
public sealed record StepClause(Direction Direction, Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>turn left 5</c>: degrees clockwise, so a turn to the left is negative.</summary>
public sealed record TurnClause(double Degrees, TextSpan Span) : Clause(Span);

/// <summary><c>raised 2 mm</c>, <c>on foam</c> (null for the default foam).</summary>
public sealed record RaisedClause(Length? Height, TextSpan Span) : Clause(Span);

/// <summary><c>shadow 1/16 of grey</c>: a copy of the outline beneath, set off to the right and down.</summary>
public sealed record ShadowClause(Length Fall, PaintSyntax Paint, TextSpan Span) : Clause(Span);

/// <summary><c>torn bottom</c>, <c>scalloped 1/4</c>: the form of one side or all, and its depth if that is written.</summary>
public sealed record EdgeCutClause(EdgeForm Form, Edge? Edge, Length? Depth, TextSpan Span) : Clause(Span);

/// <summary><c>stitched 1/16</c>: a dashed line inside the edge.</summary>
public sealed record StitchedClause(Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>scored top 1/2</c>: a line to fold along, at a distance from that side of the piece.</summary>
public sealed record ScoredClause(Edge Edge, Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>wrap 1/2</c> at both ends, <c>wrap left 1/2</c> at one.</summary>
public sealed record WrapClause(Edge? Edge, Length Amount, TextSpan Span) : Clause(Span);

/// <summary><c>using small-tag</c>: the die or rubber stamp that makes it.</summary>
public sealed record UsingClause(NameSyntax Tool, TextSpan Span) : Clause(Span);

/// <summary><c>tucked under</c>, <c>tucked under lamp</c>.</summary>
public sealed record TuckedClause(PathSyntax? Under, TextSpan Span) : Clause(Span);

/// <summary><c>through</c>.</summary>
public sealed record ThroughClause(TextSpan Span) : Clause(Span);

/// <summary><c>swallowtail left</c>.</summary>
public sealed record SwallowtailClause(bool Left, bool Right, TextSpan Span) : Clause(Span);

/// <summary>
/// A length with a word of its own: <c>corners</c>, <c>notch</c>, <c>letters</c>, <c>flap</c>, <c>thick</c>, <c>kerf</c>, <c>tails</c>,
/// <c>blanks</c> (zero for <c>blanks exact</c>), <c>hollow</c> (zero for <c>hollow</c> without a margin).
/// </summary>
public sealed record MeasureClause(string Word, Length Amount, TextSpan Span) : Clause(Span);

/// <summary><c>lines 5/16 apart</c>.</summary>
public sealed record LinesApartClause(Length Distance, TextSpan Span) : Clause(Span);

/// <summary><c>file "boat.svg"</c>.</summary>
public sealed record FileClause(QuotedSyntax File, TextSpan Span) : Clause(Span);

/// <summary><c>font "Lighthouse.ttf"</c>, or <c>lettering script</c>, which stands for the font of that kind.</summary>
public sealed record FontClause(QuotedSyntax Font, TextSpan Span) : Clause(Span);

/// <summary><c>arched 60</c>, <c>arched down 60</c>: degrees of a circle that the words cover, negative where their middle is
/// lowest.</summary>
public sealed record ArchedClause(double Degrees, TextSpan Span) : Clause(Span);

/// <summary><c>on circle 2</c>: the words run round a circle of that diameter.</summary>
public sealed record OnCircleClause(Length Diameter, TextSpan Span) : Clause(Span);

/// <summary><c>spaced 20 percent</c>: room added between letters, as a part of their height.</summary>
public sealed record SpacedClause(double Share, TextSpan Span) : Clause(Span);

/// <summary><c>ranged left</c>.</summary>
public sealed record RangedClause(LineRange Range, TextSpan Span) : Clause(Span);

/// <summary><c>capitals</c>.</summary>
public sealed record CapitalsClause(TextSpan Span) : Clause(Span);

/// <summary><c>fold left</c>, <c>fold gate</c>.</summary>
public sealed record FoldClause(Fold Fold, TextSpan Span) : Clause(Span);

/// <summary>A single word: <c>landscape</c>, <c>upright</c>, <c>any sheets</c>.</summary>
public sealed record FlagClause(string Word, TextSpan Span) : Clause(Span);

/// <summary><c>24 cards</c>, <c>3 sheets</c>, <c>2</c>: a count with its noun in lower case, if any.</summary>
public sealed record QuantityClause(int Count, string? Noun, TextSpan Span) : Clause(Span);

/// <summary><c>40 ft long</c>.</summary>
public sealed record LongClause(Length Amount, TextSpan Span) : Clause(Span);

/// <summary>A side of a paper: <c>front "gulls" #9fc9e8</c>, <c>back dots navy cream</c>, <c>front "scan.jpg" 12 wide</c>.</summary>
/// <param name="IsBack">Whether this is the back.</param>
/// <param name="Words">The name of a pattern or the file of a picture, or null.</param>
/// <param name="Colours">The pattern word and the colours, as written.</param>
/// <param name="TrueWidth">The true width of a picture, or null.</param>
/// <param name="Span">The place in the source.</param>
public sealed record SideClause(bool IsBack, QuotedSyntax? Words, ImmutableArray<PaintSyntax> Colours, Length? TrueWidth, TextSpan Span)
    : Clause(Span);

/// <summary><c>trim 1/4 bottom</c>.</summary>
public sealed record TrimClause(Length Amount, Edge Edge, TextSpan Span) : Clause(Span);

/// <summary><c>weight 216 gsm</c>, <c>weight 80 lb cover</c>.</summary>
public sealed record WeightClause(double Amount, bool IsPounds, string? Grade, TextSpan Span) : Clause(Span);

/// <summary><c>price 0.99</c>.</summary>
public sealed record PriceClause(decimal Amount, TextSpan Span) : Clause(Span);

/// <summary><c>collection "Harbour"</c>: papers made to go together.</summary>
public sealed record CollectionClause(QuotedSyntax Name, TextSpan Span) : Clause(Span);

/// <summary><c>spare 1</c>.</summary>
public sealed record SpareClause(int Count, TextSpan Span) : Clause(Span);

/// <summary><c>made by "Ann" and "Beth"</c>.</summary>
public sealed record MadeByClause(ImmutableArray<QuotedSyntax> Makers, TextSpan Span) : Clause(Span);
