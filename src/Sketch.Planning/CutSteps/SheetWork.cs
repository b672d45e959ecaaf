using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Sketch.Cutting.Model;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>Sheets that are cut the same way, whatever their pieces are for: they may be cut as one stack.</summary>
/// <param name="Paper">The paper's name.</param>
/// <param name="Number">Which of the paper's stacks, from 1.</param>
/// <param name="Times">How many sheets.</param>
/// <param name="Layout">The layout of each.</param>
/// <param name="Steps">The cuts in the order of work.</param>
/// <param name="Pieces">What comes off, by size, largest first.</param>
public sealed partial record SheetWork(
    string Paper, int Number, int Times, SheetLayout Layout, ImmutableArray<CutStep> Steps, ImmutableArray<CutPieces> Pieces)
{
    /// <summary>Whether it is an offcut from the stash, or freed by a piece of the batch.</summary>
    public bool IsOffcut => Layout.IsOffcut;

    /// <summary>The piece that frees it, such as <c>sky/mat of Fair winds</c>; null for what is on hand.</summary>
    public string? FreedBy { get; init; }

    /// <summary>The stacks of a paper, in the order of its layouts.</summary>
    public static ImmutableArray<SheetWork> Of(BatchPlan plan, PaperPlan paper)
    {
        var stacks = paper.Plan.Layouts.GroupBy(Geometry).ToList();
        return [.. stacks.Select((alike, i) => Of(plan, paper.Order.Paper, i + 1, [.. alike]))];
    }

    /// <summary>Such as <c>gulls 1: 2 sheets of 12 x 12, cut alike</c>.</summary>
    public string Heading(LengthFormat lengths)
    {
        var count = Counted.Of(Times, FreedBy is not null ? "freed piece" : IsOffcut ? "offcut" : "sheet");
        return $"{Paper} {Number.ToString(CultureInfo.InvariantCulture)}: {count} of "
            + $"{SheetName.Of(Layout.Stock, lengths)}{(FreedBy is null ? "" : $", out of {FreedBy}")}{(Times > 1 ? ", cut alike" : "")}";
    }

    /// <summary>The name of a piece without the numbers of copies, and its card: <c>sky/mat of Fair winds</c>.</summary>
    public static string NameOf(PieceOrder piece) =>
        CopyNumbers().Replace(piece.Name, "") + (piece.Design is { } design ? $" of {design.Card.Title}" : "");

    /// <summary>The letter of the pieces of a size, in either orientation.</summary>
    public string KeyOf(Size size) => Pieces.First(p => p.Size == size || p.Size == size.Turned()).Key;

    /// <summary>The same for sheets that are cut alike.</summary>
    internal static string Geometry(SheetLayout layout) =>
        string.Join(';', layout.Pieces.Select(p => p.Place).Concat(layout.Leftovers)
            .Prepend(new(default, default, layout.Stock.Width, layout.Stock.Height))
        .Select(r => string.Create(
            CultureInfo.InvariantCulture, $"{r.Left.Nanometres},{r.Top.Nanometres},{r.Width.Nanometres},{r.Height.Nanometres}"))
        .Prepend(layout.FreedBy is { } by ? CopyNumbers().Replace(by, "") : layout.IsOffcut ? "offcut" : "sheet"));

    private static SheetWork Of(BatchPlan plan, string paper, int number, List<SheetLayout> alike)
    {
        var placed = alike.SelectMany(l => l.Pieces.Select(p => (Order: plan.Pieces[p.Id], l.Times))).ToList();
        var sizes = placed.GroupBy(p => Normal(p.Order.Size))
            .OrderByDescending(g => (Int128)g.Key.Width.Nanometres * g.Key.Height.Nanometres).ThenByDescending(g => g.Key.Width);
        var pieces = sizes.Select((size, i) => new CutPieces(
            KeyFor(i),
            size.First().Order.Size,
            alike[0].Pieces.Count(p => Normal(plan.Pieces[p.Id].Size) == size.Key),
            [.. size.GroupBy(p => UseOf(p.Order)).Select(u => u.Key with { Count = u.Sum(p => p.Times) })]));
        return new(paper, number, alike.Sum(l => l.Times), alike[0], CutSequence.Of(alike[0]), [.. pieces])
        {
            FreedBy = alike[0].FreedBy is { } by ? NameOf(plan.Pieces[by]) : null,
        };
    }

    private static PieceUse UseOf(PieceOrder order) =>
        new(order.Design?.Card.Title, CopyNumbers().Replace(order.Name, ""), order.Side, 0)
        {
            Parts = order.Parts,
            IsBlank = order.IsBlank,
        };

    private static Size Normal(Size size) => size.Width >= size.Height ? size : size.Turned();

    // A to Z, then AA, AB and so on.
    private static string KeyFor(int index) => index < 26 ? ((char)('A' + index)).ToString() : KeyFor(index / 26 - 1) + KeyFor(index % 26);

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex CopyNumbers();
}

/// <summary>Pieces of one size that come off a stack.</summary>
/// <param name="Key">The letter used for them in the diagram.</param>
/// <param name="Size">Their size, with the first of them upright.</param>
/// <param name="PerSheet">How many come off each sheet.</param>
/// <param name="Uses">What they are for, for all sheets of the stack together.</param>
public sealed record CutPieces(string Key, Size Size, int PerSheet, ImmutableArray<PieceUse> Uses)
{
    /// <summary>Such as <c>4 x 5 1/4, 6 a sheet: 12 Fair winds sky/mat</c>.</summary>
    public string Text(LengthFormat lengths) =>
        $"{lengths.Text(Size)}, {PerSheet.ToString(CultureInfo.InvariantCulture)} a sheet: {string.Join("; ", Uses.Select(u => u.Text))}";
}

/// <summary>What pieces of a stack are for.</summary>
/// <param name="Card">The card's title, or null for loose pieces.</param>
/// <param name="Name">The piece's name in the card.</param>
/// <param name="Side">The side that shows, or null for either.</param>
/// <param name="Count">How many, for all sheets of the stack together.</param>
public sealed record PieceUse(string? Card, string Name, PaperSide? Side, int Count)
{
    /// <summary>How many parts each falls into when cut out.</summary>
    public int Parts { get; init; } = 1;

    /// <summary>Whether each is a blank, from which the piece is cut by its template.</summary>
    public bool IsBlank { get; init; }

    /// <summary>Such as <c>12 Fair winds sky/mat</c>, or <c>12 Fair winds lamp, blanks to cut by its template</c>.</summary>
    public string Text =>
        $"{Count.ToString(CultureInfo.InvariantCulture)} {(Card is null ? "" : Card + " ")}{Name}{(Side == PaperSide.Back ? ", back" : "")}"
        + (Parts > 1 ? $", {Parts.ToString(CultureInfo.InvariantCulture)} parts each" : "")
        + (!IsBlank ? "" : Count == 1 ? ", a blank to cut by its template" : ", blanks to cut by its template");
}
