using Google.OrTools.Sat;
using Sketch.Cutting.Layouts;
using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;

namespace Sketch.Cutting.PostProcessing;

/// <summary>
/// Looks for a plan with no more sheets and fewer different layouts (pattern minimisation): layouts that can be repeated are made one
/// after the other (sequential heuristic procedure: Haessler 1975), and a second integer program over all layouts found, with the number
/// of sheets fixed, uses as few of them as it can (Vanderbeck 2000), each weighed by its settings of the trimmer.
/// </summary>
internal sealed class FewLayouts
{
    private const int MostPatterns = 250;
    private const int MostPoints = 120;
    private const int MostSteps = 12;
    private const int MostDivisions = 4;
    private const double Effort = 1;
    private const int CostOfSurplus = 1;
    private const long StepsOfSettings = 20_000;

    private readonly Reduced _problem;
    private readonly Incumbent _incumbent;
    private readonly WorkBudget _work;
    private readonly WholePlan _best;
    private readonly StopSettings _settings;
    private readonly int[] _worth;

    private FewLayouts(Reduced problem, Incumbent incumbent, StopSettings settings, WorkBudget work)
    {
        (_problem, _incumbent, _settings, _work, _best) = (problem, incumbent, settings, work, incumbent.Best!);
        _worth = incumbent.Worth(k => k.Area);
    }

    /// <summary>Adds what is found to the plans that equal the best one in sheets.</summary>
    public static void Run(Reduced problem, Incumbent incumbent, StopSettings settings, WorkBudget work)
    {
        if (incumbent.Best is { LeftOut: 0, Uses.Count: > 1 })
        {
            var search = new FewLayouts(problem, incumbent, settings, work);
            var found = search.Repeatable();
            search.Choose(found);
        }
    }

    // The same pieces on each of all sheets, or of a half or third of them, and so on with what is left.
    private List<Pattern> Repeatable()
    {
        var found = new List<Pattern>();
        for (var division = 1; division <= MostDivisions && !_work.IsOver; division++)
        {
            foreach (var isRoundedUp in (bool[])[true, false])
            {
                Sequence(division, isRoundedUp, found);
            }
        }

        return found;
    }

    private void Sequence(int division, bool isRoundedUp, List<Pattern> found)
    {
        var (wanted, left) = (_problem.Demand, _best.Sheets);
        var uses = new List<(Pattern Pattern, int Times)>();
        for (var step = 0; step < MostSteps && left > 0 && wanted.Any(w => w > 0) && !_work.IsOver; step++)
        {
            var sheets = Math.Max(1, step == 0 ? left / division : left);
            var share = wanted.Select(w => isRoundedUp ? (w + sheets - 1) / sheets : w / sheets).ToArray();
            share = share.All(s => s == 0) ? [.. wanted.Select(w => Math.Min(w, 1))] : share;
            if (LimitedTable.Best(_problem.Sheet.Width, _problem.Sheet.Height, _problem.Kinds, _worth, share, MostPoints, _work)
                is not { } tree)
            {
                break;
            }

            var pattern = new Pattern(_problem.Sheet, tree, _problem.Kinds.Length);
            found.Add(pattern);
            var held = Enumerable.Range(0, wanted.Length).Where(k => pattern.Counts[k] > 0).ToList();
            var times = Math.Min(left, held.TrueForAll(k => pattern.Counts[k] * sheets >= wanted[k])
                ? sheets : Math.Max(1, held.Min(k => wanted[k] / pattern.Counts[k])));
            uses.Add((pattern, times));
            left -= times;
            foreach (var kind in held)
            {
                wanted[kind] = Math.Max(0, wanted[kind] - times * pattern.Counts[kind]);
            }
        }

        if (wanted.All(w => w == 0))
        {
            _incumbent.Prefer(uses);
        }
    }

    private void Choose(List<Pattern> found)
    {
        if (_work.IsOver)
        {
            return;
        }

        var patterns = _best.Uses.Select(u => u.Pattern).Concat(found).Concat(_incumbent.Pool.Patterns.Reverse())
            .DistinctBy(p => p.Key).Take(Math.Max(MostPatterns, _best.Uses.Count)).ToList();
        var model = new CpModel();
        var uses = patterns.Select(p => model.NewIntVar(0, p.Stock.OnHand ?? _best.Sheets, "")).ToList();
        var isUsed = patterns.Select(_ => model.NewBoolVar("")).ToList();
        var cost = LinearExpr.NewBuilder();
        for (var p = 0; p < patterns.Count; p++)
        {
            model.Add(uses[p] == 0).OnlyEnforceIf(isUsed[p].Not());
            cost.AddTerm(isUsed[p], 2 + _settings.Of(patterns[p]));
            model.AddHint(uses[p], _best.Uses.FirstOrDefault(u => ReferenceEquals(u.Pattern, patterns[p])).Times);
        }

        foreach (var kind in _problem.Kinds)
        {
            var made = LinearExpr.WeightedSum(uses, patterns.Select(p => (long)p.Counts[kind.Index]));
            var isOver = model.NewBoolVar("");
            model.Add(made >= kind.Demand);
            model.Add(made <= kind.Demand).OnlyEnforceIf(isOver.Not());
            cost.AddTerm(isOver, CostOfSurplus);
        }

        foreach (var stock in _problem.Stocks)
        {
            var used = LinearExpr.Sum(uses.Where((_, p) => patterns[p].Stock == stock));
            model.Add(used <= (stock.OnHand ?? _best.Sheets));
        }

        _work.Spend(patterns.Count * StepsOfSettings);
        model.Minimize(cost);
        if (CpSolving.Solve(model, Effort, _work) is { } value)
        {
            _incumbent.Prefer([.. patterns.Select((p, i) => (p, (int)value(uses[i])))]);
        }
    }
}
