using Sketch.Output.Lettering;
using Xunit;

namespace Sketch.Tests.Output.Lettering;

/// <summary>
/// The places of letters against <c>hb-shape</c> of HarfBuzz 6.0.0 (package libharfbuzz-bin of Debian 12), run as
/// <c>hb-shape --no-glyph-names FILE "Fair winds, AVoffice"</c>: the advance of each glyph in thousandths of an em.
/// The cap heights are those of the fonts' OS/2 tables.
/// </summary>
public sealed class ShapingTests
{
    private const string Words = "Fair winds, AVoffice";

    private static readonly FontLibrary Library = new([]);

    [Theory]
    [InlineData("Dancing Script", 720,
        new[] { 440, 436, 241, 348, -260, 617, 241, 466, 473, 345, 196, -260, 576, 601, 365, 312, 555, 323, 333 })]
    [InlineData("Great Vibes", 750,
        new[] { 1004, 358, 176, 259, -171, 495, 176, 338, 372, 267, 215, -171, 716, 970, 338, 582, 263, 256 })]
    [InlineData("Playfair Display italic", 708,
        new[] { 524, 523, 302, 426, -253, 685, 302, 580, 542, 381, 252, -253, 579, 582, 488, 865, 432, 429 })]
    public void Letters_stand_where_HarfBuzz_puts_them(string font, int capHeight, int[] advances)
    {
        // Blanks are written as negative numbers: they take room but have no glyph with ink.
        var middles = new List<double>();
        double pen = 0;
        foreach (var advance in advances)
        {
            if (advance > 0)
            {
                middles.Add(pen + advance / 2.0);
            }

            pen += Math.Abs(advance);
        }

        var glyphs = Library.Shape(Words, font).Value.Glyphs;
        Assert.Equal(middles.Count, glyphs.Length);
        Assert.All(middles.Zip(glyphs), pair =>
            Assert.Equal((pair.First - middles[0]) / capHeight, pair.Second.Middle - glyphs[0].Middle, 0.0001));
    }

    [Fact]
    public void Letters_set_apart_are_no_ligatures() =>
        Assert.Equal(Library.Shape("ffi", "Great Vibes").Value.Glyphs.Length + 2,
            Library.Shape("f\u200cf\u200ci", "Great Vibes").Value.Glyphs.Length);
}
