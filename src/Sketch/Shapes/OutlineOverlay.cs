using NetTopologySuite.Geometries.Prepared;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>
    /// What is left when the other outline is cut out. A hole wholly inside keeps its curves; where it meets an edge, curves become chords
    /// at most 0.002 mm off.
    /// </summary>
    public Outline Subtract(Outline hole)
    {
        if (IsEmpty || hole.IsEmpty || !Bounds.Overlaps(hole.Bounds))
        {
            return this;
        }

        if (HoldsInside(hole))
        {
            var against = SignedArea >= 0 == hole.SignedArea >= 0;
            return new([.. Contours, .. against ? hole.Contours.Select(c => c.Reverse()) : hole.Contours]);
        }

        return Overlay(this, hole, SpatialFunction.Difference);
    }

    /// <summary>The intersection of both.</summary>
    public Outline Intersect(Outline other)
    {
        if (IsEmpty || other.IsEmpty || !Bounds.Overlaps(other.Bounds))
        {
            return Empty;
        }

        return AsRectangle() is { } box && box.Covers(other.Bounds) ? other
            : other.AsRectangle() is { } around && around.Covers(Bounds) ? this
            : Overlay(this, other, SpatialFunction.Intersection);
    }

    /// <summary>Whether the smaller outline lies within this one; it may reach past the edge by the tolerance, in millimetres.</summary>
    public bool Covers(Outline small, double tolerance = 0.005)
    {
        if (small.IsEmpty)
        {
            return true;
        }

        if (IsEmpty || !Bounds.Grow(tolerance).Covers(small.Bounds))
        {
            return false;
        }

        return AsRectangle() is not null || Polygons.Of(this).Buffer(tolerance).Covers(Polygons.Of(small));
    }

    /// <summary>The area of the intersection in square millimetres.</summary>
    public double OverlapArea(Outline other)
    {
        if (IsEmpty || other.IsEmpty || !Bounds.Overlaps(other.Bounds))
        {
            return 0;
        }

        if (AsRectangle() is { } a && other.AsRectangle() is { } b)
        {
            return (Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left)) * (Math.Min(a.Bottom, b.Bottom) - Math.Max(a.Top, b.Top));
        }

        return Intersect(other).Area;
    }

    private static Outline Overlay(Outline a, Outline b, SpatialFunction function) =>
        Polygons.ToOutline(OverlayNGRobust.Overlay(Polygons.Of(a), Polygons.Of(b), function));

    private bool HoldsInside(Outline hole)
    {
        var inner = hole.Bounds;
        return AsRectangle() is { } box
            ? box.Left < inner.Left && box.Top < inner.Top && box.Right > inner.Right && box.Bottom > inner.Bottom
            : PreparedGeometryFactory.Prepare(Polygons.Of(this)).ContainsProperly(Polygons.Of(hole));
    }
}
