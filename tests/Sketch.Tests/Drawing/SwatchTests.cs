using System.Xml.Linq;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Drawing;

public class SwatchTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly Size TwoInches = new(Length.NearestMillimetres(50.8), Length.NearestMillimetres(50.8));

    [Fact]
    public void A_swatch_has_its_true_size_and_title()
    {
        var root = XElement.Parse(Draw("kraft"));

        Assert.Equal(("2in", "2in", "kraft"),
            ((string?)root.Attribute("width"), (string?)root.Attribute("height"), root.Element(Svg + "title")?.Value));
    }

    public static TheoryData<string> Papers() => new(BuiltIn.PatternWords);

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_swatch_has_no_shadow(string paper) => Assert.DoesNotContain("shadow", Draw(paper), StringComparison.Ordinal);

    [Fact]
    public void Its_figures_have_the_same_size_as_on_a_card()
    {
        var onCard = XElement.Parse(CardDrawing.Draw(new CardFixture(50.8, 50.8).BaseOf("stripes").Card(), FaceKind.Front));

        Assert.Equal(Figures(onCard), Figures(XElement.Parse(Draw("stripes"))));
    }

    [Fact]
    public void Every_reference_resolves()
    {
        foreach (var root in BuiltIn.PatternWords.Select(p => XElement.Parse(Draw(p))))
        {
            var ids = root.Descendants().Attributes("id").Select(a => a.Value).ToHashSet();
            Assert.Subset(ids, root.Descendants().Attributes("href").Select(a => a.Value[1..]).ToHashSet());
        }
    }

    private static string Draw(string paper) => Swatch.Draw(BuiltIn.Find(paper, [])!, TwoInches, paper, UnitSystem.Inches);

    private static string[] Figures(XElement root) =>
        [.. root.Descendants(Svg + "g").First(g => g.Attribute("clip-path") is not null).Descendants()
            .Select(e => e.ToString(SaveOptions.DisableFormatting))];
}
