using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing.Papers;

/// <summary>
/// A piece of a scanned or photographed paper at its true scale: the drawing contains only the part that shows. A piece lies within
/// the picture if it fits; if the sheet is larger than its picture, the print repeats as tiles.
/// </summary>
internal static class PicturedPaper
{
    internal static void Draw(FigureSheet sheet, PicturedSheet pictured, double dotsPerInch)
    {
        var random = new Seeded(sheet.Seed);
        var left = pictured.Left + random.Between(0, Math.Max(0, pictured.Width - sheet.Width));
        var top = pictured.Top + random.Between(0, Math.Max(0, pictured.Height - sheet.Height));
        sheet.Svg.Open("image")
            .Attribute("x", 0.0).Attribute("y", 0.0).Attribute("width", sheet.Width).Attribute("height", sheet.Height)
            .Attribute("preserveAspectRatio", "none")
            // Its data are long, so they are written once, in the spelling that all programs read.
            .Attribute("xlink:href", pictured.Picture.Part(left, top, sheet.Width, sheet.Height, dotsPerInch))
            .Close();
    }
}
