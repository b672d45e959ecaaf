namespace Sketch.Drawing.Papers;

/// <summary>Slanted lines 1/8 in apart for a piece whose paper is unknown.</summary>
internal static class Hatching
{
    private const double Pitch = 3.175;

    internal static void Draw(FigureSheet sheet)
    {
        var path = new PathText();
        var across = Pitch * Math.Sqrt(2);
        for (var x = across / 2; x < sheet.Width + sheet.Height; x += across)
        {
            path.Move(x, 0).LineBy(-sheet.Height, sheet.Height);
        }

        sheet.Stroke(path, sheet.Figure(0), 0.5, 0.8);
    }
}
