using System.Collections.Immutable;

namespace Sketch.Shapes;

/// <summary>A point for drawing, in millimetres; x runs right, y down.</summary>
public readonly record struct Point(double X, double Y);

/// <summary>
/// The outline of a piece: closed contours in millimetres, x right and y down from the top left of the piece's own box.
/// Inside is where the winding number is not zero; holes run in the opposite direction to the outer contours.
/// The engine's own outlines run clockwise as seen, their holes anticlockwise.
/// </summary>
public sealed partial record Outline(ImmutableArray<Contour> Contours);

/// <summary>A closed line; if the last segment does not end at <paramref name="Start"/>, a straight line closes it.</summary>
public sealed partial record Contour(Point Start, ImmutableArray<Segment> Segments);

/// <summary>A straight line to <see cref="End"/>, or a cubic Bézier curve when it has control points.</summary>
public readonly partial record struct Segment(Point Control1, Point Control2, Point End, bool IsLine)
{
    /// <summary>A straight line.</summary>
    public static Segment Line(Point end) => new(end, end, end, true);

    /// <summary>A cubic Bézier curve.</summary>
    public static Segment Curve(Point control1, Point control2, Point end) => new(control1, control2, end, false);
}
