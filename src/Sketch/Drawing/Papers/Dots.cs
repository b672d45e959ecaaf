using System.Globalization;

namespace Sketch.Drawing.Papers;

/// <summary>Dots of 1/8 in, 3/8 in apart in rows 3/16 in apart, every second row moved by half.</summary>
internal static class Dots
{
    internal const double Diameter = 3.175;
    internal const double Pitch = 9.525;
    internal const double RowPitch = 4.7625;

    internal static void Draw(FigureSheet sheet)
    {
        PathText[] rows = [new(), new()];
        foreach (var (index, y) in FigureSheet.Centred(sheet.Height, RowPitch, Diameter / 2))
        {
            var shift = index % 2 == 0 ? 0 : Pitch / 2;
            var dots = FigureSheet.Centred(sheet.Width, Pitch, Diameter / 2, shift).Select(d => d.At).ToList();
            if (dots.Count > 0)
            {
                // A little beyond the last dot: a line that ends on a dash may or may not draw it.
                rows[index & 1].Move(dots[0], y).Across(dots[^1] + Pitch / 4);
            }
        }

        // A dash without length and with round ends is a dot.
        var dashes = string.Create(CultureInfo.InvariantCulture, $"0 {Pitch}");
        var second = sheet.Look.Figures.Length > 1 ? 1 : 0;
        sheet.Stroke(rows[0], sheet.Figure(0), Diameter, round: true, dashes: dashes);
        sheet.Stroke(rows[1], sheet.Figure(second), Diameter, round: true, dashes: dashes);
    }
}
