using NetTopologySuite.Geometries;

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
        var contours = new List<Contour>();
        var crowded = new List<Geometry>();
        for (var i = 0; i < parts.Count; i++)
        {
            if (areas[i].AsDrawn && !Enumerable.Range(0, parts.Count).Any(j => j != i && Touch(i, j)))
            {
                contours.AddRange(parts[i].Contours);
            }
            else
            {
                crowded.Add(areas[i].Area);
            }
        }

        return new([.. contours, .. Polygons.ToOutline(Polygons.United(crowded)).Contours]);

        bool Touch(int i, int j) =>
            bounds[i].Left <= bounds[j].Right && bounds[j].Left <= bounds[i].Right
            && bounds[i].Top <= bounds[j].Bottom && bounds[j].Top <= bounds[i].Bottom
            && areas[i].Area.Intersects(areas[j].Area);
    }

    /// <summary>The same outline with its outer contours running clockwise as seen.</summary>
    private Outline Clockwise() => SignedArea >= 0 ? this : new([.. Contours.Select(c => c.Reverse())]);
}
