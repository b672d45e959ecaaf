namespace Sketch.Shapes;

/// <summary>
/// Finds what lies near a place among many boxes. Each box is stored in a grid whose cells are at least as large as itself, in the cell of
/// its centre, so it reaches at most half a cell out of it.
/// </summary>
internal sealed class LooseGrid<T>
{
    /// <summary>Cells of half a millimetre: smaller boxes gain nothing from smaller cells.</summary>
    private const int SmallestLevel = -1;

    private readonly SortedDictionary<int, Dictionary<(int Column, int Row), List<(Bounds Box, T Item)>>> _levels = [];

    public void Add(Bounds box, T item)
    {
        var level = Math.Max(SmallestLevel, (int)Math.Ceiling(Math.Log2(Math.Max(1e-9, Math.Max(box.Width, box.Height)))));
        if (!_levels.TryGetValue(level, out var cells))
        {
            _levels[level] = cells = [];
        }

        var cell = CellOf(box.Centre, level);
        if (!cells.TryGetValue(cell, out var items))
        {
            cells[cell] = items = [];
        }

        items.Add((box, item));
    }

    /// <summary>The items in the cells near a box, each with whether its box touches that box.</summary>
    public IEnumerable<(T Item, bool Touches)> Near(Bounds box)
    {
        foreach (var (level, cells) in _levels)
        {
            var reach = box.Grow(Math.ScaleB(0.5, level));
            var (left, top) = CellOf(new(reach.Left, reach.Top), level);
            var (right, bottom) = CellOf(new(reach.Right, reach.Bottom), level);
            var found = (long)(right - left + 1) * (bottom - top + 1) <= cells.Count
                ? InRange(cells, left, top, right, bottom)
                : cells.Values;
            foreach (var items in found)
            {
                foreach (var (other, item) in items)
                {
                    yield return (item, other.Left <= box.Right && other.Right >= box.Left && other.Top <= box.Bottom
                        && other.Bottom >= box.Top);
                }
            }
        }
    }

    private static IEnumerable<List<(Bounds Box, T Item)>> InRange(
        Dictionary<(int Column, int Row), List<(Bounds Box, T Item)>> cells, int left, int top, int right, int bottom)
    {
        for (var row = top; row <= bottom; row++)
        {
            for (var column = left; column <= right; column++)
            {
                if (cells.TryGetValue((column, row), out var items))
                {
                    yield return items;
                }
            }
        }
    }

    private static (int Column, int Row) CellOf(Point point, int level)
    {
        return (Cell(point.X), Cell(point.Y));

        // Boxes a thousand kilometres away share the outermost cells.
        int Cell(double at) => (int)Math.Clamp(Math.Floor(Math.ScaleB(at, -level)), -1e9, 1e9);
    }
}
