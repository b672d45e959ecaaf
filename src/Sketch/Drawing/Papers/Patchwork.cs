using Sketch.Colours;

namespace Sketch.Drawing.Papers;

/// <summary>
/// Patches of 3/8 in with seams between them, for a piece that may come from any leftover: no two neighbours have the same tint.
/// </summary>
internal static class Patchwork
{
    internal const double Patch = 9.525;

    /// <summary>The colour of the seams, and of the edge that sets a piece off from whatever it lies on.</summary>
    internal static readonly Rgb Seam = Rgb.FromHex("8a8479");

    internal static void Draw(FigureSheet sheet)
    {
        var tints = sheet.Look.Figures.Length;
        var patches = Enumerable.Range(0, tints).Select(_ => new PathText()).ToArray();
        var seams = new PathText();
        foreach (var (row, y) in FigureSheet.Centred(sheet.Height, Patch, Patch / 2))
        {
            seams.Move(0, y + Patch / 2).Across(sheet.Width);
            foreach (var (column, x) in FigureSheet.Centred(sheet.Width, Patch, Patch / 2))
            {
                // The last tint of the cycle is the ground itself.
                var turn = (column + 2 * row) % (tints + 1);
                var tint = turn < 0 ? turn + tints + 1 : turn;
                if (tint < tints)
                {
                    patches[tint].Rectangle(x - Patch / 2, y - Patch / 2, x + Patch / 2, y + Patch / 2);
                }
            }
        }

        foreach (var (_, x) in FigureSheet.Centred(sheet.Width, Patch, Patch / 2))
        {
            seams.Move(x + Patch / 2, 0).Down(sheet.Height);
        }

        for (var i = 0; i < tints; i++)
        {
            sheet.Fill(patches[i], sheet.Figure(i));
        }

        sheet.Stroke(seams, Seam, 0.3, dashes: "1.2 0.8");
    }
}
