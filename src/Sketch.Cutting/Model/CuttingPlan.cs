using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Cutting.Model;

/// <summary>How to cut everything asked for.</summary>
/// <param name="Sheets">Full sheets needed in all, those still to buy included; offcuts are not counted.</param>
/// <param name="LowerBound">No plan of edge-to-edge cuts can need fewer sheets than this.</param>
/// <param name="Layouts">What to cut, offcuts first; together they hold exactly the pieces asked for, less
/// <paramref name="Unplaced"/>.</param>
/// <param name="Unplaced">Pieces that fit on no sheet and on no offcut that is left.</param>
public sealed record CuttingPlan(int Sheets, int LowerBound, ImmutableArray<SheetLayout> Layouts, ImmutableArray<UnplacedPieces> Unplaced)
{
    /// <summary>Whether no plan needs fewer sheets.</summary>
    public bool IsProved => LowerBound >= Sheets;

    /// <summary>Sheets missing from those on hand.</summary>
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
/// <param name="Times">How many sheets are cut in this way.</param>
/// <param name="Pieces">The pieces, in the order in which they come off.</param>
/// <param name="Cuts">In order; each runs from edge to edge of the part then in hand, the trim first.</param>
/// <param name="Leftovers">What remains besides pieces and trim, largest first.</param>
/// <param name="Trim">The waste cut off the edges of the sheet.</param>
public sealed record SheetLayout(
    Size Stock,
    bool IsOffcut,
    int Times,
    ImmutableArray<PlacedPiece> Pieces,
    ImmutableArray<Cut> Cuts,
    ImmutableArray<Rect> Leftovers,
    ImmutableArray<Rect> Trim);

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
