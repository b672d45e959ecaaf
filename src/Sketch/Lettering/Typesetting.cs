using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Lettering;

/// <summary>Sets the letters of a line apart or along an arc.</summary>
public static class Typesetting
{
    // Overlapping letters are united at this scale, so that curves that become chords stay true to a ten-thousandth of a capital.
    private const double WorkingScale = 20;

    /// <summary>Keeps letters from being drawn as one sign where they are set apart: the zero width non-joiner of Unicode.</summary>
    private const char NonJoiner = '\u200c';

    /// <summary>The words as they are to be shaped where letters are set apart.</summary>
    public static string Apart(string words) => string.Join(NonJoiner, words.EnumerateRunes());

    /// <summary>The line with room between its letters and its baseline bent.</summary>
    /// <param name="line">A line as shaped.</param>
    /// <param name="style">How it is to be set.</param>
    public static ShapedWords Set(ShapedWords line, LetteringStyle style)
    {
        if (style == default || line.Glyphs.IsEmpty)
        {
            return line;
        }

        var glyphs = line.Glyphs.Select((g, i) =>
            new ShapedGlyph(g.Outline.Transform(Affine.Shift(i * style.Spacing, 0)), g.Middle + i * style.Spacing)).ToImmutableArray();
        var centre = default(Point);
        if (style.Arc != 0)
        {
            (glyphs, centre) = Bent(glyphs, style.Arc);
        }

        var united = Outline.Union(glyphs.Select(g => g.Outline.Transform(Affine.Scale(WorkingScale, WorkingScale))))
            .Transform(Affine.Scale(1 / WorkingScale, 1 / WorkingScale));
        var start = Affine.Shift(-united.Bounds.Left, 0);
        return line with
        {
            Outline = united.Transform(start),
            Glyphs = [.. glyphs.Select(g => new ShapedGlyph(g.Outline.Transform(start), g.Middle))],
            CircleCentre = start.Apply(centre),
        };
    }

    /// <summary>
    /// Each letter stands on the baseline circle where its middle falls, and turns with it. The length of the line measured along the
    /// circle stays the same, so its radius is that length divided by the arc in radians.
    /// </summary>
    private static (ImmutableArray<ShapedGlyph> Glyphs, Point Centre) Bent(ImmutableArray<ShapedGlyph> glyphs, double degrees)
    {
        var (left, right) = (glyphs.Min(g => g.Outline.Bounds.Left), glyphs.Max(g => g.Outline.Bounds.Right));
        var radius = Math.Max(1e-6, right - left) / (degrees * Math.PI / 180);
        var middle = (left + right) / 2;
        return ([.. glyphs.Select(g =>
        {
            var turn = (g.Middle - middle) / radius;
            var (sin, cos) = Math.SinCos(turn);
            var place = Affine.Shift(-g.Middle, 0).Then(Affine.Turn(turn * 180 / Math.PI, default))
                .Then(Affine.Shift(radius * sin, radius - radius * cos));
            return new ShapedGlyph(g.Outline.Transform(place), radius * sin);
        })], new(0, radius));
    }
}
