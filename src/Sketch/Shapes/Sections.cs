using System.Collections.Immutable;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>The parts of an upright or level line that lie inside this outline, in order; millimetres.</summary>
    /// <param name="isUpright">Whether the line is upright; otherwise it is level.</param>
    /// <param name="at">Where it lies: its x if it is upright, else its y.</param>
    public ImmutableArray<(Point From, Point To)> Sections(bool isUpright, double at)
    {
        var crossings = new List<(double At, int Winding)>();
        foreach (var contour in Contours)
        {
            var points = contour.Flatten(Polygons.Tolerance);
            for (var i = 0; i < points.Count; i++)
            {
                var (a, b) = (Turned(points[i]), Turned(points[(i + 1) % points.Count]));
                if (a.Y <= at != b.Y <= at)
                {
                    crossings.Add((a.X + (b.X - a.X) * (at - a.Y) / (b.Y - a.Y), b.Y > a.Y ? 1 : -1));
                }
            }
        }

        var sections = ImmutableArray.CreateBuilder<(Point, Point)>();
        var (winding, start) = (0, 0.0);
        foreach (var (where, change) in crossings.OrderBy(c => c.At))
        {
            if (winding == 0)
            {
                start = where;
            }

            winding += change;
            if (winding == 0 && where > start)
            {
                sections.Add((Turned(new(start, at)), Turned(new(where, at))));
            }
        }

        return sections.ToImmutable();

        // An upright line is searched as a level one, with x and y exchanged.
        Point Turned(Point point) => isUpright ? new(point.Y, point.X) : point;
    }
}
