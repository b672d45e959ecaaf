using Google.OrTools.LinearSolver;
using Sketch.Cutting.Model;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// The linear program over patterns (Gilmore and Gomory 1961): how often to use each, in fractions, so that every piece is cut from as few
/// full sheets as possible. Offcuts cost nothing but are limited. A piece may be left out at a price that no plan pays if it can be cut.
/// </summary>
internal sealed class PatternProgram : IDisposable
{
    /// <summary>What leaving out one piece costs, in sheets.</summary>
    public const int LeftOut = 10_000;

    // Roughly what the solver takes, beside what depends on the size of the program.
    private const long StepsOfSolve = 50_000;
    private const long StepsOfIteration = 1_000;

    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Constraint[] _demand;
    private readonly Constraint?[] _onHand;
    private readonly Objective _objective;
    private readonly List<(Pattern Pattern, Variable Variable)> _columns = [];

    public PatternProgram(int[] demand, IReadOnlyList<int?> onHand)
    {
        _objective = _solver.Objective();
        _objective.SetMinimization();
        _demand = [.. demand.Select(d => _solver.MakeConstraint(d, double.PositiveInfinity))];
        _onHand = [.. onHand.Select(n => n is { } most ? _solver.MakeConstraint(double.NegativeInfinity, most) : null)];
        foreach (var row in _demand)
        {
            var leftOut = _solver.MakeNumVar(0, double.PositiveInfinity, "");
            _objective.SetCoefficient(leftOut, LeftOut);
            row.SetCoefficient(leftOut, 1);
        }
    }

    public void Add(Pattern pattern)
    {
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _objective.SetCoefficient(variable, pattern.Stock.IsSheet ? 1 : 0);
        for (var kind = 0; kind < _demand.Length; kind++)
        {
            if (pattern.Counts[kind] > 0)
            {
                _demand[kind].SetCoefficient(variable, pattern.Counts[kind]);
            }
        }

        _onHand[pattern.Stock.Index]?.SetCoefficient(variable, 1);
        _columns.Add((pattern, variable));
    }

    /// <summary>Solves; false if the solver gives up.</summary>
    public bool Solve(WorkBudget work)
    {
        var status = _solver.Solve();
        long rows = _demand.Length + _onHand.Length;
        work.Spend(StepsOfSolve + rows * _columns.Count + _solver.Iterations() * (StepsOfIteration + rows * rows + _columns.Count));
        return status == Solver.ResultStatus.OPTIMAL;
    }

    /// <summary>What one more piece of each kind would cost, in sheets.</summary>
    public double[] Prices() => [.. _demand.Select(row => Math.Max(0, row.DualValue()))];

    /// <summary>What one more of each offcut would save, in sheets; 1 for the full sheet, which is what it costs.</summary>
    public double[] StockPrices() => [.. _onHand.Select(row => row is null ? 1 : Math.Max(0, -row.DualValue()))];

    /// <summary>How often each pattern is used; unused ones are omitted.</summary>
    public IEnumerable<(Pattern Pattern, double Times)> Use() =>
        _columns.Select(c => (c.Pattern, c.Variable.SolutionValue())).Where(c => c.Item2 > 1e-9);

    public void Dispose() => _solver.Dispose();
}
