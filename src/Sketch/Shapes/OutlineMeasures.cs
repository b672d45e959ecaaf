using Sketch.Units;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>Whether it has no contours.</summary>
    public bool IsEmpty => Contours.IsEmpty;

    /// <summary>The number of segment ends, which is the cost of computing with it.</summary>
    internal int Corners => Contours.Sum(c => c.Segments.Length);

    /// <summary>
    /// The smallest upright box around the outline itself, not around the control points of its curves; all zero when there are no
    /// contours.
    /// </summary>
    public Bounds Bounds
    {
        get
        {
            if (Contours.IsEmpty)
            {
                return default;
            }

            var bounds = Contours[0].Bounds;
            foreach (var contour in Contours.AsSpan()[1..])
            {
                bounds = bounds.With(contour.Bounds);
            }

            return bounds;
        }
    }

    /// <summary>
    /// The area in square millimetres without the holes. Contours that overlap are counted separately: pass such an outline
    /// through <see cref="Union(IEnumerable{Outline})"/> first.
    /// </summary>
    public double Area => Math.Abs(SignedArea);

    /// <summary>The area, negative where the outer contours run anticlockwise as seen.</summary>
    internal double SignedArea
    {
        get
        {
            var sum = 0.0;
            foreach (var contour in Contours)
            {
                sum += contour.SignedArea;
            }

            return sum;
        }
    }

    /// <summary>The number of separate areas, such as letters that do not touch; none when it is empty.</summary>
    public int Parts
    {
        get
        {
            var forwards = SignedArea >= 0;
            var outer = Contours.Count(c => c.SignedArea >= 0 == forwards);
            return outer <= 1 ? outer : Polygons.CountOf(this);
        }
    }

    /// <summary>An upright rectangle on a face.</summary>
    public static Outline Rectangle(Rect rect) => ShapeOutline.Build(Shape.Rectangle, ShapeStyle.Plain, rect);

    /// <summary>A circle; the radius in millimetres.</summary>
    public static Outline Circle(Point centre, double radius) =>
        new([ContourPen.Ellipse(new Bounds(centre.X, centre.Y, centre.X, centre.Y).Grow(radius))]);

    /// <summary>The outline with every hole filled.</summary>
    public Outline WithoutHoles()
    {
        var forwards = SignedArea >= 0;
        return Contours.Length < 2 ? this : new([.. Contours.Where(c => c.SignedArea >= 0 == forwards)]);
    }

    /// <summary>
    /// The largest upright rectangle inside, clear of holes, such as what can still be cut from the waste of a window; null
    /// when nothing fits. Its edges keep to the outline within 0.002 mm; its area is the largest found by a search that is exact for
    /// rectangles and very nearly so for other shapes.
    /// </summary>
    public Bounds? LargestRectangleInside() => AsRectangle() is { Width: > 0, Height: > 0 } box ? box : new LargestRectangle(this).Find();

    /// <summary>The box, if the outline is one upright rectangle and nothing else; otherwise null.</summary>
    internal Bounds? AsRectangle() => Contours.Length == 1 ? Contours[0].AsRectangle() : null;
}
