using System.Xml.Linq;
using Sketch.Drawing;
using Sketch.Tests.Templates;
using Xunit;

namespace Sketch.Tests.Drawing;

/// <summary>
/// SVG 1.1 (section 5.6, and 5.7 for images) knows only <c>xlink:href</c>, SVG 2 prefers <c>href</c>; programs of both kinds draw a
/// picture.
/// </summary>
public sealed class SvgReferenceTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly XName Link = XNamespace.Get("http://www.w3.org/1999/xlink") + "href";

    [Fact]
    public void Every_use_in_a_picture_names_its_target_both_ways() => Assert.All(Pictures(), picture =>
    {
        var uses = picture.Descendants(Svg + "use").ToList();
        Assert.NotEmpty(uses);
        Assert.All(uses, use => Assert.Equal((string?)use.Attribute(Link), (string?)use.Attribute("href") ?? "none"));
    });

    [Fact]
    public void Every_target_is_in_the_picture() => Assert.All(Pictures(), picture =>
        Assert.Subset(
            picture.Descendants().Attributes("id").Select(a => "#" + a.Value).ToHashSet(),
            picture.Descendants(Svg + "use").Select(u => u.Attribute(Link)!.Value).ToHashSet()));

    private static IEnumerable<XElement> Pictures() =>
        Printed.Samples().SelectMany(card => (string[])
        [
            .. card.Faces.Select(f => CardDrawing.Draw(card, f.Kind)), CardDrawing.Flat(card, outside: true).Svg,
        ]).Select(XElement.Parse);
}
