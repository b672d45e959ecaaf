using Sketch.Output.Rendering;
using SkiaSharp;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>
/// Transparent elements, as SVG 1.1 defines <c>opacity</c>: fill and stroke are painted as one picture first, which is then blended as a
/// whole.
/// </summary>
public sealed class SeeThroughTests
{
    // Half black on white, within one step of 8 bits.
    private const int Half = 127;

    /// <summary>A square of 40 with a hole of 20 in its middle, in each combination of the directions of its two outlines.</summary>
    [Theory]
    [InlineData("M30 30H70V70H30Z", "M40 40V60H60V40Z")]
    [InlineData("M30 30V70H70V30Z", "M40 40H60V60H40Z")]
    [InlineData("M40 40V60H60V40Z", "M30 30H70V70H30Z")]
    [InlineData("M40 40H60V60H40Z", "M30 30V70H70V30Z")]
    public void A_stroke_does_not_darken_its_fill(string first, string second)
    {
        using var picture = Draw($"""<path d="{first}{second}" opacity="0.5" stroke="#000" stroke-width="8"/>""");
        // From left to right along the middle: the outer and inner half of the stroke, then the stroke at the hole.
        Assert.All([28, 32, 38, 42], x => Assert.InRange(picture.GetPixel(x, 50).Red, Half - 1, Half + 1));
    }

    [Fact]
    public void A_hole_stays_open()
    {
        using var picture = Draw("""<path d="M30 30H70V70H30ZM40 40V60H60V40Z" opacity="0.5" stroke="#000" stroke-width="8"/>""");
        Assert.Equal(SKColors.White, picture.GetPixel(50, 50));
    }

    [Fact]
    public void A_stroke_of_another_colour_hides_the_fill_beneath_it()
    {
        using var picture = Draw("""<path d="M30 30H70V70H30Z" opacity="0.5" fill="#f00" stroke="#000" stroke-width="8"/>""");
        Assert.InRange(picture.GetPixel(32, 50).Red, Half - 1, Half + 1);
    }

    [Theory]
    [InlineData("#fff", SKAlphaType.Opaque)]
    [InlineData("none", SKAlphaType.Unpremul)]
    public void Only_a_transparent_picture_has_an_alpha_channel(string ground, SKAlphaType alpha)
    {
        using var codec = SKCodec.Create(new MemoryStream(Png(ground, "")));
        Assert.Equal(alpha, codec.Info.AlphaType);
    }

    private static SKBitmap Draw(string element) => SKBitmap.Decode(Png("#fff", element));

    private static byte[] Png(string ground, string element)
    {
        using var png = new MemoryStream();
        var svg = """<svg xmlns="http://www.w3.org/2000/svg" width="1in" height="1in" viewBox="0 0 100 100">"""
            + $"""<path fill="{ground}" d="M0 0H100V100H0Z"/>{element}</svg>""";
        Assert.Null(SvgRenderer.WritePng(svg, 100, png));
        return png.ToArray();
    }
}
