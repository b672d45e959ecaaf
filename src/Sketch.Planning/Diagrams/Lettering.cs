using Sketch.Drawing;
using Sketch.Lettering;
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

/// <summary>Puts words on pages in the tool's own font, so that a page is the same on every machine.</summary>
internal sealed class Lettering(IWorld world)
{
    // A point is 1/72 in.
    private const double CapitalPerPoint = 25.4 / 72 * TextRun.CapitalPerSize;

    // About the gap between the ink of two words, in cap heights.
    private const double Blank = 0.4;
    private const double NearlyFits = 1.2;

    /// <summary>Height of a capital in millimetres.</summary>
    public static double CapitalHeight(double points) => points * CapitalPerPoint;

    /// <summary>Width in millimetres.</summary>
    public double Width(string words, double points) => Set(words).Width * CapitalHeight(points);

    /// <summary>Writes a line of words on a baseline.</summary>
    public void Write(
        SvgWriter svg, string words, double x, double baseline, double points, Alignment alignment = Alignment.Left,
            string colour = "#000")
    {
        var run = Set(words);
        var height = CapitalHeight(points);
        var width = run.Width * height;
        var left = alignment switch { Alignment.Centre => x - width / 2, Alignment.Right => x - width, _ => x };
        if (width > 0)
        {
            svg.Words(new(words, colour, [new(run, left, baseline, height)]));
        }
    }

    /// <summary>Writes words with their capitals' middle on a point.</summary>
    public void WriteCentred(SvgWriter svg, string words, Point middle, double points, string colour) =>
        Write(svg, words, middle.X, middle.Y + CapitalHeight(points) / 2, points, Alignment.Centre, colour);

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

    private TextRun Set(string words) => world.SetWords(words.ReplaceLineEndings(" "));
}
