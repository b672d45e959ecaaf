using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Lettering;

/// <summary>
/// One line of words set in the tool's own font at a cap height of 1 mm, to be written as text or drawn as outlines: x from 0 at the
/// leftmost ink, y = 0 on the baseline and y growing downwards.
/// </summary>
/// <param name="words">The words.</param>
/// <param name="glyphs">Their glyphs.</param>
/// <param name="width">The distance from the leftmost to the rightmost ink; 0 for blanks.</param>
/// <param name="draw">Gives the outlines of the glyphs, which takes much longer than to set them.</param>
public sealed class TextRun(string words, ImmutableArray<PlacedGlyph> glyphs, double width, Func<Outline> draw)
{
    /// <summary>
    /// Height of a capital in parts of the letters' size: 2048 of the 2816 units of the tool's own font, according to its OS/2 table.
    /// </summary>
    public const double CapitalPerSize = 2048.0 / 2816;

    private readonly Lazy<Outline> _outline = new(draw);

    /// <summary>The words.</summary>
    public string Words { get; } = words;

    /// <summary>Their glyphs in the order of the line, blanks included.</summary>
    public ImmutableArray<PlacedGlyph> Glyphs { get; } = glyphs;

    /// <summary>The distance from the leftmost to the rightmost ink; 0 for blanks.</summary>
    public double Width { get; } = width;

    /// <summary>The outlines of all glyphs, overlapping contours united.</summary>
    public Outline Outline => _outline.Value;
}

/// <summary>A glyph of the tool's own font at its place in a line.</summary>
/// <param name="Id">Its number in the font.</param>
/// <param name="X">Its origin from the leftmost ink of the line, in cap heights.</param>
/// <param name="Y">Its origin below the baseline, in cap heights.</param>
/// <param name="Character">The index in the words of the first UTF-16 unit that it shows.</param>
public readonly record struct PlacedGlyph(ushort Id, double X, double Y, int Character);
