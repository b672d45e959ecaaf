using System.Collections.Immutable;
using System.Globalization;
using Sketch.Kinds;
using Sketch.Planning.Advice;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Supplies;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Summary;

/// <summary>The beginning of a plan: what is missing, how many cards, which sheets, and the supplies.</summary>
/// <param name="Title">The batch's title.</param>
/// <param name="Sections">The parts of the page.</param>
public sealed record PlanSummary(string Title, ImmutableArray<ReportSection> Sections)
{
    private const int SecondsOfSetting = 30;
    private const int SecondsOfCut = 15;

    /// <summary>Computes the summary.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="work">The work of all its papers.</param>
    /// <param name="lengths">How lengths are written.</param>
    public static PlanSummary Of(BatchPlan plan, ImmutableArray<PaperWork> work, LengthFormat lengths)
    {
        var sections = ImmutableArray.CreateBuilder<ReportSection>();
        if (!plan.Files.LeftOut.IsEmpty)
        {
            sections.Add(LeftOut(plan));
        }

        if (!plan.IsEnough || !plan.Advice.Makeable.IsEmpty)
        {
            sections.Add(Missing(plan));
        }

        sections.Add(Cards(plan));
        if (!plan.Files.Batch.For.IsEmpty)
        {
            sections.Add(RecipientTable.Of(plan));
        }

        if (RecipientTable.OfMakers(plan.Files) is { } makers)
        {
            sections.Add(makers);
        }

        if (RuleSection.Of(plan.Files) is { } rules)
        {
            sections.Add(rules);
        }

        if (PostSection.Of(plan.Files, lengths) is { } post)
        {
            sections.Add(post);
        }

        sections.Add(Papers(plan, work, lengths));
        if (FromLeftovers(plan) is { } leftovers)
        {
            sections.Add(leftovers);
        }

        if (Freed(plan, lengths) is { } freed)
        {
            sections.Add(freed);
        }

        if (!plan.Supplies.IsEmpty)
        {
            sections.Add(Supplies(plan, lengths));
        }

        sections.Add(Care(plan));
        return new(plan.Files.Batch.Title, sections.ToImmutable());
    }

    private static ReportSection? FromLeftovers(BatchPlan plan)
    {
        var rows = plan.FromLeftovers.Select(f => ImmutableArray.Create(
            f.Piece.Name, f.Piece.Design?.Card.Title ?? "", f.Piece.OffcutName,
            f.FreedBy is null ? f.Paper : $"{f.Paper}, freed by {SheetWork.NameOf(f.FreedBy)}", Number(f.Count))).ToList();
        return rows.Count == 0 ? null
            : new("From leftovers", [], ReportTable.Of(["Piece", "Card", "May be", "Cut from", "How many"], rows));
    }

    private static ReportSection? Freed(BatchPlan plan, LengthFormat lengths)
    {
        var rows = plan.Papers
            .SelectMany(p => p.Freed.Select(f => (Name: SheetWork.NameOf(f.From), p.Order.Paper, f.Size, f.Count, Used: p.Used(f))))
            .GroupBy(f => (f.Name, f.Paper, f.Size))
            .Select(g => ImmutableArray.Create(g.Key.Name, g.Key.Paper, lengths.Text(g.Key.Size), Number(g.Sum(f => f.Count)),
                g.Sum(f => f.Used) is > 0 and var used ? Number(used) : ""))
            .ToList();
        return rows.Count == 0 ? null
            : new("Paper freed by hollow layers",
                ["Cut these out of windows, frames and hidden middles before you glue; sketch templates --hollow shows where."],
                ReportTable.Of(["Out of", "Paper", "Rectangle", "How many", "Used here"], rows));
    }

    private static ReportSection Care(BatchPlan plan) => new(
        "Take care",
        plan.Files.Designs.Any(d => d.Card.Pieces.Any(p => p.Kind.Traits.IsSmallPart))
            ? [Cautions.Knives, Cautions.Guillotines, Cautions.Adhesives, Cautions.SmallParts]
            : [Cautions.Knives, Cautions.Guillotines, Cautions.Adhesives]);

    private static ReportSection LeftOut(BatchPlan plan)
    {
        var cards = plan.Files.LeftOut.Select(o => o.Count == 0 ? o.Card.Path : $"{o.Card.Path} ({Counted.Of(o.Count, "card")})").ToList();
        return new("Not in this plan",
            [$"Left out because {(cards.Count == 1 ? "the card or its line has" : "the cards or their lines have")} errors: "
                + $"{string.Join(", ", cards)}. Fix {(cards.Count == 1 ? "it" : "them")} and plan again."]);
    }

    private static ReportSection Missing(BatchPlan plan)
    {
        var sentences = ImmutableArray.CreateBuilder<string>();
        sentences.AddRange(plan.Papers.Where(p => p.Short > 0).Select(p => $"To buy: {Counted.Of(p.Short, "sheet")} of {p.Order.Paper}."));
        sentences.AddRange(plan.Advice.Suggestions.Select(s => s.Text + (s.IsEnough ? $" Then there is enough {s.Paper}." : "")));
        var makeable = plan.Advice.Makeable;
        if (!makeable.IsEmpty)
        {
            sentences.Add("The stash is enough for:");
        }

        return new("Shortages and remedies", sentences.ToImmutable(), makeable.IsEmpty ? null : new(["Card", "Of", "Can be made"],
            [.. makeable.Select(m => ImmutableArray.Create(m.Design.Card.Title, Number(m.Design.Order.Count), Number(m.Count)))]));
    }

    /// <summary>The summary as lines of plain text.</summary>
    public IEnumerable<string> Lines() => Sections.SelectMany(s => s.Lines()).Prepend("").Prepend(Title);

    private static ReportSection Cards(BatchPlan plan)
    {
        var batch = plan.Files.Batch;
        var sentences = ImmutableArray.CreateBuilder<string>();
        if (batch.Date is { } date)
        {
            sentences.Add($"To be ready: {date}.");
        }

        if (plan.Files.Count is { } count)
        {
            sentences.Add(LeftToMake.Sentence(plan.Files, count));
        }
        else if (batch.Needed is { } all && !batch.MakerNames.IsEmpty)
        {
            sentences.Add($"{Counted.Of(batch.Makers, "maker")}, {Counted.Of(all, "card")} needed in all.");
        }
        else if (batch.Needed is { } needed)
        {
            var shares = batch.Shares;
            var spare = batch.Spare > 0 ? $", with {batch.Spare} spare" : "";
            var whose = shares.All(s => s.Makers == 1) ? "" : shares.Length == 1 ? " each" : " for this maker";
            sentences.Add($"{string.Join(" and ", shares)}{spare}: {needed} to make{whose}.");
        }

        var (costs, unpriced) = CardCost.Of(plan);
        var make = plan.Files.Count is null ? $"The designs make {plan.Cards}.{OnHand(batch)}" : $"{plan.Cards} are cut by this plan.";
        sentences.Add(make + (costs.IsEmpty || unpriced.IsEmpty
            ? ""
            : $" Costs are without what has no price: {string.Join(", ", unpriced.Distinct())}."));
        return new("Cards", sentences.ToImmutable(), plan.Files.Designs.IsEmpty
            ? null : ReportTable.Of(["Card", "How many", "Cost of one", "Message"], plan.Files.Designs.Select(Row)));

        ImmutableArray<string> Row(Design design)
        {
            var cost = costs.FirstOrDefault(c => c.Design == design);
            return [design.Card.Title, Number(design.Order.Count), cost?.Amount.ToString("0.00", CultureInfo.InvariantCulture)
                ?? "", design.Message?.ToString() ?? ""];
        }
    }

    private static ReportSection Papers(BatchPlan plan, ImmutableArray<PaperWork> work, LengthFormat lengths)
    {
        if (work.IsEmpty)
        {
            return new("Paper", ["No paper is left to cut."]);
        }

        var offcuts = plan.Papers.SelectMany(p => p.Plan.Layouts).Where(l => l is { IsOffcut: true, FreedBy: null }).Sum(l => l.Times);
        var (settings, cuts) = (work.Sum(w => w.Settings), work.Sum(w => w.Cuts));
        var rows = work.Select(w => ImmutableArray.Create(
            w.Paper.Order.Paper, SheetName.Of(w.Paper.Order.Sheet.Size, lengths), Number(w.Paper.Plan.Sheets),
            w.Paper.Order.Sheet.OnHand is { } onHand ? Number(onHand) : "any", w.Paper.Short == 0 ? "" : Number(w.Paper.Short),
            w.Paper.Plan.IsProved ? "yes" : $"at least {w.Paper.Plan.LowerBound}", Number(w.Settings), Number(w.Cuts)));
        return new(
            "Paper",
            [plan.IsEnough ? $"The paper is enough{For(plan.Files)}." : $"There is not enough paper{For(plan.Files)}.", .. offcuts > 0
                ? [$"{Counted.Of(offcuts, "offcut")} {(offcuts == 1 ? "is" : "are")} used first."] : ImmutableArray<string>.Empty,
                $"In all: {Counted.Of(settings, "setting")} of the stop and {Counted.Of(cuts, "cut")}, "
                    + "with sheets cut alike in one stack.",
                TrimmerTime(settings, cuts),
                .. work.Select(Easier).OfType<string>()],
            ReportTable.Of(["Paper", "Sheet", "Sheets", "On hand", "Missing", "Proved fewest", "Settings", "Cuts"], rows));
    }

    // Common practice, no source.
    private static string TrimmerTime(int settings, int cuts)
    {
        var minutes = Math.Max(1, (settings * SecondsOfSetting + cuts * SecondsOfCut + 30) / 60);
        var time = minutes < 60 ? $"{minutes} min" : $"{minutes / 60} h {minutes % 60} min";
        return $"Allow about {time} at the trimmer: half a minute for each setting and a quarter for each cut.";
    }

    // What a sheet more is spent for, in both numbers.
    private static string? Easier(PaperWork work) => work.Paper.Fewest is { } fewest
        ? $"Easier to cut: {work.Paper.Order.Paper} takes {Counted.Of(work.Paper.Plan.Sheets, "sheet")} instead of {fewest.Sheets}, "
            + $"and {Counted.Of(work.Settings, "setting")} instead of {PaperWork.SettingsOf(fewest)}."
        : null;

    private static string OnHand(Batches.Batch batch) =>
        batch.Available - batch.Makes.Sum(m => (long)m.Count) is > 0 and var cards
            ? $" {cards} {(cards == 1 ? "is" : "are")} on hand." : "";

    private static string For(BatchFiles files) =>
        files.Count is { Spoilt: > 0 and var spoilt }
            ? $" for what is left to cut, with {Counted.Of(spoilt, "card")} to cut again for {(spoilt == 1 ? "one" : "those")} that "
                + $"{(spoilt == 1 ? "was" : "were")} spoilt"
        : files.Count is not null ? " for what is left to cut"
        : files.LeftOut.IsEmpty ? "" : " for what is in this plan";

    private static ReportSection Supplies(BatchPlan plan, LengthFormat lengths) => new(
        "Besides paper",
        [
            .. plan.Supplies.SelectMany(s => SupplyText.Cuts(s, lengths)),
            .. plan.Supplies.Any(s => s.IsEstimate) ? ["Foam and adhesive are estimates."] : ImmutableArray<string>.Empty,
            .. plan.Supplies.Where(s => s.Kind == SupplyKind.Foam).Select(s => SupplyText.Strips(s, lengths)),
        ],
        ReportTable.Of(["What", "Needed", "On hand", "Missing"], plan.Supplies.Select(s => ImmutableArray.Create(
            SupplyText.Named(s, lengths), SupplyText.Amount(s, s.Needed, lengths), s.OnHand is { } onHand
                ? SupplyText.Amount(s, onHand, lengths) : "",
            s.Short == 0 ? "" : SupplyText.Amount(s, s.Short, lengths)))));

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
