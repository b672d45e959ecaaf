using Sketch.Shapes;

namespace Sketch.Output.Artwork;

/// <summary>
/// Detects drawings whose lines cross so often that uniting them would take minutes, such as scribbles that fill an area.
/// </summary>
internal static class Tangle
{
    /// <summary>The most crossings that a drawing may have; well-made artwork has a few hundred.</summary>
    public const int CrossingLimit = 20_000;

    // Keeps the search itself short if many long lines lie side by side without crossing.
    private const int ComparisonLimit = 50_000_000;

    private readonly record struct Chord(Point From, Point To)
    {
        public double Left => Math.Min(From.X, To.X);

        public double Right => Math.Max(From.X, To.X);
    }

    /// <summary>Refuses shapes whose lines cross themselves and one another more than <see cref="CrossingLimit"/> times.</summary>
    /// <exception cref="ArtworkException">They do.</exception>
    public static void Refuse(IReadOnlyCollection<Outline> shapes)
    {
        if (Crosses(shapes))
        {
            throw new ArtworkException($"has lines that cross more than {CrossingLimit} times; unite its shapes in a drawing program.");
        }
    }

    private static bool Crosses(IReadOnlyCollection<Outline> shapes)
    {
        var size = shapes.Select(s => Math.Max(s.Bounds.Width, s.Bounds.Height)).DefaultIfEmpty().Max();
        var chords = shapes.SelectMany(s => s.Contours).SelectMany(c => Chords(c.Flatten(size / 1000))).OrderBy(c => c.Left).ToArray();
        int crossings = 0, comparisons = 0;
        for (var i = 0; i < chords.Length; i++)
        {
            for (var k = i + 1; k < chords.Length && chords[k].Left < chords[i].Right; k++)
            {
                crossings += Cross(chords[i], chords[k]) ? 1 : 0;
                if (++comparisons > ComparisonLimit || crossings > CrossingLimit)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static IEnumerable<Chord> Chords(List<Point> line)
    {
        for (var i = 0; i < line.Count; i++)
        {
            yield return new(line[i], line[i + 1 < line.Count ? i + 1 : 0]);
        }
    }

    private static bool Cross(Chord a, Chord b) =>
        Side(a, b.From) * Side(a, b.To) < 0 && Side(b, a.From) * Side(b, a.To) < 0;

    private static double Side(Chord a, Point point) =>
        (a.To.X - a.From.X) * (point.Y - a.From.Y) - (point.X - a.From.X) * (a.To.Y - a.From.Y);
}
