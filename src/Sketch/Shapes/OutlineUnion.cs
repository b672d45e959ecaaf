using NetTopologySuite.Geometries.Prepared;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>The union of both; outlines that do not touch keep their curves.</summary>
    public Outline Union(Outline other) => Union([this, other]);

    /// <summary>
    /// The union of all, such as the overlapping letters of a word. Outlines that touch no other one and whose
    /// contours do not cross keep their curves; the curves of the others become chords at most 0.002 mm off, so small outlines should be
    /// united at the size at which they are used. The outer contours of the result run clockwise as seen.
    /// </summary>
    public static Outline Union(IEnumerable<Outline> outlines)
    {
        var parts = outlines.Where(o => !o.IsEmpty).Select(o => o.Clockwise()).ToList();
        var bounds = parts.ConvertAll(p => p.Bounds);
        var areas = parts.ConvertAll(Polygons.Read);
        var isCrowded = areas.ConvertAll(a => !a.AsDrawn);
        for (var i = 0; i < parts.Count; i++)
        {
            // Testing whether two outlines touch is slow, so each pair is tested once, and only where the result matters.
            IPreparedGeometry? prepared = null;
            for (var j = i + 1; j < parts.Count; j++)
            {
                if ((!isCrowded[i] || !isCrowded[j]) && BoxesTouch(bounds[i], bounds[j])
                    && (prepared ??= PreparedGeometryFactory.Prepare(areas[i].Area)).Intersects(areas[j].Area))
                {
                    isCrowded[i] = isCrowded[j] = true;
                }
            }
        }

        var contours = parts.Where((_, i) => !isCrowded[i]).SelectMany(p => p.Contours);
        var crowded = areas.Where((_, i) => isCrowded[i]).Select(a => a.Area);
        return new([.. contours, .. Polygons.ToOutline(Polygons.United([.. crowded])).Contours]);

        static bool BoxesTouch(Bounds a, Bounds b) =>
            a.Left <= b.Right && b.Left <= a.Right && a.Top <= b.Bottom && b.Top <= a.Bottom;
    }

    /// <summary>The same outline with its outer contours running clockwise as seen.</summary>
    internal Outline Clockwise() => SignedArea >= 0 ? this : new([.. Contours.Select(c => c.Reverse())]);
}
