using System.Collections.Immutable;
using Sketch.Output.Paths;
using Sketch.Shapes;
using SkiaSharp;

namespace Sketch.Output.Lettering;

/// <summary>
/// Finds letters that overlap one another or themselves, and unites just these; all others keep their curves.
/// </summary>
internal static class InkOverlap
{
    // Chords for the tests only: a fortieth of a stroke of the thinnest letters at the height at which letters are united.
    private const double Tolerance = 0.02;

    private const int ScanLines = 48;

    // Both sides of the comparison are chords of the same curves, so rounding loses much less than this.
    private const double MostAreaChange = 0.002;

    /// <summary>A glyph as an outline whose contours neither cross nor lie within other ink.</summary>
    public static Outline Read(SKPath glyph, Affine by)
    {
        var letter = PathOutline.Read(glyph, by);
        return IsPlain(Lines([letter])) ? letter : UnitedAsCurves(glyph, by, Lines([letter])) ?? Outline.Union([letter]);
    }

    /// <summary>Letters side by side as one outline; those that overlap are united, the others keep their curves.</summary>
    public static Outline Unite(IReadOnlyList<Outline> letters)
    {
        var groups = new List<Group>();
        foreach (var letter in letters)
        {
            var home = new Group(letter.Bounds, [letter], Lines([letter]));
            for (var i = groups.Count - 1; i >= 0; i--)
            {
                if (groups[i].SharesInk(home))
                {
                    home = groups[i].With(home);
                    groups.RemoveAt(i);
                }
            }

            groups.Add(home);
        }

        return new([.. groups.SelectMany(g => g.Letters is [var alone] ? alone.Contours : Unite(g).Contours)]);
    }

    private static Outline Unite(Group group)
    {
        using var all = SKPath.ParseSvgPathData(string.Concat(group.Letters.Select(l => l.ToSvgPath())));
        return UnitedAsCurves(all, Affine.Identity, group.Lines) ?? Outline.Union(group.Letters);
    }

    /// <summary>
    /// Skia unites curves without flattening them, but sometimes loses a part; so its result is used only if it is simple and covers
    /// the same area along horizontal lines across it.
    /// </summary>
    private static Outline? UnitedAsCurves(SKPath path, Affine by, ImmutableArray<Line> before)
    {
        using var united = path.Simplify();
        if (united is null || PathOutline.ReadEvenOdd(united, by) is not { IsEmpty: false } outline)
        {
            return null;
        }

        var after = Lines([outline]);
        if (!IsPlain(after))
        {
            return null;
        }

        var box = before.Select(l => l.Box).Aggregate((all, next) => all.With(next));
        double total = 0, change = 0;
        for (var i = 0; i < ScanLines; i++)
        {
            var y = box.Top + box.Height * (i + 0.5) / ScanLines;
            var (was, now) = (Covered(before, y), Covered(after, y));
            (total, change) = (total + was, change + Math.Abs(was - now));
        }

        return change <= MostAreaChange * total ? outline : null;
    }

    private static double Covered(ImmutableArray<Line> lines, double y)
    {
        var covered = 0.0;
        var (winding, since) = (0, 0.0);
        foreach (var (x, direction) in lines.SelectMany(l => l.CrossingsAt(y)).OrderBy(c => c.X))
        {
            covered += winding != 0 ? x - since : 0;
            (winding, since) = (winding + direction, x);
        }

        return covered;
    }

    private static ImmutableArray<Line> Lines(IEnumerable<Outline> outlines) =>
        [.. outlines.SelectMany(o => o.Contours).Select(c => new Line([.. c.Flatten(Tolerance)], c.Bounds, c.SignedArea))];

    /// <summary>Whether each contour separates ink from paper: outer ones have no ink around them, holes have it once.</summary>
    private static bool IsPlain(ImmutableArray<Line> lines)
    {
        var outer = lines.Sum(l => l.Area) >= 0 ? 1 : -1;
        for (var i = 0; i < lines.Length; i++)
        {
            var (line, others) = (lines[i], lines.RemoveAt(i));
            var around = others.Sum(o => o.WindingAt(line.Points[0])) * outer;
            if (around != (line.Area >= 0 == outer > 0 ? 0 : 1) || line.CrossesItself() || others.Any(line.Crosses))
            {
                return false;
            }
        }

        return true;
    }

    private sealed record Group(Bounds Box, ImmutableArray<Outline> Letters, ImmutableArray<Line> Lines)
    {
        public bool SharesInk(Group other) => Box.Overlaps(other.Box)
            && (Lines.Any(a => other.Lines.Any(a.Crosses)) || Lines.Any(a => other.Inks(a.Points[0]))
            || other.Lines.Any(a => Inks(a.Points[0])));

        public Group With(Group other) => new(Box.With(other.Box), Letters.AddRange(other.Letters), Lines.AddRange(other.Lines));

        private bool Inks(Point point) => Lines.Sum(l => l.WindingAt(point)) != 0;
    }

    /// <summary>A contour as a closed line of chords.</summary>
    private sealed record Line(ImmutableArray<Point> Points, Bounds Box, double Area)
    {
        public bool Crosses(Line other)
        {
            if (!Box.Overlaps(other.Box))
            {
                return false;
            }

            for (var i = 0; i < Points.Length; i++)
            {
                for (var k = 0; k < other.Points.Length; k++)
                {
                    if (Cross(From(i), To(i), other.From(k), other.To(k)))
                    {
                        return true;
                    }
                }
            }

            return false;
        }

        public bool CrossesItself()
        {
            for (var i = 0; i < Points.Length; i++)
            {
                for (var k = i + 2; k < Points.Length; k++)
                {
                    if (Cross(From(i), To(i), From(k), To(k)))
                    {
                        return true;
                    }
                }
            }

            return false;
        }

        /// <summary>Where the line crosses a height, and whether downwards (1) or upwards (-1).</summary>
        public IEnumerable<(double X, int Direction)> CrossingsAt(double y)
        {
            for (var i = 0; i < Points.Length; i++)
            {
                var (a, b) = (From(i), To(i));
                if (a.Y <= y != b.Y <= y)
                {
                    yield return (a.X + (b.X - a.X) * (y - a.Y) / (b.Y - a.Y), a.Y <= y ? 1 : -1);
                }
            }
        }

        /// <summary>The winding number of the line about a point.</summary>
        public int WindingAt(Point point)
        {
            var winding = 0;
            for (var i = 0; i < Points.Length && Box.Covers(new(point.X, point.Y, point.X, point.Y)); i++)
            {
                var (a, b) = (From(i), To(i));
                if (a.Y <= point.Y != b.Y <= point.Y && Side(a, b, point) > 0 == a.Y <= point.Y)
                {
                    winding += a.Y <= point.Y ? 1 : -1;
                }
            }

            return winding;
        }

        private Point From(int index) => Points[index];

        private Point To(int index) => Points[index + 1 < Points.Length ? index + 1 : 0];

        private static bool Cross(Point a, Point b, Point c, Point d) =>
            Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

        private static double Side(Point a, Point b, Point point) => (b.X - a.X) * (point.Y - a.Y) - (point.X - a.X) * (b.Y - a.Y);
    }
}
