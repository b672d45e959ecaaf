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

    private readonly Bounds _box;

    // The edges of narrow columns from left to right, and for each column the lines in it and the gaps over its whole width: so a pair
    // of edges needs the lines of the two columns in which it ends, and not all.
    private readonly List<double> _edges;
    private readonly List<Line>[] _lines;
    private readonly List<Gap>[] _gaps;

    /// <summary>Prepares the search.</summary>
    public LargestRectangle(Outline outline)
    {
        _box = outline.Bounds;
        var lines = new List<Line>();
        foreach (var contour in outline.Contours)
        {
            var points = contour.Flatten(Polygons.Tolerance);
            for (var i = 0; i < points.Count; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Count]);
                lines.Add(a.X <= b.X ? new(a, b, 1) : new(b, a, -1));
            }
        }

        _edges = Edges(lines);
        _lines = [.. _edges.SkipLast(1).Select(_ => new List<Line>())];
        foreach (var line in lines)
        {
            for (var i = ColumnAt(line.From.X); i < _lines.Length && (_edges[i] < line.To.X || i == ColumnAt(line.From.X)); i++)
            {
                _lines[i].Add(line);
            }
        }

        _gaps = [.. _lines.Select((_, i) => GapsIn(i, _edges[i], _edges[i + 1]))];
    }

    /// <summary>
    /// An edge of the outline from its left to its right end, and whether the contour runs that way (1) or against it (-1).
    /// </summary>
    private readonly record struct Line(Point From, Point To, int Direction)
    {
        public double At(double x) => From.Y + (To.Y - From.Y) * ((x - From.X) / (To.X - From.X));
    }

    /// <summary>A stretch from top to bottom that is inside the outline over the whole width of a column.</summary>
    private readonly record struct Gap(double Top, double Bottom);

    /// <summary>The largest rectangle found, or null where there is none.</summary>
    public Bounds? Find()
    {
        var best = new List<Bounds>();
        for (var i = 0; i < _gaps.Length; i++)
        {
            var gaps = _gaps[i];
            for (var j = i + 1; gaps.Count > 0; j++)
            {
                if (Tallest(gaps, _edges[i], _edges[j]) is { } found && !(best.Count == Pursued && AreaOf(found) <= AreaOf(best[^1])))
                {
                    best.Add(found);
                    best.Sort((a, b) => AreaOf(b).CompareTo(AreaOf(a)));
                    best.RemoveRange(Math.Min(Pursued, best.Count), Math.Max(0, best.Count - Pursued));
                }

                gaps = j < _gaps.Length ? Common(gaps, _gaps[j]) : [];
            }
        }

        return best.Count == 0 ? null : best.Select(Refine).MaxBy(AreaOf);
    }

    private static double AreaOf(Bounds rectangle) => rectangle.Width * rectangle.Height;

    private List<double> Edges(List<Line> lines)
    {
        var corners = lines.Select(l => l.From.X).Distinct().Order().ToList();
        var some = Enumerable.Range(0, Math.Min(Steps, corners.Count))
            .Select(i => corners[i * corners.Count / Math.Min(Steps, corners.Count)]);
        var even = Enumerable.Range(0, Steps + 1).Select(i => _box.Left + _box.Width * i / Steps);
        return [.. some.Concat(even).Append(_box.Right).Where(x => x >= _box.Left && x <= _box.Right).Distinct().Order()];
    }

    /// <summary>The column that begins at or before a place.</summary>
    private int ColumnAt(double x)
    {
        var found = _edges.BinarySearch(x);
        return Math.Clamp(found < 0 ? ~found - 1 : found, 0, _lines.Length - 1);
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

    /// <summary>The tallest rectangle inside from one place to another.</summary>
    private Bounds? Tallest(double left, double right)
    {
        if (left < _box.Left || right > _box.Right || left >= right)
        {
            return null;
        }

        var (first, last) = (ColumnAt(left), ColumnAt(right));
        var gaps = GapsIn(first, left, Math.Min(right, _edges[first + 1]));
        for (var i = first + 1; i < last && gaps.Count > 0; i++)
        {
            gaps = Common(gaps, _gaps[i]);
        }

        if (last > first && right > _edges[last])
        {
            gaps = Common(gaps, GapsIn(last, _edges[last], right));
        }

        return Tallest(gaps, left, right);
    }

    private static Bounds? Tallest(List<Gap> gaps, double left, double right)
    {
        Bounds? best = null;
        foreach (var gap in gaps)
        {
            if (gap.Bottom - gap.Top > (best?.Height ?? 0))
            {
                best = new(left, gap.Top, right, gap.Bottom);
            }
        }

        return best;
    }

    /// <summary>The gaps over part of a column, from the top down.</summary>
    private List<Gap> GapsIn(int column, double left, double right)
    {
        var blocked = new List<(double Top, double Bottom)>();
        foreach (var line in _lines[column])
        {
            if (line.From.X < right && line.To.X > left)
            {
                var (a, b) = line.From.X == line.To.X
                    ? (line.From.Y, line.To.Y)
                    : (line.At(Math.Max(left, line.From.X)), line.At(Math.Min(right, line.To.X)));
                blocked.Add((Math.Min(a, b), Math.Max(a, b)));
            }
        }

        blocked.Sort();
        var gaps = new List<Gap>();
        var end = blocked.Count == 0 ? 0 : blocked[0].Bottom;
        foreach (var (top, bottom) in blocked.Skip(1))
        {
            if (top > end && IsInside(column, (left + right) / 2, (end + top) / 2))
            {
                gaps.Add(new(end, top));
            }

            end = Math.Max(end, bottom);
        }

        return gaps;
    }

    /// <summary>What is inside over both of two neighbouring columns.</summary>
    private static List<Gap> Common(List<Gap> left, List<Gap> right)
    {
        var common = new List<Gap>();
        for (int i = 0, j = 0; i < left.Count && j < right.Count;)
        {
            var (top, bottom) = (Math.Max(left[i].Top, right[j].Top), Math.Min(left[i].Bottom, right[j].Bottom));
            if (bottom > top)
            {
                common.Add(new(top, bottom));
            }

            if (left[i].Bottom < right[j].Bottom)
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return common;
    }

    private bool IsInside(int column, double x, double y)
    {
        var winding = 0;
        foreach (var line in _lines[column])
        {
            if (line.From.X <= x && line.To.X > x && line.At(x) < y)
            {
                winding += line.Direction;
            }
        }

        return winding != 0;
    }
}
