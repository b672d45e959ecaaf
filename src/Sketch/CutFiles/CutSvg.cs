using Sketch.Drawing;
using Sketch.Shapes;

namespace Sketch.CutFiles;

/// <summary>
/// A sheet as SVG at true size, with a group for each layer and a path for each line. It has no transforms, clips, styles or words, which
/// programs for machines read differently; curves stay curves.
/// </summary>
public static class CutSvg
{
    /// <summary>The width of every line in millimetres: a thousandth of an inch, which programs for machines take for a line to
    /// follow.</summary>
    public const double Hairline = 0.0254;

    /// <summary>The sheet as the text of an SVG file.</summary>
    public static string Of(CutSheet sheet)
    {
        var ids = new SvgIds();
        foreach (var layer in CutLayer.All)
        {
            ids.Claim(layer.Name);
        }

        var svg = SvgWriter.Sheet(sheet.Page, sheet.InInches, sheet.Title);
        foreach (var layer in CutLayer.All)
        {
            var paths = sheet.Paths.Where(p => p.Layer == layer).ToList();
            if (paths.Count == 0)
            {
                continue;
            }

            svg.Open("g").Attribute("id", layer.Name).Attribute("fill", "none").Attribute("stroke", layer.Colour)
                .Attribute("stroke-width", Hairline);
            foreach (var path in paths)
            {
                var line = new Outline([path.Line]);
                svg.Open("path").Attribute("id", ids.Claim(path.Name))
                    .Attribute("d", path.IsClosed ? line.ToSvgPath() : line.ToOpenSvgPath()).Close();
            }

            svg.Close();
        }

        return svg.Close().ToString();
    }
}
