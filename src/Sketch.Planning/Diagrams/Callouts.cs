using System.Globalization;
using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>
/// Letters of pieces too small to hold one: in a box nearby, with a line to the piece. Equal pieces that touch share one, which gives
/// their number.
/// </summary>
/// <param name="lettering">The letters.</param>
/// <param name="sheet">The sheet; the boxes stay within it.</param>
/// <param name="pieces">All pieces on it; boxes cover them only if no free paper is near.</param>
/// <param name="taken">What is already written; the boxes are added.</param>
internal sealed class Callouts(Lettering lettering, Bounds sheet, IReadOnlyList<Bounds> pieces, List<Bounds> taken)
{
    private const double Near = 30;
    private const double Touching = 0.02;
    private const double InBox = 0.8;
    private const double AroundBox = 0.5;

    private readonly Lazy<BoxMap> _pieces = new(() => new(pieces));

    /// <summary>Finds their places.</summary>
    public IReadOnlyList<Note> Of(IEnumerable<(string Key, Bounds Box)> small)
    {
        var groups = small.GroupBy(s => s.Key).SelectMany(s => Together([.. s.Select(x => x.Box)]).Select(g => (s.Key, Boxes: g))).ToList();
        var all = new BoxMap([.. groups.SelectMany(g => g.Boxes)]);
        return [.. groups.Select(
            g => Of(g.Boxes.Count == 1 ? g.Key : string.Create(CultureInfo.InvariantCulture, $"{g.Boxes.Count} of {g.Key}"),
                g.Boxes, all))];
    }

    private Note Of(string words, List<Bounds> boxes, BoxMap small)
    {
        var free = new FreePlace(sheet, taken);
        var target = TargetIn(boxes, free);
        var (width, height) = (lettering.Width(words, PageFlow.Points) + 2 * (InBox + AroundBox),
            Lettering.CapitalHeight(PageFlow.Points) * 1.6 + 2 * AroundBox);
        var place = free.Clear(target, width, height, Near, _pieces.Value)
            ?? free.Clear(target, width, height, sheet.Width + sheet.Height, small)
            ?? free.Near(target, width, height) ?? FreePlace.Around(target, width, height);
        taken.Add(place);
        return new(words, place.Grow(-AroundBox), target);
    }

    // A point without text on one of the pieces, near the middle of them all.
    private static Point TargetIn(List<Bounds> boxes, FreePlace free)
    {
        var middle = boxes[boxes.Count / 2].Centre;
        var points = boxes.OrderBy(b => Math.Pow(b.Centre.X - middle.X, 2) + Math.Pow(b.Centre.Y - middle.Y, 2))
            .SelectMany(b => FreePlace.Ends.SelectMany(
                x => FreePlace.Ends.Select(y => new Point(b.Left + b.Width * x, b.Top + b.Height * y))));
        return points.Where(free.IsFree).Cast<Point?>().FirstOrDefault() ?? middle;
    }

    private static List<List<Bounds>> Together(List<Bounds> boxes)
    {
        var map = new BoxMap(boxes);
        var isGrouped = new bool[boxes.Count];
        var groups = new List<List<Bounds>>();
        for (var first = 0; first < boxes.Count; first++)
        {
            if (!isGrouped[first])
            {
                groups.Add([.. Around(first).Order().Select(i => boxes[i])]);
            }
        }

        return groups;

        List<int> Around(int first)
        {
            var group = new List<int> { first };
            isGrouped[first] = true;
            for (var next = 0; next < group.Count; next++)
            {
                var near = boxes[group[next]].Grow(Touching);
                foreach (var i in map.Near(near).Where(i => !isGrouped[i] && boxes[i].Overlaps(near)))
                {
                    isGrouped[i] = true;
                    group.Add(i);
                }
            }

            return group;
        }
    }
}
