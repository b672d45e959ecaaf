namespace Sketch.Cutting.Layouts;

/// <summary>
/// Good layouts when only so many copies of each kind are wanted: the same table as <see cref="LayoutTable"/>, but each rectangle remembers what
/// is in its best layout, and copies beyond the wanted number are worth nothing. Not always the best, since a rectangle remembers only one layout.
/// </summary>
internal sealed class LimitedTable
{
    private readonly CutPoints _across;
    private readonly CutPoints _down;
    private readonly Kind[] _kinds;
    private readonly int[] _value;
    private readonly ushort[] _counts;
    private readonly (How How, int First, int Second)[] _made;
    private int[] _values = [];
    private int[] _wanted = [];

    public LimitedTable(CutPoints across, CutPoints down, Kind[] kinds)
    {
        (_across, _down, _kinds) = (across, down, kinds);
        _value = new int[across.Count * down.Count];
        _counts = new ushort[_value.Length * kinds.Length];
        _made = new (How, int, int)[_value.Length];
    }

    private enum How : byte
    {
        Nothing,
        Same,
        Piece,
        SideBySide,
        Above,
    }

    /// <summary>A layout of the rectangle whose copies up to the wanted ones are worth much; null when nothing wanted fits.</summary>
    public CutTree? Best(long width, long height, int[] values, int[] wanted)
    {
        (_values, _wanted) = (values, wanted);
        Array.Clear(_value);
        Array.Clear(_counts);
        Array.Clear(_made);
        var (columns, rows) = (_across.Floor(width), _down.Floor(height));
        for (var i = 1; i <= columns; i++)
        {
            for (var j = 1; j <= rows; j++)
            {
                FillCell(i, j);
            }
        }

        return Tree(columns * _down.Count + rows);
    }

    private void FillCell(int i, int j)
    {
        var height = _down.Count;
        var cell = i * height + j;
        Keep(cell, How.Same, cell - height);
        Keep(cell, How.Same, cell - 1);
        foreach (var kind in _kinds)
        {
            if (_wanted[kind.Index] > 0 && _values[kind.Index] > _value[cell] && kind.Fits(_across[i], _down[j]))
            {
                _value[cell] = _values[kind.Index];
                _made[cell] = (How.Piece, kind.Index, 0);
                Counts(cell).Clear();
                Counts(cell)[kind.Index] = 1;
            }
        }

        var rest = i;
        for (var k = 1; k < i && 2 * _across[k] <= _across[i]; k++)
        {
            while (_across[rest] > _across[i] - _across[k])
            {
                rest--;
            }

            TryJoin(cell, How.SideBySide, k * height + j, rest * height + j);
        }

        rest = j;
        for (var k = 1; k < j && 2 * _down[k] <= _down[j]; k++)
        {
            while (_down[rest] > _down[j] - _down[k])
            {
                rest--;
            }

            TryJoin(cell, How.Above, i * height + k, i * height + rest);
        }
    }

    private Span<ushort> Counts(int cell) => _counts.AsSpan(cell * _kinds.Length, _kinds.Length);

    private void Keep(int cell, How how, int other)
    {
        if (_value[other] > _value[cell])
        {
            _value[cell] = _value[other];
            _made[cell] = (how, other, 0);
            Counts(other).CopyTo(Counts(cell));
        }
    }

    private void TryJoin(int cell, How how, int first, int second)
    {
        if (_value[first] + _value[second] <= _value[cell])
        {
            return;
        }

        var a = Counts(first);
        var b = Counts(second);
        var total = 0;
        for (var kind = 0; kind < a.Length; kind++)
        {
            total += _values[kind] * Math.Min(a[kind] + b[kind], _wanted[kind]);
        }

        if (total <= _value[cell])
        {
            return;
        }

        _value[cell] = total;
        _made[cell] = (how, first, second);
        var sum = Counts(cell);
        for (var kind = 0; kind < a.Length; kind++)
        {
            sum[kind] = (ushort)Math.Min(a[kind] + b[kind], Math.Min(_wanted[kind], ushort.MaxValue));
        }
    }

    private CutTree? Tree(int cell)
    {
        while (_made[cell].How == How.Same)
        {
            cell = _made[cell].First;
        }

        var (how, first, second) = _made[cell];
        if (how == How.Nothing)
        {
            return null;
        }

        if (how == How.Piece)
        {
            var (width, height) = (_across[cell / _down.Count], _down[cell % _down.Count]);
            var way = _kinds[first].Ways().First(w => w.Width <= width && w.Height <= height);
            return new PieceLeaf(_kinds[first], way.Width, way.Height);
        }

        return (Tree(first), Tree(second)) switch
        {
            (null, var only) => only,
            (var only, null) => only,
            var (a, b) => new Join(how == How.SideBySide, a, b),
        };
    }
}
