using Sketch.Colours;
using Sketch.Papers;
using Xunit;

namespace Sketch.Tests.Papers;

public sealed class BuiltInPaperTests
{
    [Theory]
    [InlineData("navy", PaperPattern.Cardstock)]
    [InlineData("Silver", PaperPattern.Foil)]
    [InlineData("kraft", PaperPattern.Kraft)]
    [InlineData("PEARL", PaperPattern.Pearl)]
    public void A_colour_word_is_a_stock_in_any_case(string word, PaperPattern expected)
    {
        Assert.True(ColourWords.TryGet(word, out var look));
        Assert.Equal(expected, look.Pattern);
    }

    [Fact]
    public void Grey_can_be_spelt_either_way()
    {
        Assert.Equal(BuiltIn.Find("grey", []), BuiltIn.Find("gray", []));
    }

    [Fact]
    public void A_pattern_word_takes_the_ground_colour_and_then_the_figure_colours()
    {
        var look = BuiltIn.FromWords(["dots", "#123", "#fff0e0"]);

        Assert.Equal(new PaperLook(PaperPattern.Dots, new Rgb(0x11, 0x22, 0x33), [new Rgb(0xff, 0xf0, 0xe0)]), look);
    }

    [Fact]
    public void Colours_of_a_pattern_can_be_colour_words()
    {
        var look = BuiltIn.FromWords(["stripes", "navy", "cream"]);

        Assert.True(ColourWords.TryGet("navy", out var navy));
        Assert.Equal(navy.Ground, look?.Ground);
    }

    [Fact]
    public void A_colour_word_with_another_colour_keeps_its_stock()
    {
        Assert.Equal(new PaperLook(PaperPattern.Foil, new Rgb(1, 2, 3), []), BuiltIn.Find("gold", [new Rgb(1, 2, 3)]));
    }

    [Fact]
    public void A_word_that_is_not_a_colour_is_rejected()
    {
        Assert.Null(BuiltIn.FromWords(["dots", "navy", "herring"]));
    }

    [Fact]
    public void A_name_that_is_not_a_built_in_paper_is_rejected()
    {
        Assert.Null(BuiltIn.Find("gulls", []));
    }

    [Fact]
    public void The_default_figure_colour_contrasts_with_every_colour_word()
    {
        foreach (var word in ColourWords.All)
        {
            Assert.True(ColourWords.TryGet(word, out var look));
            var figure = Shades.Figure(look, 0);

            Assert.True(Math.Abs(Shades.Lightness(figure) - Shades.Lightness(look.Ground)) > 0.15, word);
        }
    }

    [Fact]
    public void White_has_the_maximum_lightness()
    {
        // OKLab: D65 white has L = 1 (bottosson.github.io/posts/oklab, from memory).
        Assert.Equal(1, Shades.Lightness(new Rgb(255, 255, 255)), 5);
    }

    [Theory]
    [InlineData(255, 0, 0, 0.62796)]
    [InlineData(0, 255, 0, 0.86644)]
    [InlineData(0, 0, 255, 0.45201)]
    public void The_lightness_of_the_primaries_is_the_published_one(byte red, byte green, byte blue, double expected)
    {
        // OKLab of sRGB red, green and blue as in the CSS Color 4 samples, from memory.
        Assert.Equal(expected, Shades.Lightness(new Rgb(red, green, blue)), 3);
    }
}
