using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>A sample of a paper by itself.</summary>
public static class Swatch
{
    /// <summary>
    /// Draws a rectangle of a paper at true size as SVG, without a shadow: its figures are as large as on a card, and a pictured paper
    /// shows a part of its picture at true scale.
    /// </summary>
    /// <param name="look">The paper.</param>
    /// <param name="size">How large; both measures greater than zero. Beyond a metre in either direction only the ground is drawn.</param>
    /// <param name="title">What the paper is called; another title shows another part of the sheet.</param>
    /// <param name="units">Whether width and height are given in inches or millimetres.</param>
    /// <param name="dotsPerInch">The most pixels per inch of a pictured paper.</param>
    public static string Draw(PaperLook look, Size size, string title, UnitSystem units, double dotsPerInch = CardDrawing.UsualDotsPerInch)
    {
        var ids = new SvgIds();
        var definitions = new Definitions(ids);
        var body = new SvgWriter(indent: 1).Open("g").Attribute("id", ids.Claim("swatch"));
        var outline = Outline.Rectangle(new(Length.Zero, Length.Zero, size.Width, size.Height)).ToSvgPath();
        new PieceDrawing(definitions, ids, dotsPerInch).Draw(
            body,
            new(Appearance.Paper, look, outline, size.Width.Millimetres, size.Height.Millimetres, Seeded.SeedOf(title, size)),
            "swatch");
        body.Close();
        return SvgWriter.Sheet(size, units == UnitSystem.Inches, title)
            .Insert(new SvgWriter(indent: 1).Open("defs").Insert(definitions.Svg).Close()).Insert(body).Close().ToString();
    }
}
