using System.Globalization;
using Sketch.Drawing;
using Sketch.Shapes;

namespace Sketch.Planning;

/// <summary>
/// Letters of pieces too small to hold one: in a white box nearby, with a line to the piece. Pieces alike that touch share one, which says how many they are.
/// </summary>
/// <param name="lettering">The letters.</param>
/// <param name="svg">Where to.</param>
/// <param name="points">Size of the letters.</param>
/// <param name="sheet">The sheet, within which the boxes stay.</param>
/// <param name="pieces">All pieces on it, on which boxes stand only where no free paper is near.</param>
/// <param name="taken">What is written already; the boxes are added.</param>
internal sealed class Callouts(Lettering lettering, SvgWriter svg, double points, Bounds sheet, IReadOnlyList<Bounds> pieces, List<Bounds> taken)
{
    private const double Near = 30;
    private const double Touching = 0.02;
    private const double LineWidth = 0.25;
    private const double DotRadius = 0.55;

    /// <summary>Writes them.</summary>
    public void Write(IEnumerable<(string Key, Bounds Box)> small)
    {
        var groups = small.GroupBy(s => s.Key).SelectMany(s => Together([.. s.Select(x => x.Box)]).Select(g => (s.Key, Boxes: g))).ToList();
        taken.AddRange(groups.SelectMany(g => g.Boxes));
        foreach (var (key, boxes) in groups)
        {
            Write(boxes.Count == 1 ? key : string.Create(CultureInfo.InvariantCulture, $"{key} × {boxes.Count}"), boxes);
        }
    }

    private void Write(string words, List<Bounds> boxes)
    {
        var target = boxes[boxes.Count / 2].Centre;
        var (width, height) = (lettering.Width(words, points) + 1.6, Lettering.CapitalHeight(points) * 1.6);
        var place = FreePlace.Near(target, width, height, Near, sheet, [.. taken, .. pieces])
            ?? FreePlace.Near(target, width, height, sheet.Width + sheet.Height, sheet, taken) ?? FreePlace.Around(target, width, height);
        taken.Add(place);
        svg.Open("line").Attribute("x1", target.X).Attribute("y1", target.Y).Attribute("x2", place.Centre.X).Attribute("y2", place.Centre.Y)
            .Attribute("stroke", "#1f1e1d").Attribute("stroke-width", LineWidth).Close();
        svg.Open("circle").Attribute("cx", target.X).Attribute("cy", target.Y).Attribute("r", DotRadius).Attribute("fill", "#1f1e1d").Close();
        svg.Open("rect").Attribute("x", place.Left).Attribute("y", place.Top).Attribute("width", place.Width).Attribute("height", place.Height)
            .Attribute("fill", "#ffffff").Attribute("stroke", "#1f1e1d").Attribute("stroke-width", LineWidth).Close();
        lettering.WriteCentred(svg, words, place.Centre, points);
    }

    private static List<List<Bounds>> Together(List<Bounds> boxes)
    {
        var groups = new List<List<Bounds>>();
        foreach (var box in boxes)
        {
            var near = box.Grow(Touching);
            var touched = groups.Where(g => g.Exists(b => b.Overlaps(near))).ToList();
            groups.RemoveAll(touched.Contains);
            groups.Add([.. touched.SelectMany(g => g), box]);
        }

        return groups;
    }
}
