using System.Collections.Immutable;
using System.Globalization;
using Sketch.Reports;

namespace Sketch.Planning;

/// <summary>The first page of a plan: how many cards, which sheets, what else, and what is missing.</summary>
/// <param name="Title">The batch's title.</param>
/// <param name="Sections">The parts of the page.</param>
public sealed record PlanSummary(string Title, ImmutableArray<ReportSection> Sections)
{
    /// <summary>Works the summary out.</summary>
    public static PlanSummary Of(BatchPlan plan, LengthStyle lengths)
    {
        var sections = ImmutableArray.CreateBuilder<ReportSection>();
        sections.Add(Cards(plan));
        sections.Add(Papers(plan, lengths));
        if (!plan.Supplies.IsEmpty)
        {
            sections.Add(Supplies(plan, lengths));
        }

        if (!plan.IsEnough || !plan.Advice.Makeable.IsEmpty)
        {
            sections.Add(Missing(plan));
        }

        if (CardCost.Of(plan) is { Costs.IsEmpty: false } costs)
        {
            sections.Add(new("Cost of a card", costs.Unpriced.IsEmpty ? [] : [$"Without what has no price: {string.Join(", ", costs.Unpriced.Distinct())}."],
                new(["Card", "Cost"], [.. costs.Costs.Select(c => ImmutableArray.Create(c.Design.Card.Title, c.Amount.ToString("0.00", CultureInfo.InvariantCulture)))])));
        }

        return new(plan.Files.Batch.Title, sections.ToImmutable());
    }

    private static ReportSection Missing(BatchPlan plan)
    {
        var sentences = ImmutableArray.CreateBuilder<string>();
        sentences.AddRange(plan.Papers.Where(p => p.Short > 0).Select(p => $"To buy: {(p.Short == 1 ? "1 sheet" : $"{Number(p.Short)} sheets")} of {p.Order.Paper}."));
        sentences.AddRange(plan.Advice.Suggestions.Select(s => s.Text + (s.IsEnough ? " Then it is enough." : "")));
        var makeable = plan.Advice.Makeable;
        if (!makeable.IsEmpty)
        {
            sentences.Add("From what is there one can make:");
        }

        return new("What is missing, and what would help", sentences.ToImmutable(), makeable.IsEmpty ? null : new(["Card", "Of", "Can be made"],
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

        if (batch is { Recipients: { } recipients, Needed: { } needed })
        {
            var shared = batch.Makers > 1 ? $", shared by {batch.Makers} makers" : "";
            var spare = batch.Spare > 0 ? $", with {batch.Spare} spare" : "";
            sentences.Add($"{recipients} cards for {string.Join(", ", batch.For.Select(f => $"{f.Whom} ({f.Cards})"))}{shared}{spare}: {needed} to make{(batch.Makers > 1 ? " each" : "")}.");
        }

        sentences.Add($"The designs make {plan.Cards}.");
        return new("Cards", sentences.ToImmutable(), batch.Makes.IsEmpty ? null : new(["Card", "How many", "Message"],
            [.. batch.Makes.Select(m => ImmutableArray.Create(
                plan.Files.Designs.FirstOrDefault(d => d.Order == m)?.Card.Title ?? m.Card.Path, Number(m.Count), string.Join(" / ", m.Messages)))]));
    }

    private static ReportSection Papers(BatchPlan plan, LengthStyle lengths)
    {
        var offcuts = plan.Papers.SelectMany(p => p.Plan.Layouts).Where(l => l.IsOffcut).Sum(l => l.Times);
        var cut = plan.Papers.Select(p => ImmutableArray.Create(
            p.Order.Paper, lengths.Text(p.Order.Sheet.Size), Number(p.Plan.Sheets), p.Order.Sheet.OnHand is { } onHand ? Number(onHand) : "any", p.Short == 0 ? "" : Number(p.Short),
            p.Plan.IsProved ? "yes" : $"at least {p.Plan.LowerBound}"));
        return new(
            "Paper",
            [plan.IsEnough ? "The paper is enough." : "There is not enough paper.", .. offcuts > 0 ? [$"{offcuts} offcut{(offcuts == 1 ? " is" : "s are")} used first."] : ImmutableArray<string>.Empty],
            new(["Paper", "Sheet", "Sheets", "On hand", "Missing", "Proved fewest"], [.. cut]));
    }

    private static ReportSection Supplies(BatchPlan plan, LengthStyle lengths) => new(
        "Besides paper",
        plan.Supplies.Any(s => s.IsEstimate) ? ["Foam and adhesive are estimates."] : [],
        new(["What", "Needed", "On hand", "Missing"], [.. plan.Supplies.Select(s => ImmutableArray.Create(
            SupplyText.Named(s, lengths), SupplyText.Amount(s, s.Needed, lengths), s.OnHand is { } onHand ? SupplyText.Amount(s, onHand, lengths) : "",
            s.Short == 0 ? "" : SupplyText.Amount(s, s.Short, lengths)))]));

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
