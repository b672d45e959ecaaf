using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;
using Sketch.Units;

namespace Sketch.Cutting.PostProcessing;

/// <summary>Assigns every place of a plan to a demanded piece, in the order of the demands, and computes places and cuts.</summary>
internal sealed class Naming
{
    private readonly CuttingProblem _problem;
    private readonly Reduced _reduced;
    private readonly Queue<(int Demand, int Count)>[] _waiting;
    private readonly Dictionary<Size, Queue<(string? FreedBy, int Count)>> _offcuts;

    public Naming(CuttingProblem problem, Reduced reduced)
    {
        (_problem, _reduced) = (problem, reduced);
        _waiting = [.. reduced.Members.Select(members => new Queue<(int, int)>(members.Select(m => (m, problem.Pieces[m].Count))))];
        _offcuts = problem.Offcuts.Where(o => o.Count > 0).GroupBy(o => o.Size)
            .ToDictionary(
                g => g.Key, g => new Queue<(string?, int)>(g.OrderBy(o => o.FreedBy is not null).Select(o => (o.FreedBy, o.Count))));
    }

    /// <summary>
    /// The layouts, offcuts first, then those cut most often. Sheets cut the same way with pieces of different names become separate
    /// layouts.
    /// </summary>
    public ImmutableArray<SheetLayout> Layouts(IEnumerable<(Pattern Pattern, int Times)> uses)
    {
        var layouts = ImmutableArray.CreateBuilder<SheetLayout>();
        var settings = _reduced.Kinds.SelectMany(k => new[] { k.Width, k.Height }).ToHashSet();
        foreach (var (pattern, times) in uses.OrderBy(u => u.Pattern.Stock.IsSheet).ThenByDescending(u => u.Times)
            .ThenBy(u => u.Pattern.Key, StringComparer.Ordinal))
        {
            var part = CutOrder.For(pattern.Tree, pattern.Stock.Width, pattern.Stock.Height, _problem.Kerf.Nanometres,
                _problem.SmallestUse.Nanometres, settings);
            settings.UnionWith(part.InOrder().OfType<CutPart>().Select(c => c.SideBySide ? c.First.Width : c.First.Height));
            for (var left = times; left > 0;)
            {
                var alike = Math.Min(left, Alike(pattern));
                var names = pattern.Counts.Select((count, kind) => Take(kind, count, alike)).ToArray();
                layouts.AddRange(WithSource(LayoutWriter.Whole(_problem, pattern.Stock, part, alike, names)));
                left -= alike;
            }
        }

        return [.. LayoutOrder.Of(_problem, layouts)];
    }

    // Of offcuts of one size, those on hand are used before those that pieces free.
    private IEnumerable<SheetLayout> WithSource(SheetLayout layout)
    {
        if (!layout.IsOffcut)
        {
            yield return layout;
            yield break;
        }

        var sources = _offcuts[layout.Stock];
        for (var left = layout.Times; left > 0;)
        {
            var (freedBy, count) = sources.Dequeue();
            var times = Math.Min(left, count);
            yield return layout with { Times = times, FreedBy = freedBy };
            left -= times;
            if (times < count)
            {
                _offcuts[layout.Stock] = sources = new(sources.Prepend((freedBy, count - times)));
            }
        }
    }

    /// <summary>The demands without a place so far.</summary>
    public IEnumerable<UnplacedPieces> LeftOver() =>
        _waiting.SelectMany(w => w).OrderBy(w => w.Demand).Select(w => new UnplacedPieces(_problem.Pieces[w.Demand].Id, w.Count));

    // How many copies can carry the same names; one if the next demand of a kind does not fill a whole copy.
    private int Alike(Pattern pattern) => Enumerable.Range(0, pattern.Counts.Length).Where(k => pattern.Counts[k] > 0)
        .Min(k => Math.Max(1, _waiting[k].Peek().Count / pattern.Counts[k]));

    private Queue<PieceDemand> Take(int kind, int count, int copies)
    {
        var names = new Queue<PieceDemand>();
        while (names.Count < count)
        {
            var (demand, waiting) = _waiting[kind].Peek();
            var here = Math.Min(count - names.Count, waiting);
            for (var i = 0; i < here; i++)
            {
                names.Enqueue(_problem.Pieces[demand]);
            }

            Use(kind, here * copies);
        }

        return names;
    }

    private void Use(int kind, int count)
    {
        var queue = _waiting[kind];
        var (demand, waiting) = queue.Dequeue();
        if (waiting > count)
        {
            _waiting[kind] = new(queue.Prepend((demand, waiting - count)));
        }
    }
}
