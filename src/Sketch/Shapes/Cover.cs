using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using NetTopologySuite.Operation.Distance;
using NetTopologySuite.Operation.OverlayNG;

namespace Sketch.Shapes;

/// <summary>
/// An outline prepared for many containment queries. It is enlarged by <see cref="Slack"/>, so that what ends flush
/// with it lies within, and neighbours that touch leave no gap.
/// </summary>
internal sealed class Cover
{
    /// <summary>Millimetres on each side.</summary>
    public const double Slack = 0.005;

    private readonly Outline _outline;
    private readonly Bounds? _rectangle;
    private Geometry? _area;
    private IPreparedGeometry? _prepared;
    private IndexedPointInAreaLocator? _locator;
    private IndexedFacetDistance? _edge;

    public Cover(Outline outline)
    {
        _outline = outline;
        _rectangle = outline.AsRectangle()?.Grow(Slack);
        Bounds = _rectangle ?? outline.Bounds.Grow(Slack);
    }

    /// <summary>The box around it.</summary>
    public Bounds Bounds { get; }

    /// <summary>Whether it is an upright rectangle.</summary>
    public bool IsRectangle => _rectangle is not null;

    /// <summary>The number of segment ends, which is the cost of computing with it.</summary>
    public int Corners => _outline.Corners;

    private Geometry Area => _area ??= Polygons.Of(_rectangle is { } box ? Outline.Rectangle(box.ToRect()) : _outline.Grow(Slack));

    /// <summary>Whether a point lies inside or on the edge.</summary>
    public bool Holds(Point point)
    {
        if (_rectangle is not null || !Bounds.Covers(new(point.X, point.Y, point.X, point.Y)))
        {
            return Bounds.Covers(new(point.X, point.Y, point.X, point.Y));
        }

        _locator ??= new(Area);
        return _locator.Locate(new(point.X, point.Y)) != Location.Exterior;
    }

    /// <summary>Whether an outline lies within, taking holes of this one into account.</summary>
    public bool Covers(Outline small)
    {
        if (!Bounds.Covers(small.Bounds))
        {
            return false;
        }

        _prepared ??= IsRectangle ? null : PreparedGeometryFactory.Prepare(Area);
        return IsRectangle || _prepared!.Covers(Polygons.Of(small));
    }

    /// <summary>
    /// How far in millimetres the corners of an outline lie outside, at most; 0 when all are inside or this one has no area.
    /// </summary>
    public double Beyond(Outline outline)
    {
        if (Area.IsEmpty)
        {
            return 0;
        }

        _edge ??= new(Area);
        var farthest = 0.0;
        foreach (var corner in Polygons.Of(outline).Coordinates)
        {
            if (!Holds(new(corner.X, corner.Y)))
            {
                farthest = Math.Max(farthest, _edge.Distance(Area.Factory.CreatePoint(corner)));
            }
        }

        return farthest;
    }

    /// <summary>Whether several outlines together cover another completely.</summary>
    public static bool CoverTogether(IReadOnlyCollection<Cover> covers, Outline small)
    {
        var area = Polygons.Of(small);
        var rest = OverlayNGRobust.Overlay(
            area, Polygons.United([.. covers.Select(c => c.Area)]), NetTopologySuite.Operation.Overlay.SpatialFunction.Difference);
        return rest.Area <= Slack * Slack;
    }
}
