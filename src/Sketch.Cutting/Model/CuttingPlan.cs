using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Cutting.Model;

/// <summary>How to cut the whole demand.</summary>
/// <param name="Sheets">Full sheets needed in total, including those still to buy; offcuts are not counted.</param>
/// <param name="LowerBound">No plan of edge-to-edge cuts can need fewer sheets than this.</param>
/// <param name="Layouts">What to cut, offcuts first; together they hold exactly the demanded pieces, except
/// <paramref name="Unplaced"/>.</param>
/// <param name="Unplaced">Pieces that fit no sheet and no remaining offcut.</param>
public sealed record CuttingPlan(int Sheets, int LowerBound, ImmutableArray<SheetLayout> Layouts, ImmutableArray<UnplacedPieces> Unplaced)
{
    /// <summary>Whether no plan needs fewer sheets.</summary>
    public bool IsProved => LowerBound >= Sheets;

    /// <summary>How many sheets are missing.</summary>
    public int Short(StockSheet sheet) => sheet.OnHand is { } onHand ? Math.Max(0, Sheets - onHand) : 0;
}

/// <summary>Pieces that could not be planned.</summary>
/// <param name="Id">The caller's name for them.</param>
/// <param name="Count">How many of them.</param>
public readonly record struct UnplacedPieces(string Id, int Count);

/// <summary>
/// One way to cut up a sheet or an offcut. All places are measured right and down from the top left corner of the whole sheet, trim
/// included.
/// </summary>
/// <param name="Stock">The whole sheet or offcut.</param>
/// <param name="IsOffcut">Whether it is an offcut.</param>
/// <param name="Times">How many sheets are cut this way.</param>
/// <param name="Tree">The sheet and how it is cut up, its trim first.</param>
public sealed record SheetLayout(Size Stock, bool IsOffcut, int Times, SheetPart Tree)
{
    /// <summary>The <see cref="OffcutStock.FreedBy"/> of the offcut; null for sheets.</summary>
    public string? FreedBy { get; init; }

    /// <summary>
    /// The sheet and how it is cut up, its trim first. All other properties except the stock and the count follow from it.
    /// </summary>
    public SheetPart Tree { get; } = Tree;

    /// <summary>The pieces, in the order of the tree.</summary>
    public ImmutableArray<PlacedPiece> Pieces { get; } = [.. Tree.InOrder().OfType<SheetPiece>().Select(p => p.Piece)];

    /// <summary>The cuts in the order of the tree; each runs from edge to edge of the part then in hand, the trim first.</summary>
    public ImmutableArray<Cut> Cuts { get; } = [.. Tree.InOrder().OfType<SheetCut>().Select(c => c.Cut)];

    /// <summary>The leftovers, without trim, largest first.</summary>
    public ImmutableArray<Rect> Leftovers { get; } =
    [
        .. Tree.InOrder().OfType<SheetRest>().Where(r => !r.IsTrim && !r.IsNothing).Select(r => r.Place)
            .OrderByDescending(r => (Int128)r.Width.Nanometres * r.Height.Nanometres).ThenBy(r => r.Top).ThenBy(r => r.Left),
    ];

    /// <summary>The waste cut off the edges of the sheet, in cutting order.</summary>
    public ImmutableArray<Rect> Trim { get; } = [.. TrimOf(Tree)];

    private static IEnumerable<Rect> TrimOf(SheetPart hand)
    {
        while (hand is SheetCut { WithoutTrim: { } kept } cut)
        {
            var trim = (SheetRest)(ReferenceEquals(kept, cut.First) ? cut.Second : cut.First);
            if (!trim.IsNothing)
            {
                yield return trim.Place;
            }

            hand = kept;
        }
    }
}

/// <summary>A piece on a sheet.</summary>
/// <param name="Id">The <see cref="PieceDemand.Id"/>.</param>
/// <param name="Place">Where it lies, with width and height as it lies.</param>
/// <param name="Turned">Whether it lies a quarter turn from upright.</param>
public readonly record struct PlacedPiece(string Id, Rect Place, bool Turned);

/// <summary>A straight cut down or across, from the upper or left end to the other.</summary>
public readonly record struct Cut(Place From, Place To)
{
    /// <summary>Whether the blade runs down the sheet.</summary>
    public bool IsUpright => From.Left == To.Left;
}
