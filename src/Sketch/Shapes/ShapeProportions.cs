using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>
/// Shapes whose size is given by one number, and their height for a width of 1:
/// <list type="table">
/// <listheader><term>shape</term><description>height / width</description></listheader>
/// <item><term>square, circle, scallop, quatrefoil</term><description>1</description></item>
/// <item><term>star</term><description>over the tips: 0.9510565163 for five points (regular star polygon), 2/√3 for six, close to 1 for
/// many</description></item>
/// <item><term>heart</term><description>9/10</description></item>
/// <item><term>hexagon</term><description>√3/2, all sides equal; the width is over the corners</description></item>
/// <item><term>tile</term><description>2/√3, all sides equal; the width is over the flat sides</description></item>
/// <item><term>arch</term><description>3/2</description></item>
/// <item><term>tag</term><description>2</description></item>
/// <item><term>pennant</term><description>5/4</description></item>
/// <item><term>drop</term><description>3/2</description></item>
/// <item><term>bow</term><description>3/4</description></item>
/// </list>
/// Rectangle, rounded, oval, banner, ticket, notched and pocket have none. Heart, arch, tag, pennant, drop and bow are
/// choices of this language, not standards.
/// </summary>
public static class ShapeProportions
{
    private static readonly double HexagonRatio = Math.Sqrt(3) / 2;

    /// <summary>Whether one number gives the size.</summary>
    public static bool Has(Shape shape) => Ratio(shape, ShapeStyle.Plain) is not null;

    /// <summary>Height for a width of 1, or null where the shape has no proportions of its own.</summary>
    public static double? Ratio(Shape shape, ShapeStyle style) => shape switch
    {
        Shape.Square or Shape.Circle or Shape.Scallop or Shape.Quatrefoil => 1,
        Shape.Star => StarForm.Of(style.Points).Box is var box ? box.Height / box.Width : null,
        Shape.Heart => 0.9,
        Shape.Hexagon => HexagonRatio,
        Shape.Tile => 1 / HexagonRatio,
        Shape.Arch => 1.5,
        Shape.Tag => 2,
        Shape.Pennant => 1.25,
        Shape.Drop => DropForm.Ratio,
        Shape.Bow => BowForm.Ratio,
        _ => null,
    };

    /// <summary>The height that goes with a width, to the nearest nanometre.</summary>
    /// <exception cref="ArgumentException">The shape has no proportions: see <see cref="Has"/>.</exception>
    public static Length HeightFor(Shape shape, ShapeStyle style, Length width) =>
        new((long)Math.Round(width.Nanometres * Known(shape, style), MidpointRounding.AwayFromZero));

    /// <summary>The width that goes with a height, to the nearest nanometre.</summary>
    /// <exception cref="ArgumentException">The shape has no proportions: see <see cref="Has"/>.</exception>
    public static Length WidthFor(Shape shape, ShapeStyle style, Length height) =>
        new((long)Math.Round(height.Nanometres / Known(shape, style), MidpointRounding.AwayFromZero));

    /// <summary>
    /// The point by which a shape is centred and about which it is turned, from the top left of its box: the middle of the box, but a
    /// star's is the centre of the circle through its tips. Fractions of a nanometre are cut off.
    /// </summary>
    public static Place CentreOf(Shape shape, ShapeStyle style, Size size) =>
        new(size.Width / 2, shape == Shape.Star ? new((long)(size.Height.Nanometres * StarCentre(style))) : size.Height / 2);

    /// <summary>The same point in millimetres on the face, for turning.</summary>
    public static Point TurningPoint(Shape shape, ShapeStyle style, Rect box) => new(
        box.Left.Millimetres + box.Width.Millimetres / 2,
        box.Top.Millimetres + box.Height.Millimetres * (shape == Shape.Star ? StarCentre(style) : 0.5));

    private static double StarCentre(ShapeStyle style) => StarForm.Of(style.Points).Box is var box ? -box.Top / box.Height : 0.5;

    private static double Known(Shape shape, ShapeStyle style) =>
        Ratio(shape, style) ?? throw new ArgumentException($"a {shape} has no proportions of its own", nameof(shape));
}
