using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Demand;

/// <summary>Equal pieces that a batch needs: one piece of a design as often as the design is made, or a line of loose pieces.</summary>
/// <param name="Id">A name unique within the batch.</param>
/// <param name="Name">Its name for the maker: its path within its face, or <c>loose</c>.</param>
/// <param name="Size">Its cut size when upright, or that of its blank.</param>
/// <param name="Count">How many.</param>
/// <param name="Location">The line that orders it, in the card or the batch.</param>
public sealed record PieceOrder(string Id, string Name, Size Size, int Count, Location Location)
{
    /// <summary>The design it belongs to, or null for loose pieces.</summary>
    public Design? Design { get; init; }

    /// <summary>Its path in the card, or null for loose pieces.</summary>
    public PiecePath? Path { get; init; }

    /// <summary>The side of the paper that shows, or null for either.</summary>
    public PaperSide? Side { get; init; }

    /// <summary>The role of its card that gives its material, or null.</summary>
    public string? Role { get; init; }

    /// <summary>Whether it may come from leftovers of any paper, or of some.</summary>
    public bool IsAnyOffcut { get; init; }

    /// <summary>For a piece of any offcut, which leftovers will do; null for all.</summary>
    public string? OffcutOf { get; init; }

    /// <summary>What a maker calls the leftovers that will do.</summary>
    public string OffcutName => OffcutOf is null ? "any offcut" : $"any offcut of {OffcutOf}";

    /// <summary>How its paper looks, or null if no file describes it.</summary>
    public PaperLook? Look { get; init; }

    /// <summary>How many parts it falls into when cut out; all of them come from one rectangle.</summary>
    public int Parts { get; init; } = 1;

    /// <summary>Whether it is a blank, from which a shape is cut by its template; <see cref="Size"/> is that of the blank.</summary>
    public bool IsBlank { get; init; }

    /// <summary>Whether it must not be turned on the sheet, as a loose piece may require.</summary>
    public bool Upright { get; init; }
}

/// <summary>Everything to cut from one paper.</summary>
/// <param name="Paper">The paper's name.</param>
/// <param name="Stock">The paper in the stash, or null if the stash does not have it.</param>
/// <param name="Sheet">The sheet it is cut from; a usual size if the stash does not have it.</param>
/// <param name="Offcuts">Leftovers of it in the stash.</param>
/// <param name="Pieces">The pieces.</param>
public sealed record PaperOrder(
    string Paper, StockPaper? Stock, StockSheet Sheet, ImmutableArray<OffcutStock> Offcuts, ImmutableArray<PieceOrder> Pieces)
{
    /// <summary>The rectangles and the sheet, for the planner.</summary>
    public CuttingProblem Problem(Length kerf) =>
        new(Sheet, Offcuts, [.. Pieces.Select(Demand)]) { Kerf = kerf };

    /// <summary>Whether its leftovers will do for a kind of offcut.</summary>
    public bool ServesAsOffcutOf(string? kind) => Stock is { } stock ? OffcutKinds.Takes(kind, stock)
        : OffcutKinds.Takes(kind, Paper, Pieces.Any(p => p.Look is { IsPatterned: true }), Pieces.FirstOrDefault()?.Look?.Ground);

    private PieceDemand Demand(PieceOrder piece) =>
        new(piece.Id, piece.Size, piece.Count, !piece.Upright && Stock is not { Upright: true });
}
