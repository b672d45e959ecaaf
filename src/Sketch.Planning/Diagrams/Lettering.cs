using Sketch.Drawing;
using Sketch.Shapes;
using Sketch.World;

namespace Sketch.Planning.Diagrams;

/// <summary>How a line of words is aligned at its place.</summary>
internal enum Alignment
{
    /// <summary>It begins there.</summary>
    Left,

    /// <summary>Its middle is there.</summary>
    Centre,

    /// <summary>It ends there.</summary>
    Right,
}

/// <summary>Draws words as outlines of the tool's own font, so that a page is the same on every machine.</summary>
internal sealed class Lettering(IWorld world)
{
    // A point is 1/72 in; a capital of the tool's font is 0.727 of the letter size high, according to its OS/2 table.
    private const double CapitalPerPoint = 25.4 / 72 * 0.727;

    // About the gap between the ink of two words, in cap heights.
    private const double Blank = 0.4;
    private const double NearlyFits = 1.2;

    private readonly Dictionary<string, (string Path, Bounds Bounds)> _shaped = new(StringComparer.Ordinal);

    /// <summary>Height of a capital in millimetres.</summary>
    public static double CapitalHeight(double points) => points * CapitalPerPoint;

    /// <summary>Width in millimetres.</summary>
    public double Width(string words, double points) => Shaped(words).Bounds.Right * CapitalHeight(points);

    /// <summary>Writes a line of words on a baseline.</summary>
    public void Write(SvgWriter svg, string words, double x, double baseline, double points, Alignment alignment = Alignment.Left)
    {
        var (path, bounds) = Shaped(words);
        var height = CapitalHeight(points);
        var width = bounds.Right * height;
        var left = alignment switch { Alignment.Centre => x - width / 2, Alignment.Right => x - width, _ => x };
        if (path.Length == 0)
        {
            return;
        }

        svg.Open("path").Attribute("d", path).Transform(Affine.Scale(height, height).Then(Affine.Shift(left, baseline)));
        svg.Title(words).Close();
    }

    /// <summary>Writes words with their capitals' middle on a point.</summary>
    public void WriteCentred(SvgWriter svg, string words, Point middle, double points) =>
        Write(svg, words, middle.X, middle.Y + CapitalHeight(points) / 2, points, Alignment.Centre);

    /// <summary>Breaks words into lines of at most a given width; a longer word gets a line of its own.</summary>
    public IEnumerable<string> Wrap(string words, double points, double width)
    {
        // Word by word, since shaping every prefix of a line would take as long as drawing the page; a line is measured when it is
        // full.
        var blank = Blank * CapitalHeight(points);
        var parts = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Sum(w => Width(w, points) + blank) < width * NearlyFits && Width(words, points) <= width)
        {
            yield return words;
            yield break;
        }

        for (var start = 0; start < parts.Length;)
        {
            var (end, taken) = (start + 1, Width(parts[start], points));
            while (end < parts.Length && taken + blank + Width(parts[end], points) <= width)
            {
                taken += blank + Width(parts[end++], points);
            }

            while (end > start + 1 && Width(string.Join(' ', parts[start..end]), points) > width)
            {
                end--;
            }

            yield return string.Join(' ', parts[start..end]);
            start = end;
        }
    }

    private (string Path, Bounds Bounds) Shaped(string words)
    {
        if (!_shaped.TryGetValue(words, out var shaped))
        {
            var outline = Coarser(world.ShapeWords(words.ReplaceLineEndings(" "), null, "").ValueOrDefault?.Outline ?? new([]));
            shaped = _shaped[words] = (outline.ToSvgPath(), outline.Contours.IsEmpty ? default : outline.Bounds);
        }

        return shaped;
    }

    // A hundredth of a capital's height is less than a printer's dot, and this precision halves the size of a page.
    private static Outline Coarser(Outline outline)
    {
        return new([.. outline.Contours.Select(c => new Contour(
            Round(c.Start), [.. c.Segments.Select(
                s => s with { Control1 = Round(s.Control1), Control2 = Round(s.Control2), End = Round(s.End) })]))]);

        static Point Round(Point point) => new(Math.Round(point.X, 2), Math.Round(point.Y, 2));
    }
}
