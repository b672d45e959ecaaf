using System.Numerics;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Layouts;

/// <summary>
/// Good layouts when only a few copies of each kind are wanted: the same table as <see cref="LayoutTable"/>, but each rectangle remembers
/// what is in its best layout, and copies beyond the wanted number have no value. Not always optimal, since a rectangle remembers only
/// one layout.
/// </summary>
internal sealed class LimitedTable
{
    private const long StepsOfJoin = 3;
    private const int Bits = 64;

    private readonly CutPoints _across;
    private readonly CutPoints _down;
    private readonly int[][] _restAcross;
    private readonly int[][] _restDown;
    private readonly int[] _atMost;
    private readonly (Kind Kind, int Worth, int Wanted)[] _kinds;
    private readonly ushort[] _most;
    private readonly int[] _value;
    private readonly ushort[] _counts;
    private readonly ulong[] _holds;
    private readonly (How How, int First, int Second)[] _made;
    private long _counted;

    private LimitedTable(CutPoints across, CutPoints down, (Kind Kind, int Worth, int Wanted)[] kinds)
    {
        (_across, _down, _kinds) = (across, down, kinds);
        (_restAcross, _restDown, _atMost) = (across.Rests(), down.Rests(), new int[down.Count]);
        _most = [.. kinds.Select(k => (ushort)Math.Min(k.Wanted, ushort.MaxValue))];
        _value = new int[across.Count * down.Count];
        _counts = new ushort[_value.Length * kinds.Length];
        _holds = new ulong[_value.Length];
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

    /// <summary>A layout of the rectangle with valuable wanted pieces; null if nothing wanted fits.</summary>
    /// <param name="width">Across.</param>
    /// <param name="height">Down.</param>
    /// <param name="kinds">All kinds, in the order of their indexes.</param>
    /// <param name="worth">The value of one piece of each kind; positive for all that are wanted.</param>
    /// <param name="wanted">How many copies of each are wanted.</param>
    /// <param name="mostPoints">The most cut points to consider along each side.</param>
    /// <param name="work">What may be done; a table that is not completed gives nothing.</param>
    public static CutTree? Best(long width, long height, Kind[] kinds, int[] worth, int[] wanted, int mostPoints, WorkBudget work)
    {
        var table = Filled(width, height, kinds, worth, wanted, mostPoints, work);
        return table.Tree(table._value.Length - 1)?.AtMost(wanted);
    }

    /// <summary>
    /// Layouts of all wanted pieces in the smallest rectangles that this table finds, each narrower and taller than the one before; none if
    /// they do not all fit.
    /// </summary>
    public static IEnumerable<CutTree> Smallest(
        long width, long height, Kind[] kinds, int[] worth, int[] wanted, int mostPoints, WorkBudget work)
    {
        var table = Filled(width, height, kinds, worth, wanted, mostPoints, work);
        var all = table._kinds.Sum(k => k.Worth * k.Wanted);
        var (rows, lowest) = (table._down.Count, 0);
        for (var i = table._across.Count - 1; i > 0; i--)
        {
            var row = Enumerable.Range(1, rows - 1).FirstOrDefault(j => table._value[i * rows + j] == all);
            var isNarrowest = row > 0 && table._value[(i - 1) * rows + row] != all;
            if (row == 0)
            {
                yield break;
            }

            if (isNarrowest && row > lowest && table.Tree(i * rows + row)?.AtMost(wanted) is { } tree)
            {
                lowest = row;
                yield return tree;
            }
        }
    }

    private static LimitedTable Filled(
        long width, long height, Kind[] kinds, int[] worth, int[] wanted, int mostPoints, WorkBudget work)
    {
        var used = kinds.Where(k => wanted[k.Index] > 0 && k.Fits(width, height)).Select(k => (k, worth[k.Index], wanted[k.Index]))
            .ToArray();
        var across = CutPoints.For(used.SelectMany(u => u.k.Ways().Select(w => (w.Width, u.Item3))), width, mostPoints);
        var down = CutPoints.For(used.SelectMany(u => u.k.Ways().Select(w => (w.Height, u.Item3))), height, mostPoints);
        var table = new LimitedTable(across, down, used);
        for (var i = 1; i < across.Count && !work.IsOver; i++)
        {
            table.BoundColumn(i);
            work.Spend(down.Count * (used.Length + table._restAcross[i].Length) + StepsOfJoin * table._restDown.Sum(r => (long)r.Length));
            for (var j = 1; j < down.Count; j++)
            {
                table.FillCell(i, j);
            }

            work.Spend(table._counted);
            table._counted = 0;
        }

        return table;
    }

    private void FillCell(int i, int j)
    {
        var height = _down.Count;
        var cell = i * height + j;
        KeepSame(cell, cell - height);
        KeepSame(cell, cell - 1);
        for (var kind = 0; kind < _kinds.Length; kind++)
        {
            if (_kinds[kind].Worth > _value[cell] && _kinds[kind].Kind.Fits(_across[i], _down[j]))
            {
                _value[cell] = _kinds[kind].Worth;
                _made[cell] = (How.Piece, kind, 0);
                _holds[cell] = Bit(kind);
                Counts(cell).Clear();
                Counts(cell)[kind] = 1;
            }
        }

        var rests = _restAcross[i];
        for (var k = 0; k < rests.Length && _atMost[j] > _value[cell]; k++)
        {
            TryJoin(cell, How.SideBySide, (k + 1) * height + j, rests[k] * height + j);
        }

        rests = _restDown[j];
        for (var k = 0; k < rests.Length; k++)
        {
            TryJoin(cell, How.Above, i * height + k + 1, i * height + rests[k]);
        }
    }

    // An upper bound on two layouts side by side, for all heights at once: most rectangles need no closer look.
    private void BoundColumn(int i)
    {
        var height = _down.Count;
        Array.Clear(_atMost);
        for (var k = 0; k < _restAcross[i].Length; k++)
        {
            Sums.Raise(_atMost, _value.AsSpan((k + 1) * height, height), _value.AsSpan(_restAcross[i][k] * height, height));
        }
    }

    // With more than 64 kinds, one bit represents several: then it only shows that two layouts may hold the same kind.
    private static ulong Bit(int kind) => 1UL << (kind % Bits);

    private Span<ushort> Counts(int cell) => _counts.AsSpan(cell * _kinds.Length, _kinds.Length);

    private void KeepSame(int cell, int other)
    {
        if (_value[other] > _value[cell])
        {
            _value[cell] = _value[other];
            _made[cell] = (How.Same, other, 0);
            _holds[cell] = _holds[other];
            Counts(other).CopyTo(Counts(cell));
        }
    }

    private void TryJoin(int cell, How how, int first, int second)
    {
        var total = _value[first] + _value[second];
        if (total <= _value[cell])
        {
            return;
        }

        var shared = _holds[first] & _holds[second];
        var ones = Counts(first);
        var others = Counts(second);
        if (shared != 0)
        {
            _counted += _kinds.Length;
            for (; shared != 0; shared &= shared - 1)
            {
                for (var kind = BitOperations.TrailingZeroCount(shared); kind < ones.Length; kind += Bits)
                {
                    if (ones[kind] + others[kind] - _kinds[kind].Wanted is > 0 and var surplus)
                    {
                        total -= surplus * _kinds[kind].Worth;
                        if (total <= _value[cell])
                        {
                            return;
                        }
                    }
                }
            }
        }

        _value[cell] = total;
        _made[cell] = (how, first, second);
        _holds[cell] = _holds[first] | _holds[second];
        _counted += _kinds.Length;
        Sums.SetCapped(Counts(cell), ones, others, _most);
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
            var kind = _kinds[first].Kind;
            var way = kind.Ways().First(w => w.Width <= width && w.Height <= height);
            return new PieceLeaf(kind, way.Width, way.Height);
        }

        return (Tree(first), Tree(second)) switch
        {
            (null, var only) => only,
            (var only, null) => only,
            var (a, b) => new Join(how == How.SideBySide, a, b),
        };
    }
}
