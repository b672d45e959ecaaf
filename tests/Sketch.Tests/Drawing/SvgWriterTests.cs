using System.Xml.Linq;
using CsCheck;
using Sketch.Drawing;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Drawing;

public sealed class SvgWriterTests
{
    [Fact]
    public void Any_title_is_well_formed_and_reads_back()
    {
        Gen.String.Sample(words =>
        {
            var title = XElement.Parse(new SvgWriter().Open("g").Title(words).Close().ToString()).Value;

            return title.Length == words.Length;
        });
    }

    [Theory]
    [InlineData("a < b & c", "a < b & c")]
    [InlineData("\"Fair\" ]]> winds", "\"Fair\" ]]> winds")]
    [InlineData("bell\a", "bell\ufffd")]
    [InlineData("ship \ud83d\udea2", "ship \ud83d\udea2")]
    [InlineData("two\nlines", "two lines")]
    public void XML_markup_is_escaped_and_forbidden_characters_are_replaced(string words, string expected)
    {
        Assert.Equal(expected, XElement.Parse(new SvgWriter().Open("g").Title(words).Close().ToString()).Value);
    }

    [Fact]
    public void A_lone_surrogate_is_replaced()
    {
        var words = "half" + (char)0xd83d;

        Assert.Equal("half\ufffd", XElement.Parse(new SvgWriter().Open("g").Title(words).Close().ToString()).Value);
    }

    [Fact]
    public void A_quote_cannot_end_an_attribute()
    {
        var element = XElement.Parse(new SvgWriter().Open("g").Attribute("id", "a\" onload=\"b").Close().ToString());

        Assert.Single(element.Attributes());
    }

    [Fact]
    public void An_element_without_content_is_self_closing()
    {
        Assert.Equal("<g>\n <use/>\n</g>\n", new SvgWriter().Open("g").Open("use").Close().Close().ToString());
    }

    [Fact]
    public void A_shift_is_written_as_a_translation()
    {
        var svg = new SvgWriter().Open("g").Transform(Affine.Shift(1.5, -2)).Close().ToString();

        Assert.Equal("<g transform=\"translate(1.5 -2)\"/>\n", svg);
    }

    [Theory]
    [InlineData("front/sky/lamp", "front-sky-lamp")]
    [InlineData("front/gem[1]/mat", "front-gem-1-mat")]
    [InlineData("12 \"x", "x12-x")]
    [InlineData("///", "x")]
    public void An_id_consists_of_the_letters_and_digits_of_a_path(string path, string expected)
    {
        Assert.Equal(expected, new SvgIds().Claim(path));
    }

    [Fact]
    public void Paths_that_would_give_the_same_id_get_different_ones()
    {
        var ids = new SvgIds();

        Assert.Equal(["a-b", "a-b-2", "a-b-3"], [ids.Claim("a/b"), ids.Claim("a-b"), ids.Claim("a b")]);
    }

    [Fact]
    public void Ids_are_unique()
    {
        Gen.Char["ab-1[/2"].Array[0, 4].Array[0, 40].Sample(names =>
        {
            var ids = new SvgIds();
            var given = names.Select(n => ids.Claim(new string(n))).ToList();
            return given.Distinct().Count() == given.Count;
        });
    }
}
