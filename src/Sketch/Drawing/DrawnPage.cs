using System.Collections.Immutable;
using System.Text;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>A page to print: shapes, and words above them.</summary>
/// <param name="Shapes">The page without its words, as SVG.</param>
/// <param name="Words">The words in reading order.</param>
public sealed record DrawnPage(string Shapes, ImmutableArray<WordsOnPage> Words)
{
    /// <summary>A page without words of its own; those in the picture are outlines.</summary>
    public DrawnPage(string svg) : this(svg, [])
    {
    }

    /// <summary>The whole page as SVG, with its words as outlines, so that it looks the same on every machine.</summary>
    public string Svg
    {
        get
        {
            var svg = new StringBuilder();
            var done = 0;
            foreach (var words in Words)
            {
                svg.Append(Shapes, done, words.At - done).Append(words.AsElement());
                done = words.At;
            }

            return svg.Append(Shapes, done, Shapes.Length - done).ToString();
        }
    }
}

/// <summary>Words and where they belong in the picture that they are part of.</summary>
/// <param name="Words">The words.</param>
/// <param name="OnPage">The map from their coordinates to the page, both in millimetres.</param>
/// <param name="At">The position in the SVG text where their outlines belong.</param>
/// <param name="Indent">The blanks before that element.</param>
public sealed record WordsOnPage(PageWords Words, Affine OnPage, int At, int Indent)
{
    // A hundredth of a millimetre is less than a printer's dot, and halves the size of a page.
    private const int Decimals = 2;

    /// <summary>The outlines as an SVG element on a line of its own.</summary>
    public string AsElement()
    {
        var outlines = new StringBuilder();
        foreach (var line in Words.Lines)
        {
            line.AppendSvgPath(outlines, Decimals);
        }

        return new SvgWriter(Indent).Open("path").Attribute("fill", Words.Colour).Attribute("d", outlines.ToString())
            .Title(Words.Title).Close().ToString()[..^1];
    }
}
