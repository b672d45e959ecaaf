using Sketch.Shapes;

namespace Sketch.Drawing.Papers;

/// <summary>Five-pointed stars of three sizes, scattered so that no two touch: each keeps to a cell of its own.</summary>
internal static class ScatteredStars
{
    /// <summary>Side of a cell in millimetres.</summary>
    internal const double Cell = 9.525;

    /// <summary>Distance from the middle to the tips of the largest.</summary>
    internal const double Largest = 2.5;

    // (3 - √5) / 2: where the arms of a pentagram cross.
    private const double Inner = 0.38196601125010515;

    internal static void Draw(FigureSheet sheet)
    {
        var random = new Seeded(sheet.Seed);
        var colours = Math.Max(1, sheet.Look.Figures.Length);
        var paths = Enumerable.Range(0, colours).Select(_ => new PathText(2)).ToArray();
        var (rows, columns) = ((int)(sheet.Height / Cell) + 2, (int)(sheet.Width / Cell) + 2);
        var (left, top) = (-random.Between(0, Cell), -random.Between(0, Cell));
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var size = random.Below(6) switch { < 2 => Largest, < 4 => 1.6, _ => 0.8 };
                var room = Cell / 2 - size;
                var x = left + (column + 0.5) * Cell + random.Between(-room, room);
                var y = top + (row + 0.5) * Cell + random.Between(-room, room);
                Star(paths[random.Below(colours)], x, y, size, random.Between(0, 72));
            }
        }

        for (var i = 0; i < colours; i++)
        {
            sheet.Fill(paths[i], sheet.Figure(i));
        }
    }

    private static void Star(PathText path, double x, double y, double radius, double degrees)
    {
        var (lastX, lastY) = Corner(0);
        path.Move(x + lastX, y + lastY);
        for (var i = 1; i < 10; i++)
        {
            var (nextX, nextY) = Corner(i);
            path.LineBy(nextX - lastX, nextY - lastY);
            (lastX, lastY) = (nextX, nextY);
        }

        path.End();

        (double X, double Y) Corner(int index)
        {
            var (sin, cos) = Math.SinCos((degrees + index * 36) * Math.PI / 180);
            var distance = radius * (index % 2 == 0 ? 1 : Inner);
            return (distance * sin, -distance * cos);
        }
    }
}
