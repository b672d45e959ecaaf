namespace Sketch.Cutting.Layouts;

/// <summary>
/// The most value that edge-to-edge cuts, in any number of stages, get from every rectangle with sides on the cut points, when any number
/// of copies may be cut (dynamic programming: Gilmore and Gomory 1966; on discretization points: Beasley 1985). One table serves the sheet
/// and all offcuts, and is refilled for each set of values.
/// </summary>
internal sealed class LayoutTable
{
    /// <summary>The largest total in a table, so that sums stay within 32 bits.</summary>
    public const int MostValue = 1 << 29;

    private readonly CutPoints _across;
    private readonly CutPoints _down;
    private readonly int[][] _restAcross;
    private readonly int[][] _restDown;
    private readonly int[] _best;
    private readonly (Kind Kind, int Column, int Row)[] _ways;
    private int[] _values = [];

    public LayoutTable(CutPoints across, CutPoints down, IEnumerable<Kind> kinds)
    {
        _across = across;
        _down = down;
        _best = new int[across.Count * down.Count];
        (_restAcross, _restDown) = (across.Rests(), down.Rests());
        Effort = _restAcross.Sum(r => (long)r.Length) * down.Count / 8 + _restDown.Sum(r => (long)r.Length) * across.Count;
        var (width, height) = (across[across.Count - 1], down[down.Count - 1]);
        _ways = [.. from kind in kinds
                    from way in kind.Ways()
                    where way.Width <= width && way.Height <= height
                    select (kind, Ceiling(across, way.Width), Ceiling(down, way.Height))];
    }

    /// <summary>The steps that one filling takes, for a <see cref="Model.WorkBudget"/>.</summary>
    public long Effort { get; }

    /// <summary>Whether no layout is missed for lack of a cut point.</summary>
    public bool IsExact => _across.IsComplete && _down.IsComplete;

    /// <summary>Computes the value of every rectangle.</summary>
    /// <param name="values">The value of one piece of each kind; zero for kinds that are not wanted.</param>
    public void Fill(int[] values)
    {
        _values = values;
        var height = _down.Count;
        Array.Clear(_best);
        foreach (var (kind, column, row) in _ways)
        {
            ref var cell = ref _best[column * height + row];
            cell = Math.Max(cell, values[kind.Index]);
        }

        for (var i = 0; i < _across.Count; i++)
        {
            var column = _best.AsSpan(i * height, height);
            if (i > 0)
            {
                Sums.Raise(column, _best.AsSpan((i - 1) * height, height));
            }

            // Of the two parts the narrower one is at most half as wide; the wider one gets what remains.
            var rests = _restAcross[i];
            for (var k = 0; k < rests.Length; k++)
            {
                Sums.Raise(column, _best.AsSpan((k + 1) * height, height), _best.AsSpan(rests[k] * height, height));
            }

            CutDown(column);
        }
    }

    /// <summary>The best value of a rectangle.</summary>
    public int Best(long width, long height) => _best[_across.Floor(width) * _down.Count + _down.Floor(height)];

    /// <summary>A layout of the best value, or null if nothing of value fits.</summary>
    public CutTree? Tree(long width, long height) => Tree(_across.Floor(width), _down.Floor(height));

    private static int Ceiling(CutPoints points, long distance)
    {
        var floor = points.Floor(distance);
        return points[floor] == distance ? floor : floor + 1;
    }

    private void CutDown(Span<int> column)
    {
        for (var j = 1; j < column.Length; j++)
        {
            var best = Math.Max(column[j], column[j - 1]);
            var rests = _restDown[j];
            for (var k = 0; k < rests.Length; k++)
            {
                var sum = column[k + 1] + column[rests[k]];
                if (sum > best)
                {
                    best = sum;
                }
            }

            column[j] = best;
        }
    }

    private CutTree? Tree(int i, int j)
    {
        var height = _down.Count;
        var value = _best[i * height + j];
        if (value == 0)
        {
            return null;
        }

        while (i > 0 && _best[(i - 1) * height + j] == value)
        {
            i--;
        }

        while (j > 0 && _best[i * height + j - 1] == value)
        {
            j--;
        }

        foreach (var (kind, column, row) in _ways)
        {
            if (column <= i && row <= j && _values[kind.Index] == value)
            {
                var (width, tall) = kind.Ways().First(way => Ceiling(_across, way.Width) == column && Ceiling(_down, way.Height) == row);
                return new PieceLeaf(kind, width, tall);
            }
        }

        for (var k = 0; k < _restAcross[i].Length; k++)
        {
            if (_best[(k + 1) * height + j] + _best[_restAcross[i][k] * height + j] == value)
            {
                return Joined(true, Tree(k + 1, j), Tree(_restAcross[i][k], j));
            }
        }

        for (var k = 0; k < _restDown[j].Length; k++)
        {
            if (_best[i * height + k + 1] + _best[i * height + _restDown[j][k]] == value)
            {
                return Joined(false, Tree(i, k + 1), Tree(i, _restDown[j][k]));
            }
        }

        throw new InvalidOperationException("the table was changed while a layout was read from it");
    }

    private static CutTree? Joined(bool sideBySide, CutTree? first, CutTree? second) =>
        first is null ? second : second is null ? first : new Join(sideBySide, first, second);
}
