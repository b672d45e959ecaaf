using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>
/// Gives the straight stretches of an outline that lie on a side of its box the form of that side. The form reaches into the piece and
/// touches the side, so the box stays the same. A stretch beside a slanted line stays straight: there the form would leave the piece.
/// </summary>
internal static class EdgeCutting
{
    /// <summary>The distance in millimetres from a side within which a stretch lies on it.</summary>
    private const double OnSide = 1e-6;

    /// <summary>The outline with the forms of its sides.</summary>
    public static Outline Apply(Outline outline, EdgeCuts cuts, Rect box)
    {
        if (cuts.IsEmpty || outline.IsEmpty)
        {
            return outline;
        }

        return new([.. outline.Contours.Select(c => c.SignedArea > 0 ? Cut(c, cuts, box.Size) : c)]);
    }

    /// <summary>The sides of its box that may have a form.</summary>
    public static IEnumerable<Edge> StraightSides(Outline outline)
    {
        var box = outline.Bounds;
        var stretches = outline.Contours.Select(Stretches).ToList();
        return Enum.GetValues<Edge>().Where(e => stretches.Any(all => all.Select((_, i) => RoomAt(e, all, i, box)).Any(r => r > 0)));
    }

    private readonly record struct Stretch(Point From, Point To, Segment Segment, bool IsLine);

    private static List<Stretch> Stretches(Contour contour)
    {
        var stretches = new List<Stretch>(contour.Segments.Length + 1);
        var at = contour.Start;
        foreach (var segment in contour.Segments)
        {
            stretches.Add(new(at, segment.End, segment, segment.IsLine));
            at = segment.End;
        }

        if (at != contour.Start)
        {
            stretches.Add(new(at, contour.Start, Segment.Line(contour.Start), true));
        }

        return stretches;
    }

    private static Contour Cut(Contour contour, EdgeCuts cuts, Size size)
    {
        var (stretches, box) = (Stretches(contour), contour.Bounds);
        var forms = stretches.Select((s, i) => FormOf(s, i)).ToArray();
        if (forms.All(f => f is null))
        {
            return contour;
        }

        var corners = stretches.Select((_, i) => Corner(stretches, forms, i)).ToArray();
        var pen = new ContourPen(corners[0]);
        for (var i = 0; i < stretches.Count; i++)
        {
            var end = corners[(i + 1) % corners.Length];
            if (forms[i] is { } form)
            {
                form.Draw(pen, end);
            }
            else if (stretches[i].IsLine)
            {
                pen.Line(end.X, end.Y);
            }
            else
            {
                pen.Curve(stretches[i].Segment.Control1, stretches[i].Segment.Control2, end);
            }
        }

        return pen.Close();

        FormedStretch? FormOf(Stretch stretch, int index)
        {
            foreach (var edge in Enum.GetValues<Edge>())
            {
                if (cuts.At(edge) is { } cut && RoomAt(edge, stretches, index, box) is var room and > 0
                    && Math.Min(cuts.DepthAt(edge, size).Millimetres, room) is var depth and > OnSide)
                {
                    return new(edge, cut.Form, depth, stretch.From, stretch.To, index);
                }
            }

            return null;
        }
    }

    /// <summary>Where a stretch begins once the forms before and after its first corner are drawn.</summary>
    private static Point Corner(List<Stretch> stretches, FormedStretch?[] forms, int index)
    {
        var before = (index + stretches.Count - 1) % stretches.Count;
        var corner = stretches[index].From;
        return (forms[before], forms[index]) switch
        {
            (null, null) => corner,
            ({ } ending, { } starting) => ending.Inwards(starting.Inwards(corner, starting.FirstDepth), ending.LastDepth),
            ({ } ending, null) => stretches[index].IsLine ? ending.Inwards(corner, ending.LastDepth) : corner,
            (null, { } starting) => stretches[before].IsLine ? starting.Inwards(corner, starting.FirstDepth) : corner,
        };
    }

    /// <summary>How deep a form of a stretch may be: nothing if it does not lie on the side or a neighbour is slanted.</summary>
    private static double RoomAt(Edge edge, List<Stretch> stretches, int index, Bounds box)
    {
        var (stretch, before, after) =
            (stretches[index], stretches[(index + stretches.Count - 1) % stretches.Count], stretches[(index + 1) % stretches.Count]);
        return stretch.IsLine && LiesOn(edge, stretch.From, stretch.To, box) ? Math.Min(RoomBeside(before), RoomBeside(after)) : 0;

        double RoomBeside(Stretch neighbour)
        {
            const double most = 0.75;
            var (across, down) = (Math.Abs(neighbour.To.X - neighbour.From.X), Math.Abs(neighbour.To.Y - neighbour.From.Y));
            var (along, inwards) = edge is Edge.Top or Edge.Bottom ? (across, down) : (down, across);
            return !neighbour.IsLine ? double.MaxValue : along > OnSide ? 0 : inwards * most;
        }
    }

    /// <summary>Whether a line of a clockwise contour runs on that side of its box.</summary>
    private static bool LiesOn(Edge edge, Point from, Point to, Bounds box) => edge switch
    {
        Edge.Top => On(from.Y, to.Y, box.Top) && to.X > from.X,
        Edge.Right => On(from.X, to.X, box.Right) && to.Y > from.Y,
        Edge.Bottom => On(from.Y, to.Y, box.Bottom) && to.X < from.X,
        _ => On(from.X, to.X, box.Left) && to.Y < from.Y,
    };

    private static bool On(double from, double to, double side) => Math.Abs(from - side) <= OnSide && Math.Abs(to - side) <= OnSide;
}
