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
    private const double ShareOfTries = 0.8;
    private const int NearestPapers = 3;
    private const int MostExchanges = 2;
    private const int ExchangeRank = 4;
    private const int TurnRank = 5;
    private const int FewerRank = 6;
    private const int TogetherRank = 7;

    private readonly BatchPlan _plan;
    private readonly Trial _trial;
    private readonly LengthFormat _lengths;

    private Suggestions(BatchPlan plan, WorkBudget work)
    {
        (_plan, _trial) = (plan, new(plan.Files.Batch, work));
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
        return [.. shortages.SelectMany((paper, i) => search.ForPaper(paper, work.Part(1.0 / (shortages.Count - i))))];
    }

    /// <summary>The same for one paper, whether it is short or not.</summary>
    public static IEnumerable<Suggestion> ForPaper(BatchPlan plan, PaperPlan paper, WorkBudget work) =>
        new Suggestions(plan, work).ForPaper(paper, work);

    private List<Suggestion> ForPaper(PaperPlan paper, WorkBudget work)
    {
        List<Func<Suggestions, Change?>> tries =
        [
            .. Sizes(paper).Select<Size, Func<Suggestions, Change?>>(size => s => s.Smaller(paper, size)),
            .. Designs(paper).SelectMany(design => Others(paper, design)
                .Select<PaperOrder, Func<Suggestions, Change?>>(other => s => s.Exchange(paper, design, other))),
            s => s.Turned(paper),
            .. Designs(paper).Select<Design, Func<Suggestions, Change?>>(design => s => s.Fewer(paper, design)),
        ];
        var found = new Change?[tries.Count];
        work.Part(ShareOfTries).Share([.. Enumerable.Range(0, tries.Count)], (i, own) =>
            found[i] = own.IsOver ? null : tries[i](new(_plan, own)));
        var best = found.OfType<Change>().Select(c => c.Suggestion)
            .OrderByDescending(s => s.IsEnough).ThenBy(s => s.Rank).ThenBy(s => s.After)
            .GroupBy(s => s.Rank).SelectMany(kind => kind.Take(kind.Key == ExchangeRank ? MostExchanges : MostForPaper))
            .OrderByDescending(s => s.IsEnough).ThenBy(s => s.Rank).Take(MostForPaper).ToList();
        if (best.Exists(s => s.IsEnough))
        {
            return best;
        }

        var together = new Suggestions(_plan, work).Together(paper, found.OfType<Change>());
        return together is null ? best : [together, .. best.Take(MostForPaper - 1)];
    }

    private static IEnumerable<Size> Sizes(PaperPlan paper) => paper.Order.Pieces.Where(p => p.Path != PiecePath.Base)
        .GroupBy(p => p.Size).OrderByDescending(g => g.Sum(p => p.Count) * g.Key.Width.Millimetres * g.Key.Height.Millimetres)
        .Select(g => g.Key).Take(MostTries);

    private static IEnumerable<Design> Designs(PaperPlan paper) =>
        paper.Order.Pieces.Select(p => p.Design).OfType<Design>().Distinct().Take(MostTries);

    // The smallest step that is enough, or else that saves a sheet; more than a quarter inch would be another design.
    private Change? Smaller(PaperPlan paper, Size size)
    {
        Length[] steps = _lengths.Metric
            ? [Length.Millimetre(1), Length.Millimetre(2), Length.Millimetre(4), Length.Millimetre(6)]
            : [_lengths.Step, Length.Inch(0, 1, 8), Length.Inch(0, 1, 4)];
        Change? best = null;
        for (var i = 0; i < steps.Length && best is not { Suggestion.IsEnough: true }; i++)
        {
            if (Length.Min(size.Width, size.Height) >= steps[i] * 4
                && Trim.Of(_plan.Files, paper.Order, size, steps[i], _lengths) is { } trim
                && SheetsWith(paper, trim.Made, (best?.Suggestion.After ?? paper.Plan.Sheets) - 1) is { } sheets)
            {
                best = new(Saves(paper, sheets, trim.Text, i), trim.Made);
            }
        }

        return best;
    }

    // The fewest sheets of a paper after a change of the batch, if they are at most a number.
    private int? SheetsWith(PaperPlan paper, Func<BatchFiles, BatchFiles?> change, int most) =>
        change(_plan.Files) is not { } changed ? null
        : OrderBook.Of(changed, new()).Papers.FirstOrDefault(p => p.Paper == paper.Order.Paper) is not { Pieces.IsEmpty: false } order ? 0
        : _trial.SheetsUpTo(order, most);

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

    private Change? Exchange(PaperPlan paper, Design design, PaperOrder other)
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
        return new(
            Saves(paper, sheets, $"{change}; {other.Paper} then takes {Counted.Of(otherSheets, "sheet")}", ExchangeRank), Made: null);
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

    private Change? Turned(PaperPlan paper)
    {
        if (paper.Order.Stock is not { Upright: true } stock)
        {
            return null;
        }

        var order = paper.Order with { Stock = stock with { Upright = false } };
        var (file, line) = (Path.GetFileName(stock.Location.Source.Path), stock.Location.Start.Line);
        return _trial.SheetsUpTo(order, paper.Plan.Sheets - 1) is { } sheets
            ? new(Saves(paper, sheets, $"Let the print of {paper.Order.Paper} lie sideways on some pieces: remove upright from line {line} "
                + $"of {file}", TurnRank), Made: null) : null;
    }

    // Cards with a recipient are not left out.
    private Change? Fewer(PaperPlan paper, Design design)
    {
        if (!_plan.Files.Batch.CanSpare(1))
        {
            return null;
        }

        // All that is missing if that can be spared, else one sheet.
        var targets = new[] { paper.Order.Sheet.OnHand ?? int.MaxValue, paper.Plan.Sheets - 1 };
        foreach (var target in targets.Where(t => t < paper.Plan.Sheets).Distinct())
        {
            var (none, fewest) = (0, design.Order.Count);
            while (fewest - none > 1)
            {
                var less = (none + fewest) / 2;
                (none, fewest) = _trial.Suffice(With(less), target) ? (none, less) : (less, fewest);
            }

            if (fewest < design.Order.Count && _plan.Files.Batch.CanSpare(fewest) && _trial.SheetsUpTo(With(fewest), target) is { } sheets)
            {
                return new(Saves(paper, sheets, TextOf(fewest), FewerRank), files => WithFewer(files, design, fewest));
            }
        }

        return null;

        PaperOrder With(int less) =>
            Trial.With(paper.Order, paper.Order.Pieces.Select(p => p.Design == design ? p with { Count = p.Count - less } : p));

        // What is left to cut, or a part of a maker, is not the number in the file.
        string TextOf(int less) => $"Make {less} fewer of {design.Card.Title} in line {design.Order.Location.Start.Line}"
            + (design is { Unfinished: null, Order: { Makers: 1, OnHand: 0 } } ? $" (write make {design.Order.Count - less} of)" : "");
    }

    private static BatchFiles? WithFewer(BatchFiles files, Design design, int less)
    {
        var at = TypedChange.IndexOf(files, design);
        return at < 0 || files.Designs[at] is not { } now || now.Order.Count <= less ? null
            : files with { Designs = files.Designs.SetItem(at, now with { Order = now.Order with { Count = now.Order.Count - less } }) };
    }

    // The changes one after the other, as long as each saves a sheet; worth naming only if it takes more than one.
    private Suggestion? Together(PaperPlan paper, IEnumerable<Change> changes)
    {
        var (files, sheets, texts) = (_plan.Files, paper.Plan.Sheets, new List<string>());
        foreach (var change in changes.OrderBy(c => c.Suggestion.Rank).ThenBy(c => c.Suggestion.After))
        {
            if (sheets > paper.Order.Sheet.OnHand && change.Made?.Invoke(files) is { } changed
                && SheetsWith(paper, _ => changed, sheets - 1) is { } fewer)
            {
                (files, sheets) = (changed, fewer);
                texts.Add(texts.Count == 0 ? change.Suggestion.Change
                    : char.ToLowerInvariant(change.Suggestion.Change[0]) + change.Suggestion.Change[1..]);
            }
        }

        return texts.Count < 2 ? null : Saves(paper, sheets, string.Join(", and ", texts), TogetherRank);
    }

    private static Suggestion Saves(PaperPlan paper, int sheets, string change, int rank) => new(
        paper.Order.Paper,
        change,
        paper.Plan.Sheets,
        sheets,
        paper.Order.Sheet.OnHand is not { } onHand || sheets <= onHand,
        rank);

    /// <summary>A suggestion, and how it changes the batch; null where another suggestion cannot be added to it.</summary>
    private sealed record Change(Suggestion Suggestion, Func<BatchFiles, BatchFiles?>? Made);
}
