using NetTopologySuite.Operation.Buffer;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>Fraction of the distance by which the geometry library may simplify its input.</summary>
    private const double Smoothing = 1e-4;

    /// <summary>Segments up to which an offset keeps lines and curves; the cost of checking it is quadratic.</summary>
    private const int MostSegments = 500;

    /// <summary>
    /// Contours up to which an outline is grown as a whole. More are grown one by one and then united, which gives the same area, but their
    /// lines, each of which may cross most of the others, are never processed all at once.
    /// </summary>
    private const int MostContours = 100;

    /// <summary>
    /// Segments of one contour from which it is grown in steps. Where corners lie much closer together than the distance, their round
    /// joins cross each other by the hundred; small first steps leave a smooth edge, and all steps together give the same area.
    /// </summary>
    private const int LongContour = 2_000;

    /// <summary>Fractions of the distance to grow first, one after the other.</summary>
    private static readonly double[] FirstSteps = [1.0 / 256, 1.0 / 64, 1.0 / 16];

    /// <summary>
    /// The outline moved outwards everywhere by a distance in millimetres; a negative one moves it inwards, possibly until nothing is left.
    /// An upright rectangle keeps its sharp corners exactly; on any other outline the corners that point outwards become round, as every
    /// point of the new edge lies at that distance from the old one. The result is true to less than 0.01 mm.
    /// </summary>
    /// <param name="distance">Millimetres on each side.</param>
    /// <param name="closeHoles">Whether holes are filled first, as behind cut-out letters; otherwise they shrink as the outline
    /// grows.</param>
    public Outline Grow(double distance, bool closeHoles = false)
    {
        var outline = closeHoles ? WithoutHoles() : this;
        if (distance == 0 || outline.IsEmpty)
        {
            return outline;
        }

        return outline.Contours.Length == 1 && outline.AsRectangle() is { } box && !(box.Grow(distance) is { Width: > 0, Height: > 0 })
            ? Empty
            : ByCurves(outline.Clockwise(), distance) ?? Buffered(outline, distance);
    }

    /// <summary>
    /// The ring of that thickness in millimetres round this outline, ignoring its holes: the outline of a frame whose inner
    /// edge this is.
    /// </summary>
    public Outline Ring(double thickness) => Grow(thickness, closeHoles: true).Subtract(WithoutHoles());

    /// <summary>Keeps lines and curves; null for very long outlines and where contours cross themselves or each other on the way.</summary>
    private static Outline? ByCurves(Outline outline, double distance)
    {
        if (outline.Corners > MostSegments)
        {
            return null;
        }

        var contours = outline.Contours.Select(c => CurveOffset.Of(c, distance)).ToList();
        if (contours.Contains(null))
        {
            return null;
        }

        var moved = new Outline([.. contours.OfType<Contour>()]);
        var cannotCross = outline.Contours.Length == 1
            && (outline.AsRectangle() is not null || (distance > 0 && outline.Contours[0].IsConvex()));
        return cannotCross || Polygons.LiesAt(moved, outline, Math.Abs(distance)) ? moved : null;
    }

    private static Outline Buffered(Outline outline, double distance)
    {
        // An arc's chord over an angle a deviates by r (1 - cos a/2).
        var strays = Math.Max(Polygons.Tolerance / Math.Abs(distance), 1e-6);
        var half = Math.Acos(Math.Max(0, 1 - strays));
        var perQuarter = (int)Math.Clamp(Math.Ceiling(Math.PI / 4 / half), 2, 600);
        var parameters = new BufferParameters(perQuarter, EndCapStyle.Round, JoinStyle.Round, 1) { SimplifyFactor = Smoothing };
        var area = Polygons.Of(outline);
        if (distance > 0 && outline.Contours.Any(c => c.Segments.Length > LongContour))
        {
            foreach (var share in FirstSteps)
            {
                area = BufferOp.Buffer(area, distance * share, parameters);
            }

            distance *= 1 - FirstSteps.Sum();
        }

        if (distance < 0 || outline.Contours.Length <= MostContours)
        {
            return Polygons.ToOutline(BufferOp.Buffer(area, distance, parameters));
        }

        var parts = Enumerable.Range(0, area.NumGeometries).Select(i => BufferOp.Buffer(area.GetGeometryN(i), distance, parameters));
        return Polygons.ToOutline(Polygons.United([.. parts]));
    }
}
