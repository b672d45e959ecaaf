using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Sketch.Batches;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Advice;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Summary;
using Sketch.Planning.Supplies;
using Sketch.Reports;
using Sketch.Stashes;
using Sketch.Units;

namespace Sketch.Planning.Reports;

/// <summary>A plan as written in JSON: the members of this record and of nested records, in this order.</summary>
internal sealed record PlanRecord
{
    public required string? Batch { get; init; }

    public required int? Recipients { get; init; }

    public required IEnumerable<RecipientRecord> RecipientList { get; init; }

    public required IEnumerable<MakerRecord> Makers { get; init; }

    public required int? Needed { get; init; }

    public required long Cards { get; init; }

    public required IEnumerable<PaperRecord> Papers { get; init; }

    public required IEnumerable<SupplyRecord> Supplies { get; init; }

    public required IEnumerable<LeftoverRecord> FromLeftovers { get; init; }

    public required IEnumerable<FreedRecord> Freed { get; init; }

    public required IEnumerable<MakeableRecord> Makeable { get; init; }

    public required IEnumerable<SuggestionRecord> Suggestions { get; init; }

    public required IEnumerable<CostRecord> Costs { get; init; }

    public required IEnumerable<PostRecord> Post { get; init; }

    public required Dictionary<string, IEnumerable<AssemblyRecord>> Steps { get; init; }

    public required IEnumerable<FindingRecord> Findings { get; init; }

    public static PlanRecord Of(Batch? batch, BatchPlan? plan, ImmutableArray<Finding> findings) => new()
    {
        Batch = batch?.Title,
        Recipients = batch?.Recipients,
        RecipientList = batch is null ? [] : batch.For.Select(f => RecipientRecord.Of(batch, plan, f)),
        Makers = batch is null || plan is null ? [] : NamedMakers.Each(batch).Select(m => new MakerRecord(m.Name, m.Own.Needed,
            RecipientTable.DesignsOf(plan.Files, m.Own).Select(d => new MakerDesignRecord(d.Title, d.Cards)),
            m.Own.For.Select(f => f.Whom))),
        Needed = batch?.Needed,
        Cards = plan?.Cards ?? 0,
        Papers = plan is null ? [] : plan.Papers.Select(p => PaperRecord.Of(plan, p)),
        Supplies = plan is null ? [] : plan.Supplies.Select(s => SupplyRecord.Of(s, plan.Files.Batch.Units != UnitSystem.Inches)),
        FromLeftovers = plan is null ? [] : plan.FromLeftovers.Select(f => new LeftoverRecord(
            f.Piece.Name, f.Piece.Design?.Card.Title, f.Piece.Path?.ToString(), f.Piece.OffcutOf, f.Paper, f.Count)
        {
            FreedBy = f.FreedBy is { } by ? FreedByRecord.Of(by) : null,
        }),
        Freed = plan is null ? [] : plan.Papers.SelectMany(p => p.Freed.Select(f => new FreedRecord(
            p.Order.Paper, FreedByRecord.Of(f.From), f.Size.Width, f.Size.Height, f.Count, p.Used(f)))),
        Makeable = plan is null ? [] : plan.Advice.Makeable.Select(MakeableRecord.Of),
        Suggestions = plan is null ? [] : plan.Advice.Suggestions.Select(SuggestionRecord.Of),
        Costs = plan is null ? [] : CardCost.Of(plan).Costs.Select(c => new CostRecord(c.Design.Card.Title, Math.Round(c.Amount, 4))),
        Post = plan is null ? [] : PostRecord.Of(plan.Files),
        Steps = plan is null ? [] : AssemblyRecord.Of(plan.Files.Designs),
        Findings = findings.Select(f => FindingRecord.Of(f, f.Location.Source.Path)),
    };
}

/// <summary>Who gets cards: how many, from how many makers, and the titles of the designs meant for them.</summary>
internal sealed record RecipientRecord
{
    public required string Name { get; init; }

    public required int Cards { get; init; }

    public required int Makers { get; init; }

    public required IEnumerable<string> Design { get; init; }

    public required string? Date { get; init; }

    public required string? Delivery { get; init; }

    public static RecipientRecord Of(Batch batch, BatchPlan? plan, Recipients recipient) => new()
    {
        Name = recipient.Whom,
        Cards = recipient.Cards,
        Makers = batch.MakersOf(recipient),
        Design = plan is null ? [] : RecipientTable.TitlesFor(plan.Files, recipient),
        Date = recipient.Date,
        Delivery = recipient.Delivery switch
        {
            Batches.Delivery.ByHand => "by hand",
            Batches.Delivery.ByPost => "by post",
            _ => null,
        },
    };
}

/// <summary>A named maker: the cards that the maker needs, the designs that the maker makes, and for whom.</summary>
internal sealed record MakerRecord(string Name, int? Needed, IEnumerable<MakerDesignRecord> Designs, IEnumerable<string> For);

/// <summary>How many cards of a title a maker makes.</summary>
internal sealed record MakerDesignRecord(string Card, int Cards);

/// <summary>The sheets of one paper.</summary>
internal sealed record PaperRecord
{
    public required string Paper { get; init; }

    public required int Sheets { get; init; }

    public required int LowerBound { get; init; }

    public required bool Proved { get; init; }

    public required int? OnHand { get; init; }

    public required int Short { get; init; }

    public required int Settings { get; init; }

    public required int Cuts { get; init; }

    public required FewestRecord? Fewest { get; init; }

    public required IEnumerable<LayoutRecord> Layouts { get; init; }

    public static PaperRecord Of(BatchPlan plan, PaperPlan paper)
    {
        var work = PaperWork.Of(plan, paper);
        return Of(plan, paper, work.Settings, work.Cuts);
    }

    private static PaperRecord Of(BatchPlan plan, PaperPlan paper, int settings, int cuts) => new()
    {
        Paper = paper.Order.Paper,
        Sheets = paper.Plan.Sheets,
        LowerBound = paper.Plan.LowerBound,
        Proved = paper.Plan.IsProved,
        OnHand = paper.Order.Sheet.OnHand,
        Short = paper.Short,
        Settings = settings,
        Cuts = cuts,
        Fewest = paper.Fewest is { } fewest ? new(fewest.Sheets, PaperWork.SettingsOf(fewest)) : null,
        // Created while writing, so that those of a large plan are not all held at once.
        Layouts = paper.Plan.Layouts.Select(l => LayoutRecord.Of(plan, l)),
    };
}

/// <summary>The plan with the fewest sheets of a paper, where an easier one takes a sheet more.</summary>
internal sealed record FewestRecord(int Sheets, int Settings);

/// <summary>One way of cutting a sheet.</summary>
internal sealed record LayoutRecord
{
    public required SizeRecord Stock { get; init; }

    public required bool Offcut { get; init; }

    public required FreedByRecord? FreedBy { get; init; }

    public required int Times { get; init; }

    public required IEnumerable<PlacedRecord> Pieces { get; init; }

    public required IEnumerable<StepRecord> Steps { get; init; }

    public required IEnumerable<CutRecord> Cuts { get; init; }

    public required IEnumerable<RectRecord> Leftovers { get; init; }

    public static LayoutRecord Of(BatchPlan plan, SheetLayout layout) => Of(plan, layout, CutSequence.Of(layout));

    private static LayoutRecord Of(BatchPlan plan, SheetLayout layout, ImmutableArray<CutStep> steps) => new()
    {
        Stock = new(layout.Stock.Width, layout.Stock.Height),
        Offcut = layout.IsOffcut,
        FreedBy = layout.FreedBy is { } by ? FreedByRecord.Of(plan.Pieces[by]) : null,
        Times = layout.Times,
        Pieces = layout.Pieces.Select(p => PlacedRecord.Of(plan.Pieces[p.Id], p)),
        Steps = steps.SelectMany(s => s.Runs).Select(StepRecord.Of),
        Cuts = steps.SelectMany(s => s.Cuts).Select(CutRecord.Of),
        Leftovers = layout.Leftovers.Select(l => new RectRecord(l.Left, l.Top, l.Width, l.Height)),
    };
}

/// <summary>A piece on a sheet; members that a loose piece does not have are null.</summary>
internal sealed record PlacedRecord
{
    public required string Name { get; init; }

    public required string? Card { get; init; }

    public required string? Path { get; init; }

    public required string File { get; init; }

    public required int Line { get; init; }

    public required string? Side { get; init; }

    public required Length Left { get; init; }

    public required Length Top { get; init; }

    public required Length Width { get; init; }

    public required Length Height { get; init; }

    public required bool Turned { get; init; }

    public required int Parts { get; init; }

    public required bool Blank { get; init; }

    public static PlacedRecord Of(PieceOrder order, PlacedPiece piece) => new()
    {
        Name = order.Name,
        Card = order.Design?.Card.Title,
        Path = order.Path?.ToString(),
        File = order.Location.Source.Path,
        Line = order.Location.Start.Line,
        Side = order.Side switch { PaperSide.Front => "front", PaperSide.Back => "back", _ => null },
        Left = piece.Place.Left,
        Top = piece.Place.Top,
        Width = piece.Place.Width,
        Height = piece.Place.Height,
        Turned = piece.Turned,
        Parts = order.Parts,
        Blank = order.IsBlank,
    };
}

/// <summary>What is needed besides paper. Amounts are lengths in the batch's unit, strips of one length, or pieces.</summary>
internal sealed record SupplyRecord
{
    public required string Name { get; init; }

    public required string Kind { get; init; }

    public required Length? Measure { get; init; }

    public required string Unit { get; init; }

    public required decimal Needed { get; init; }

    public required decimal? OnHand { get; init; }

    public required decimal Short { get; init; }

    public required bool Estimate { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public required SizeRecord? Size { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public required StripPlanRecord? Cutting { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public required Length? Strips { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public required double? AreaInSquareMillimetres { get; init; }

    public static SupplyRecord Of(SupplyNeed need, bool isMetric) => new()
    {
        Name = need.Name,
        Kind = need.Kind.Traits.Word,
        Measure = need.Measure,
        Size = need is { Size: { } size, Kind: not SupplyKind.Envelope } ? new(size.Width, size.Height) : null,
        Unit = need.Cutting is { Noun: var noun } ? noun + "s" : !need.ByLength ? "pieces" : isMetric ? "mm" : "in",
        Needed = Amount(need, need.Needed, isMetric),
        OnHand = need.OnHand is { } known ? Amount(need, known, isMetric) : null,
        Short = Amount(need, need.Short, isMetric),
        Estimate = need.IsEstimate,
        Cutting = need.Cutting is { } cutting ? StripPlanRecord.Of(cutting) : null,
        Strips = need.Kind == SupplyKind.Foam ? need.Strips : null,
        AreaInSquareMillimetres = need.Kind == SupplyKind.Foam ? Math.Round(need.StripArea, 2) : null,
    };

    private static decimal Amount(SupplyNeed need, long amount, bool isMetric) => need.ByLength && need.Cutting is null
        ? Math.Round((decimal)amount / (isMetric ? Length.NanometresPerMillimetre : Length.NanometresPerInch), 6) : amount;
}

/// <summary>Which lengths are cut from which strip.</summary>
internal sealed record StripPlanRecord(Length Strip, int LowerBound, bool Proved, IEnumerable<StripLayoutRecord> Layouts)
{
    public static StripPlanRecord Of(StripPlan plan) => new(
        plan.Strip, plan.Plan.LowerBound, plan.Plan.IsProved, plan.Plan.Layouts.Select(l => new StripLayoutRecord(
            l.Stock.Width, l.Times, plan.Cut(l).Select(c => new StripCutRecord(c.Length, c.Count)), plan.Left(l))));
}

/// <summary>One way of cutting a strip.</summary>
internal sealed record StripLayoutRecord(Length Strip, int Times, IEnumerable<StripCutRecord> Lengths, Length Left);

/// <summary>Equal lengths cut from one strip.</summary>
internal sealed record StripCutRecord(Length Length, int Count);

/// <summary>Pieces of any offcut that come from the leftovers of one paper; the kind is null where any will do.</summary>
internal sealed record LeftoverRecord(string Name, string? Card, string? Path, string? Of, string Paper, int Count)
{
    public required FreedByRecord? FreedBy { get; init; }
}

/// <summary>The piece that frees paper when it is cut hollow.</summary>
internal sealed record FreedByRecord(string? Card, string? Path)
{
    public static FreedByRecord Of(PieceOrder piece) => new(piece.Design?.Card.Title, piece.Path?.ToString());
}

/// <summary>Equal rectangles of paper that pieces free, and how many of them the plan cuts up.</summary>
internal sealed record FreedRecord(string Paper, FreedByRecord By, Length Width, Length Height, int Count, int Used);

/// <summary>How many of a card can be made from the stash.</summary>
internal sealed record MakeableRecord
{
    public required string Card { get; init; }

    public required int Line { get; init; }

    public required int Count { get; init; }

    public static MakeableRecord Of(MakeableCards cards) => new()
    {
        Card = cards.Design.Card.Title,
        Line = cards.Design.Order.Location.Start.Line,
        Count = cards.Count,
    };
}

/// <summary>What would save sheets of a paper that is short.</summary>
internal sealed record SuggestionRecord
{
    public required string Paper { get; init; }

    public required string Text { get; init; }

    public required int Before { get; init; }

    public required int After { get; init; }

    public static SuggestionRecord Of(Suggestion suggestion) => new()
    {
        Paper = suggestion.Paper,
        Text = suggestion.Text,
        Before = suggestion.Before,
        After = suggestion.After,
    };
}

/// <summary>What the paper of a card costs, in the currency of the stash.</summary>
internal sealed record CostRecord(string Card, decimal Amount);

/// <summary>Width and height.</summary>
internal sealed record SizeRecord(Length Width, Length Height);

/// <summary>A cut from one point to another.</summary>
internal sealed record CutRecord(Length X1, Length Y1, Length X2, Length Y2)
{
    public static CutRecord Of(Cut cut) => new(cut.From.Left, cut.From.Top, cut.To.Left, cut.To.Top);
}

/// <summary>Equal cuts in one part: the part by its corners, the way of the blade, the first cut, and how many cuts there are.</summary>
internal sealed record StepRecord(CutRecord Part, string Axis, Length At, int Repeat)
{
    public static StepRecord Of(CutRun run) => new(
        new(run.Part.Left, run.Part.Top, run.Part.Right, run.Part.Bottom), run.IsUpright ? "down" : "across", run.At, run.Cuts.Length);
}

/// <summary>A part of a sheet.</summary>
internal sealed record RectRecord(Length Left, Length Top, Length Width, Length Height);
