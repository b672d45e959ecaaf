using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Polygonize;

namespace Sketch.Shapes;

/// <summary>
/// Conversion to polygons of the geometry library and back. Curves become chords that deviate by at most <see cref="Tolerance"/>.
/// </summary>
internal static class Polygons
{
    /// <summary>The most millimetres between a chord and its curve; for outlines wider than a metre, a millionth of their size.</summary>
    public const double Tolerance = 0.002;

    /// <summary>Contours whose box is smaller than this, in square millimetres, are ignored.</summary>
    private const double LeastBox = 1e-9;

    private static readonly GeometryFactory Factory = new();

    /// <param name="Line">The closed line.</param>
    /// <param name="Area">The enclosed area, positive where it runs clockwise as seen.</param>
    private sealed record Ring(LinearRing Line, double Area);

    /// <summary>What is inside the outline by the winding rule, as valid polygons.</summary>
    public static Geometry Of(Outline outline) => Read(outline).Area;

    /// <summary>
    /// What is inside the outline by the winding rule, as valid polygons, and whether its contours are exactly the edges of that area:
    /// none crosses another or itself, and none lies within the area.
    /// </summary>
    public static (Geometry Area, bool AsDrawn) Read(Outline outline)
    {
        var rings = Rings(outline, Tolerance);
        var (polygons, strays) = WithHoles(rings);
        var drawn = Factory.CreateMultiPolygon([.. polygons]);
        if (strays.Count == 0 && drawn.IsValid)
        {
            return (drawn, true);
        }

        polygons.AddRange(strays);
        return (polygons.TrueForAll(p => p.IsValid) ? United(polygons) : ByWinding(rings), false);
    }

    /// <summary>How many polygons lie inside the outline by the winding rule after merging those that overlap or share an edge.</summary>
    public static int CountOf(Outline outline)
    {
        var area = United([Of(outline)]);
        return Enumerable.Range(0, area.NumGeometries).Count(i => area.GetGeometryN(i) is Polygon { IsEmpty: false });
    }

    /// <summary>The union of both.</summary>
    public static Geometry United(IReadOnlyCollection<Geometry> parts) => parts.Count == 0
        ? Factory.CreatePolygon()
        : OverlayNGRobust.Union([.. parts], Factory);

    /// <summary>The polygons as an outline, outer contours clockwise as seen, holes the other way.</summary>
    public static Outline ToOutline(Geometry geometry)
    {
        var contours = new List<Contour>();
        for (var i = 0; i < geometry.NumGeometries; i++)
        {
            if (geometry.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                contours.Add(ToContour(polygon.Shell, clockwise: true));
                contours.AddRange(polygon.Holes.Select(h => ToContour(h, clockwise: false)));
            }
        }

        return new([.. contours]);
    }

    /// <summary>
    /// Whether the moved outline is one piece that nowhere crosses itself and lies at that distance from the old one everywhere: if so, it
    /// is the offset, however it was computed. The sharp corners of upright rectangles are farther away by design.
    /// </summary>
    public static bool LiesAt(Outline moved, Outline old, double distance)
    {
        var (rings, oldRings) = (Rings(moved, 5 * Tolerance), Rings(old, Tolerance));
        // A hole that outgrew its surroundings would be taken for the area.
        if (rings.Count != moved.Contours.Length || rings.Count != oldRings.Count || rings.Count(r => r.Area > 0) != 1
            || rings.Sum(r => r.Area) <= 0)
        {
            return false;
        }

        for (var i = 0; i < rings.Count; i++)
        {
            if (rings[i].Area > 0 != oldRings[i].Area > 0)
            {
                return false;
            }
        }

        var (area, strays) = WithHoles(rings);
        if (area.Count != 1 || strays.Count > 0 || !area[0].IsValid)
        {
            return false;
        }

        var stretches = oldRings.SelectMany(Stretches).ToList();
        foreach (var point in moved.Contours.Where(c => c.AsRectangle() is null).SelectMany(c => c.Samples()))
        {
            if (Math.Abs(DistanceTo(stretches, point) - distance) > 3 * Tolerance)
            {
                return false;
            }
        }

        return true;
    }

    private static Contour ToContour(LineString ring, bool clockwise)
    {
        var points = ring.Coordinates.Select(c => new Point(c.X, c.Y)).ToArray();
        var contour = ContourPen.Polygon(points.AsSpan(0, points.Length - 1));
        return contour.SignedArea >= 0 == clockwise ? contour : contour.Reverse();
    }

    private static List<Ring> Rings(Outline outline, double tolerance)
    {
        var bounds = outline.Bounds;
        tolerance = Math.Max(tolerance, Math.Max(bounds.Width, bounds.Height) * 1e-6);
        var rings = new List<Ring>();
        foreach (var contour in outline.Contours)
        {
            var points = contour.Flatten(tolerance);
            points.Add(points[0]);
            var coordinates = points.Select(p => new Coordinate(p.X, p.Y)).ToArray();
            coordinates = CoordinateArrays.RemoveRepeatedPoints(coordinates);
            var box = contour.Bounds;
            if (coordinates.Length >= 4 && box.Width * box.Height > LeastBox)
            {
                rings.Add(new(Factory.CreateLinearRing(coordinates), -Area.OfRingSigned(coordinates)));
            }
        }

        return rings;
    }

    /// <summary>
    /// Each hole goes to the smallest outer ring around it. As a hole cancels the winding of one ring, the union of the polygons is then
    /// what the winding rule fills, even where outer rings overlap. Rings that run like holes but lie in no other ring are
    /// strays, which the winding rule fills too.
    /// </summary>
    private static (List<Polygon> Polygons, List<Polygon> Strays) WithHoles(List<Ring> rings)
    {
        var forwards = rings.Sum(r => r.Area) >= 0;
        var shells = rings.Where(r => r.Area >= 0 == forwards).OrderBy(r => Math.Abs(r.Area)).ToList();
        var holes = shells.ConvertAll(_ => new List<LinearRing>());
        var strays = new List<Polygon>();
        foreach (var hole in rings.Where(r => r.Area >= 0 != forwards))
        {
            var around = shells.FindIndex(s => Math.Abs(s.Area) >= Math.Abs(hole.Area) && Surrounds(s.Line, hole.Line));
            if (around >= 0)
            {
                holes[around].Add(hole.Line);
            }
            else
            {
                strays.Add(Factory.CreatePolygon(hole.Line));
            }
        }

        return ([.. shells.Select((s, i) => Factory.CreatePolygon(s.Line, [.. holes[i]]))], strays);
    }

    private static bool Surrounds(LinearRing shell, LinearRing hole)
    {
        if (!shell.EnvelopeInternal.Contains(hole.EnvelopeInternal))
        {
            return false;
        }

        foreach (var point in hole.Coordinates)
        {
            var where = PointLocation.LocateInRing(point, shell.Coordinates);
            if (where != Location.Boundary)
            {
                return where == Location.Interior;
            }
        }

        return true;
    }

    /// <summary>
    /// For lines that cross themselves or a hole: cuts the plane along all of them and keeps the faces with a nonzero winding number.
    /// </summary>
    private static Geometry ByWinding(List<Ring> rings)
    {
        var polygonizer = new Polygonizer();
        polygonizer.Add(OverlayNGRobust.Union([.. rings.Select(r => (Geometry)Factory.CreateLineString(r.Line.Coordinates))], Factory));
        var faces = polygonizer.GetPolygons().Where(f => Winding(rings, f.InteriorPoint.Coordinate) != 0).ToList();
        return United(faces);
    }

    private static int Winding(List<Ring> rings, Coordinate point)
    {
        var winding = 0;
        foreach (var ring in rings)
        {
            var line = ring.Line.Coordinates;
            for (var i = 1; i < line.Length; i++)
            {
                var (a, b) = (line[i - 1], line[i]);
                if (a.Y <= point.Y != b.Y <= point.Y)
                {
                    var side = (b.X - a.X) * (point.Y - a.Y) - (point.X - a.X) * (b.Y - a.Y);
                    winding += a.Y <= point.Y ? (side > 0 ? 1 : 0) : (side < 0 ? -1 : 0);
                }
            }
        }

        return winding;
    }

    /// <summary>A few chords of a ring and the box around them, so that those far away need not be examined one by one.</summary>
    private static IEnumerable<(Coordinate[] Chords, Envelope Box)> Stretches(Ring ring)
    {
        const int chords = 16;
        var line = ring.Line.Coordinates;
        for (var from = 0; from + 1 < line.Length; from += chords)
        {
            var part = line[from..Math.Min(line.Length, from + chords + 1)];
            yield return (part, new Envelope(part));
        }
    }

    private static double DistanceTo(List<(Coordinate[] Chords, Envelope Box)> stretches, Point point)
    {
        var least = double.MaxValue;
        foreach (var (line, box) in stretches)
        {
            if (Squared(box, point) >= least)
            {
                continue;
            }

            for (var i = 1; i < line.Length; i++)
            {
                var (a, b) = (line[i - 1], line[i]);
                var (abX, abY, x, y) = (b.X - a.X, b.Y - a.Y, point.X - a.X, point.Y - a.Y);
                var along = Math.Clamp((x * abX + y * abY) / (abX * abX + abY * abY), 0, 1);
                var (offX, offY) = (x - along * abX, y - along * abY);
                least = Math.Min(least, offX * offX + offY * offY);
            }
        }

        return Math.Sqrt(least);

        static double Squared(Envelope box, Point point)
        {
            var (x, y) = (Math.Max(0, Math.Max(box.MinX - point.X, point.X - box.MaxX)),
                Math.Max(0, Math.Max(box.MinY - point.Y, point.Y - box.MaxY)));
            return x * x + y * y;
        }
    }
}
