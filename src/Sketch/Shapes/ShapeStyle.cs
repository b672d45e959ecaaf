using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>Which ends of a banner are notched.</summary>
public enum Swallowtail
{
    /// <summary>Both ends straight.</summary>
    None,

    /// <summary>The left end.</summary>
    Left,

    /// <summary>The right end.</summary>
    Right,

    /// <summary>Both ends.</summary>
    Both,
}

/// <summary>What describes a shape besides its size.</summary>
public sealed record ShapeStyle
{
    /// <summary>Fewest tips of a star.</summary>
    public const int FewestPoints = 3;

    /// <summary>Most tips of a star.</summary>
    public const int MostPoints = 60;

    /// <summary>The defaults: five points, no notch, the shape's usual corners.</summary>
    public static readonly ShapeStyle Plain = new();

    /// <summary>
    /// Tips of a star; numbers outside <see cref="FewestPoints"/> to <see cref="MostPoints"/> are clamped.
    /// </summary>
    public int Points { get; init; } = 5;

    /// <summary>
    /// Radius of the corners of a rectangle, square or rounded piece, or of the quarter circles cut out of a ticket's, or side of the
    /// squares cut out of a notched piece's, at most half the shorter side. Null: square corners, and an eighth of the shorter side for
    /// <see cref="Shape.Rounded"/>, <see cref="Shape.Ticket"/> and <see cref="Shape.Notched"/>.
    /// </summary>
    public Length? Corner { get; init; }

    /// <summary>The notched ends of a banner.</summary>
    public Swallowtail Swallowtail { get; init; }

    /// <summary>
    /// Depth of a notch. Null: half a banner's height, or a sixth of a pocket's width, at most 1/2 in (common practice among makers, no
    /// source).
    /// </summary>
    public Length? Notch { get; init; }

    /// <summary>The forms of straight sides.</summary>
    public EdgeCuts Edges { get; init; } = EdgeCuts.None;

    /// <summary>
    /// How deep the notches of a banner of that size are: the requested depth, limited so that the strip stays in one piece
    /// (its width for one notch, half of it for each of two).
    /// </summary>
    public (Length Left, Length Right) Notches(Size size)
    {
        var most = Swallowtail == Swallowtail.Both ? size.Width / 2 : size.Width;
        var depth = Length.Max(Length.Zero, Length.Min(Notch ?? size.Height / 2, most));
        return (Swallowtail is Swallowtail.Left or Swallowtail.Both ? depth : Length.Zero,
            Swallowtail is Swallowtail.Right or Swallowtail.Both ? depth : Length.Zero);
    }

    /// <summary>
    /// The depth of a pocket's notch, which is the radius of its half circle: the requested depth, limited to half of the width and to the
    /// height; without a request to half of the height.
    /// </summary>
    public Length ThumbNotch(Size size)
    {
        var usual = Length.Min(Length.Min(size.Width / 6, size.Height / 2), Length.Inch(1) / 2);
        return Length.Max(Length.Zero, Length.Min(Notch ?? usual, MostThumbNotch(size)));
    }

    /// <summary>The deepest notch that leaves a pocket of that size in one piece.</summary>
    public static Length MostThumbNotch(Size size) => Length.Min(size.Width / 2, size.Height);

    /// <summary>The radius that the corners of a piece of that size get; none for square corners.</summary>
    public Length CornerRadius(Shape shape, Size size)
    {
        var shorter = Length.Max(Length.Zero, Length.Min(size.Width, size.Height));
        var radius = Corner ?? (shape is Shape.Rounded or Shape.Ticket or Shape.Notched ? shorter / 8 : Length.Zero);
        return Length.Max(Length.Zero, Length.Min(radius, shorter / 2));
    }
}
