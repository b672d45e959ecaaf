using System.Xml.Linq;
using Sketch.CutFiles;
using Sketch.Shapes;
using SkiaSharp;
using Xunit;

namespace Sketch.Tests.CutFiles;

public sealed class CutSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The paths of a file as another library reads them, each with its group.</summary>
    private static IEnumerable<(XElement Group, string Data)> Paths(XElement root) => root.Elements(Svg + "g")
        .SelectMany(g => g.Elements(Svg + "path"), (g, p) => (g, (string)p.Attribute("d")!));

    [Fact]
    public void Each_line_is_one_path_of_its_layer_at_its_place() => Assert.All(Machine.Samples().SelectMany(s => s.Sheets), sheet =>
    {
        var drawn = Paths(XElement.Parse(CutSvg.Of(sheet))).ToList();
        Assert.Equal(sheet.Paths.Length, drawn.Count);
        Assert.All(sheet.Paths.Zip(drawn), pair =>
        {
            var (path, (group, data)) = pair;
            Assert.Equal((path.Layer.Name, path.Layer.Colour), ((string?)group.Attribute("id"), (string?)group.Attribute("stroke")));
            Assert.Equal((1, path.IsClosed), (data.Count(c => c == 'M'), data.EndsWith('Z')));
            using var read = SKPath.ParseSvgPathData(data);
            var (found, meant) = (read.ComputeTightBounds(), new Outline([path.Line]).Bounds);
            Assert.Equal(meant.Left, found.Left, 0.01);
            Assert.Equal(meant.Top, found.Top, 0.01);
            Assert.Equal(meant.Right, found.Right, 0.01);
            Assert.Equal(meant.Bottom, found.Bottom, 0.01);
        });
    });

    [Fact]
    public void The_picture_has_the_size_of_the_page()
    {
        var root = XElement.Parse(CutSvg.Of(Machine.Of("card \"Test\"\nbase A2, fold left, of white\n")[0]));
        Assert.Equal(("12in", "12in", "0 0 304.8 304.8"),
            ((string?)root.Attribute("width"), (string?)root.Attribute("height"), (string?)root.Attribute("viewBox")));
    }

    [Fact]
    public void There_are_no_words_bars_transforms_or_styles() => Assert.All(Machine.Samples().SelectMany(s => s.Sheets), sheet =>
    {
        var root = XElement.Parse(CutSvg.Of(sheet));
        Assert.Equal(["g", "path", "title"], root.Descendants().Select(e => e.Name.LocalName).Distinct().Order(StringComparer.Ordinal));
        Assert.DoesNotContain(root.Descendants().Attributes(), a => a.Name.LocalName is "transform" or "style" or "clip-path");
    });
}
