using System.Runtime.InteropServices;

namespace Sketch.Shapes;

/// <summary>
/// Searches for the largest upright rectangle within an outline. For a left and a right edge the best height is exact: the tallest gap in
/// the outline over that column. Pairs of edges are tried at the outline's own corners and at even steps, and the best pairs
/// are then refined in ever smaller steps.
/// </summary>
internal sealed class LargestRectangle
{
    /// <summary>Even steps across the box, and also the most corners used.</summary>
    private const int Steps = 32;

    /// <summary>How many of the best pairs are refined.</summary>
    private const int Pursued = 6;

    /// <summary>Millimetres at which refining ends.</summary>
    private const double Finest = 1e-5;

    private readonly List<Line> _lines = [];
    private readonly Bounds _box;

    // What blocks a column, sorted by its top: reused to avoid an allocation for each of thousands of columns.
    private readonly double[] _tops;
    private readonly double[] _bottoms;

    /// <summary>Prepares the search.</summary>
    public LargestRectangle(Outline outline)
    {
        _box = outline.Bounds;
        foreach (var contour in outline.Contours)
        {
            var points = contour.Flatten(Polygons.Tolerance);
            for (var i = 0; i < points.Count; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Count]);
                _lines.Add(a.X <= b.X ? new(a, b, 1) : new(b, a, -1));
            }
        }

        (_tops, _bottoms) = (new double[_lines.Count], new double[_lines.Count]);
    }

    /// <summary>
    /// An edge of the outline from its left to its right end, and whether the contour runs that way (1) or against it (-1).
    /// </summary>
    private readonly record struct Line(Point From, Point To, int Direction)
    {
        public double At(double x) => From.Y + (To.Y - From.Y) * ((x - From.X) / (To.X - From.X));
    }

    /// <summary>The largest rectangle found, or null where there is none.</summary>
    public Bounds? Find()
    {
        var best = new List<Bounds>();
        var columns = Columns();
        for (var i = 0; i < columns.Count; i++)
        {
            for (var j = columns.Count - 1; j > i && !IsBeaten((columns[j] - columns[i]) * _box.Height); j--)
            {
                if (Tallest(columns[i], columns[j]) is { } found && !IsBeaten(AreaOf(found)))
                {
                    best.Add(found);
                    best.Sort((a, b) => AreaOf(b).CompareTo(AreaOf(a)));
                    best.RemoveRange(Math.Min(Pursued, best.Count), Math.Max(0, best.Count - Pursued));
                }
            }
        }

        return best.Count == 0 ? null : best.Select(Refine).MaxBy(AreaOf);

        bool IsBeaten(double area) => best.Count == Pursued && area <= AreaOf(best[^1]);
    }

    private static double AreaOf(Bounds rectangle) => rectangle.Width * rectangle.Height;

    private List<double> Columns()
    {
        var corners = _lines.Select(l => l.From.X).Distinct().Order().ToList();
        var some = Enumerable.Range(0, Math.Min(Steps, corners.Count))
            .Select(i => corners[i * corners.Count / Math.Min(Steps, corners.Count)]);
        var even = Enumerable.Range(0, Steps + 1).Select(i => _box.Left + _box.Width * i / Steps);
        return [.. some.Concat(even).Distinct().Order()];
    }

    private Bounds Refine(Bounds start)
    {
        var best = start;
        for (var step = _box.Width / Steps; step > Finest; step /= 2)
        {
            for (var moved = true; moved;)
            {
                moved = false;
                foreach (var (left, right) in (ReadOnlySpan<(int, int)>)[(-1, 0), (1, 0), (0, -1), (0, 1), (-1, 1), (1, -1), (1, 1),
                    (-1, -1)])
                {
                    if (Tallest(best.Left + left * step, best.Right + right * step) is { } found
                        && AreaOf(found) > AreaOf(best) * (1 + 1e-12))
                    {
                        (best, moved) = (found, true);
                    }
                }
            }
        }

        return best;
    }

    /// <summary>The tallest rectangle inside from one column to another.</summary>
    private Bounds? Tallest(double left, double right)
    {
        if (left < _box.Left || right > _box.Right || left >= right)
        {
            return null;
        }

        var count = 0;
        foreach (ref readonly var line in CollectionsMarshal.AsSpan(_lines))
        {
            if (line.From.X < right && line.To.X > left)
            {
                var (a, b) = line.From.X == line.To.X
                    ? (line.From.Y, line.To.Y)
                    : (line.At(Math.Max(left, line.From.X)), line.At(Math.Min(right, line.To.X)));
                (_tops[count], _bottoms[count]) = (Math.Min(a, b), Math.Max(a, b));
                count++;
            }
        }

        Array.Sort(_tops, _bottoms, 0, count);
        Bounds? best = null;
        var reached = count == 0 ? 0 : _bottoms[0];
        for (var i = 1; i < count; i++)
        {
            if (_tops[i] - reached > (best?.Height ?? 0) && IsInside((left + right) / 2, (reached + _tops[i]) / 2))
            {
                best = new(left, reached, right, _tops[i]);
            }

            reached = Math.Max(reached, _bottoms[i]);
        }

        return best;
    }

    private bool IsInside(double x, double y)
    {
        var winding = 0;
        foreach (var line in _lines)
        {
            if (line.From.X <= x && line.To.X > x && line.At(x) < y)
            {
                winding += line.Direction;
            }
        }

        return winding != 0;
    }
}
