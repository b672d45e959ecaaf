using NetTopologySuite.Operation.Buffer;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>Share of the distance that the geometry library may use to smooth its input.</summary>
    private const double Smoothing = 1e-4;

    /// <summary>
    /// The outline moved outwards everywhere by a distance in millimetres; a negative one moves it inwards, until nothing is left.
    /// An upright rectangle keeps its sharp corners exactly; on any other outline the corners that point outwards become round, as every
    /// point of the new edge lies at that distance from the old one. The result is true to less than 0.01 mm.
    /// </summary>
    /// <param name="distance">Millimetres on each side.</param>
    /// <param name="closeHoles">Whether holes are filled first, as behind cut-out letters; otherwise they shrink as the outline grows.</param>
    public Outline Grow(double distance, bool closeHoles = false)
    {
        var outline = closeHoles ? WithoutHoles() : this;
        if (distance == 0 || outline.IsEmpty)
        {
            return outline;
        }

        if (outline.AsRectangle() is { } box)
        {
            var grown = box.Grow(distance);
            return grown is { Width: > 0, Height: > 0 }
                ? new([ContourPen.Polygon(
                    new(grown.Left, grown.Top), new(grown.Right, grown.Top), new(grown.Right, grown.Bottom), new(grown.Left, grown.Bottom))])
                : Empty;
        }

        return Buffered(outline, distance);
    }

    /// <summary>
    /// The ring of that thickness in millimetres round this outline, holes of this outline not counted: the outline of a frame whose inner
    /// edge this is.
    /// </summary>
    public Outline Ring(double thickness) => Grow(thickness, closeHoles: true).Subtract(WithoutHoles());

    private static Outline Buffered(Outline outline, double distance)
    {
        // An arc's chord over an angle a strays by r (1 - cos a/2).
        var half = Math.Acos(Math.Max(0, 1 - Polygons.Tolerance / Math.Abs(distance)));
        var perQuarter = (int)Math.Clamp(Math.Ceiling(Math.PI / 4 / half), 2, 1_000);
        var parameters = new BufferParameters(perQuarter, EndCapStyle.Round, JoinStyle.Round, 1) { SimplifyFactor = Smoothing };
        return Polygons.ToOutline(BufferOp.Buffer(Polygons.Of(outline), distance, parameters));
    }
}
