using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Output.Lettering;

/// <summary>
/// Tells whether letters run into each other or into themselves. Nearly none do, and uniting is slow and turns curves into chords, so
/// only those that do are united.
/// </summary>
internal static class InkOverlap
{
    // Chords for the test only: a fortieth of a stroke of the thinnest letters at the height at which letters are united.
    private const double Tolerance = 0.02;

    /// <summary>The outline with contours that neither cross nor lie within other ink.</summary>
    public static Outline Unite(Outline letter)
    {
        var lines = Lines([letter]);
        return IsPlain(lines, letter.Contours.Sum(c => c.SignedArea) >= 0 ? 1 : -1) ? letter : Outline.Union([letter]);
    }

    /// <summary>Letters side by side as one outline; those that share ink are united, the others keep their curves.</summary>
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

        return new([.. groups.SelectMany(g => g.Letters is [var alone] ? alone.Contours : Outline.Union(g.Letters).Contours)]);
    }

    private static ImmutableArray<Line> Lines(IEnumerable<Outline> outlines) =>
        [.. outlines.SelectMany(o => o.Contours).Select(c => new Line([.. c.Flatten(Tolerance)], c.Bounds, c.SignedArea >= 0 ? 1 : -1))];

    /// <summary>Whether each contour parts ink from paper: outer ones have no ink around them, holes have it once.</summary>
    private static bool IsPlain(ImmutableArray<Line> lines, int outer)
    {
        for (var i = 0; i < lines.Length; i++)
        {
            var (line, others) = (lines[i], lines.RemoveAt(i));
            var around = others.Sum(o => o.WindingAt(line.Points[0])) * outer;
            if (around != (line.Direction == outer ? 0 : 1) || line.CrossesItself() || others.Any(line.Crosses))
            {
                return false;
            }
        }

        return true;
    }

    private sealed record Group(Bounds Box, ImmutableArray<Outline> Letters, ImmutableArray<Line> Lines)
    {
        public bool SharesInk(Group other) => Box.Overlaps(other.Box)
            && (Lines.Any(a => other.Lines.Any(a.Crosses)) || Lines.Any(a => other.Inks(a.Points[0])) || other.Lines.Any(a => Inks(a.Points[0])));

        public Group With(Group other) => new(Box.With(other.Box), Letters.AddRange(other.Letters), Lines.AddRange(other.Lines));

        private bool Inks(Point point) => Lines.Sum(l => l.WindingAt(point)) != 0;
    }

    /// <summary>A contour as a closed line of chords.</summary>
    private sealed record Line(ImmutableArray<Point> Points, Bounds Box, int Direction)
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

        /// <summary>How often the line runs round a point.</summary>
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
