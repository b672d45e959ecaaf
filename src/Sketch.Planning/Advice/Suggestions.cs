using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Cutting.Model;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>
/// Searches for changes that save a sheet of a paper that is short: slightly smaller pieces, another paper of the stash, a print that may
/// be turned, fewer cards. Each is planned again before it is proposed.
/// </summary>
internal sealed class Suggestions
{
    private const int MostForPaper = 4;

    // Of the largest pieces and of the designs: each takes a plan of its own.
    private const int MostTries = 8;
    private const int NearestPapers = 3;
    private const int MostExchanges = 2;
    private const int ExchangeRank = 4;
    private const int TurnRank = 5;
    private const int FewerRank = 6;

    private readonly BatchPlan _plan;
    private readonly Trial _trial;
    private readonly LengthFormat _lengths;

    private Suggestions(BatchPlan plan, WorkBudget work)
    {
        (_plan, _trial) = (plan, new(plan.Files.Batch.Kerf, work));
        _lengths = plan.Files.Batch.Units.Format();
    }

    /// <summary>
    /// The best proposals for each paper that is short: first those after which the paper suffices, small changes before large ones.
    /// </summary>
    public static ImmutableArray<Suggestion> For(BatchPlan plan, WorkBudget work)
    {
        // Papers and ideas share the work equally, so that the answer does not depend on which of them is finished first.
        var search = new Suggestions(plan, work);
        var shortages = plan.Papers.Where(p => p.Short > 0).ToList();
        return [.. shortages.SelectMany((paper, i) => search.ForPaper(paper, work.Left / (shortages.Count - i), work))];
    }

    private IEnumerable<Suggestion> ForPaper(PaperPlan paper, long steps, WorkBudget work)
    {
        List<Func<Suggestions, Suggestion?>> tries =
        [
            .. Sizes(paper).Select<Size, Func<Suggestions, Suggestion?>>(size => s => s.Smaller(paper, size)),
            .. Designs(paper).SelectMany(design => Others(paper, design)
                .Select<PaperOrder, Func<Suggestions, Suggestion?>>(other => s => s.Exchange(paper, design, other))),
            s => s.Turned(paper),
            .. Designs(paper).Select<Design, Func<Suggestions, Suggestion?>>(design => s => s.Fewer(paper, design)),
        ];
        var each = steps / tries.Count;
        var budgets = tries.Select(_ => new WorkBudget(each, work.Cancellation)).ToArray();
        var found = new Suggestion?[tries.Count];
        Parallel.For(0, tries.Count, i => found[i] = budgets[i].IsOver ? null : tries[i](new(_plan, budgets[i])));
        work.Spend(budgets.Sum(b => each - b.Left));
        return found.OfType<Suggestion>().OrderByDescending(s => s.IsEnough).ThenBy(s => s.Rank).ThenBy(s => s.After)
            .GroupBy(s => s.Rank).SelectMany(kind => kind.Take(kind.Key == ExchangeRank ? MostExchanges : MostForPaper))
            .OrderByDescending(s => s.IsEnough).ThenBy(s => s.Rank).Take(MostForPaper);
    }

    private static IEnumerable<Size> Sizes(PaperPlan paper) => paper.Order.Pieces.Where(p => p.Path != PiecePath.Base)
        .GroupBy(p => p.Size).OrderByDescending(g => g.Sum(p => p.Count) * g.Key.Width.Millimetres * g.Key.Height.Millimetres)
        .Select(g => g.Key).Take(MostTries);

    private static IEnumerable<Design> Designs(PaperPlan paper) =>
        paper.Order.Pieces.Select(p => p.Design).OfType<Design>().Distinct().Take(MostTries);

    // The smallest step that saves a sheet; a border narrowed by more than a quarter inch would be another design.
    private Suggestion? Smaller(PaperPlan paper, Size size)
    {
        Length[] steps = _lengths.Metric
            ? [Length.Millimetre(1), Length.Millimetre(2), Length.Millimetre(3), Length.Millimetre(5)]
            : [_lengths.Step, Length.Inch(0, 1, 8), Length.Inch(0, 1, 4)];
        for (var i = 0; i < steps.Length; i++)
        {
            var less = new Size(size.Width - steps[i], size.Height - steps[i]);
            if (Length.Min(size.Width, size.Height) < steps[i] * 4)
            {
                return null;
            }

            if (!Trimmed.IsSound(paper.Order.Pieces.Where(p => p.Size == size && p.Path != PiecePath.Base), steps[i]))
            {
                return null;
            }

            var pieces = paper.Order.Pieces.Select(p => p.Size == size && p.Path != PiecePath.Base ? p with { Size = less } : p);
            if (_trial.SheetsUpTo(Trial.With(paper.Order, pieces), paper.Plan.Sheets - 1) is { } sheets)
            {
                var which = string.Join(" and ", paper.Order.Pieces.Where(p => p.Size == size && p.Path != PiecePath.Base).Select(NameOf)
                    .Distinct());
                return Saves(paper, sheets,
                    $"Trim {which} by {_lengths.Text(steps[i])}, from {_lengths.Text(size)} to {_lengths.Text(less)}", i);
            }
        }

        return null;
    }

    private IEnumerable<PaperOrder> Others(PaperPlan paper, Design design)
    {
        var look = paper.Order.Pieces.First(p => p.Design == design).Look;
        return _plan.Papers.Select(p => (p.Order, Free: p.Order.Sheet.OnHand - p.Plan.Sheets ?? int.MaxValue))
            .Concat(_plan.Idle.Select(o => (Order: o, Free: o.Sheet.OnHand ?? int.MaxValue)))
            .Where(o => o.Free > 0 && o.Order.Stock is not null && o.Order.Paper != paper.Order.Paper)
            .OrderBy(o => o.Order.Stock!.Kind != paper.Order.Stock?.Kind)
            .ThenBy(o => look is null
            ? 0 : Math.Min(Difference(o.Order, PaperSide.Front, look.Ground), Difference(o.Order, PaperSide.Back, look.Ground)))
            .Take(NearestPapers).Select(o => o.Order);
    }

    private static double Difference(PaperOrder paper, PaperSide side, Rgb colour) =>
        ColourDifference.Between(paper.Stock!.Side(side).Look.Ground, colour);

    private Suggestion? Exchange(PaperPlan paper, Design design, PaperOrder other)
    {
        var moved = paper.Order.Pieces.Where(p => p.Design == design && p.Path != PiecePath.Base).ToList();
        if (moved.Count == 0 || !moved.TrueForAll(p => Suits(p, design, other))
            || _trial.SheetsUpTo(Trial.With(paper.Order, paper.Order.Pieces.Except(moved)), paper.Plan.Sheets - 1) is not { } sheets
            || _trial.SheetsUpTo(Trial.With(other, other.Pieces.Concat(moved)), other.Sheet.OnHand ?? int.MaxValue) is not { } otherSheets)
        {
            return null;
        }

        var roles = moved.Select(p => p.Role).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var change = roles.Count == 0 || moved.Exists(p => p.Role is null)
            ? $"Cut the pieces of {design.Card.Title} from {other.Paper}"
            : $"Write {string.Join(" and ", roles.Select(r => $"role {r}: {other.Paper}"))} under {design.Card.Title} in line "
                + $"{design.Order.Location.Start.Line}";
        return Saves(paper, sheets, $"{change}; {other.Paper} then takes {Counted.Of(otherSheets, "sheet")}", ExchangeRank);
    }

    /// <summary>
    /// Whether a piece would still serve its purpose: a line is bought and not cut from a sheet, nothing else shines like foil or pearl,
    /// and what lies on its own paper is invisible.
    /// </summary>
    private bool Suits(PieceOrder order, Design design, PaperOrder other)
    {
        var pieces = design.Card.Pieces;
        var at = pieces.IndexOf(pieces.First(p => p.Path == order.Path));
        var beneath = design.Card.GroundOf(pieces[at]);
        return pieces[at].Kind != PieceKind.Line
            && Sheen(order.Look) == Sheen(other.Stock!.Front.Look)
            && pieces.Where(p => p.LiesOn == at).Select(p => p.Paint).Prepend(beneath)
                .All(p => PaperUse.For(p, _plan.Files.Stash).Name != other.Paper);
    }

    private static PaperPattern? Sheen(PaperLook? look) => look?.Pattern is PaperPattern.Foil or PaperPattern.Pearl ? look.Pattern : null;

    private Suggestion? Turned(PaperPlan paper)
    {
        if (paper.Order.Stock is not { Upright: true } stock)
        {
            return null;
        }

        var order = paper.Order with { Stock = stock with { Upright = false } };
        return _trial.SheetsUpTo(order, paper.Plan.Sheets - 1) is { } sheets
            ? Saves(paper, sheets, $"Let the print of {paper.Order.Paper} lie sideways on some pieces", TurnRank) : null;
    }

    // Cards with a recipient are not left out.
    private Suggestion? Fewer(PaperPlan paper, Design design)
    {
        if (!_plan.Files.Batch.CanSpare(1))
        {
            return null;
        }

        var (none, fewest) = (0, design.Order.Count);
        while (fewest - none > 1)
        {
            var less = (none + fewest) / 2;
            (none, fewest) = _trial.Suffice(With(less), paper.Plan.Sheets - 1) ? (none, less) : (less, fewest);
        }

        return fewest < design.Order.Count && _plan.Files.Batch.CanSpare(fewest)
            && _trial.SheetsUpTo(With(fewest), paper.Plan.Sheets - 1) is { } sheets
            ? Saves(paper, sheets, $"Make {fewest} fewer of {design.Card.Title} in line {design.Order.Location.Start.Line}", FewerRank)
            : null;

        PaperOrder With(int less) =>
            Trial.With(paper.Order, paper.Order.Pieces.Select(p => p.Design == design ? p with { Count = p.Count - less } : p));
    }

    private static Suggestion Saves(PaperPlan paper, int sheets, string change, int rank) => new(
        paper.Order.Paper,
        $"{change}: {Counted.Of(sheets, "sheet")} of {paper.Order.Paper} instead of {paper.Plan.Sheets}.",
        paper.Plan.Sheets,
        sheets,
        paper.Order.Sheet.OnHand is not { } onHand || sheets <= onHand,
        rank);

    private static string NameOf(PieceOrder piece) => piece.Design is { } design
        ? $"{piece.Name} of {design.Card.Title}" : $"the pieces of line {piece.Location.Start.Line}";
}
