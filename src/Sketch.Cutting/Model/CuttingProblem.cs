using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Cutting.Model;

/// <summary>The sheet that new pieces are cut from.</summary>
/// <param name="Size">The whole sheet, trim included.</param>
/// <param name="Trim">What is cut off each edge first as waste, such as a printed selvage; zero if there is none.</param>
/// <param name="OnHand">How many there are; null for any number. It never limits a plan; it only determines how many are missing.</param>
public sealed record StockSheet(Size Size, Insets Trim, int? OnHand = null)
{
    /// <summary>The sheet without its trim.</summary>
    public Rect Usable => new(Trim.Left, Trim.Top, Size.Width - Trim.Left - Trim.Right, Size.Height - Trim.Top - Trim.Bottom);
}

/// <summary>
/// A leftover of the same paper from earlier work, without trim. It has the orientation of its sheet, so upright pieces are upright
/// on it.
/// </summary>
/// <param name="Size">Width across and height down.</param>
/// <param name="Count">How many of this size; at least 0.</param>
public sealed record OffcutStock(Size Size, int Count)
{
    /// <summary>The id of the piece that frees it when it is cut hollow; null for what is on hand before the first cut.</summary>
    public string? FreedBy { get; init; }
}

/// <summary>The demand for pieces of one size. Which side of the paper they show makes no difference to the cutting.</summary>
/// <param name="Id">The caller's own name for them; it must be unique.</param>
/// <param name="Size">Cut size of the piece when upright on the paper.</param>
/// <param name="Count">How many; at least 0.</param>
/// <param name="MayTurn">Whether it may lie a quarter turn on the sheet; false for upright pieces and for papers with a direction.</param>
public sealed record PieceDemand(string Id, Size Size, int Count, bool MayTurn = true);

/// <summary>Everything to cut from one paper.</summary>
/// <param name="Sheet">The full sheet.</param>
/// <param name="Offcuts">Leftovers on hand, which are used before new sheets.</param>
/// <param name="Pieces">The pieces to cut.</param>
public sealed record CuttingProblem(StockSheet Sheet, ImmutableArray<OffcutStock> Offcuts, ImmutableArray<PieceDemand> Pieces)
{
    /// <summary>The kerf, which is the width lost to each cut: zero for a trimmer or scissors.</summary>
    public Length Kerf { get; init; }

    /// <summary>
    /// The shortest side that makes a leftover worth keeping; smaller ones are still listed, but nothing is done to keep them whole.
    /// </summary>
    public Length SmallestUse { get; init; } = Length.Inch(0, 1, 2);

    /// <summary>Fails on numbers that the file readers reject.</summary>
    /// <exception cref="ArgumentException">A size is not positive or larger than <see cref="Length.Limit"/>, a count or margin is negative,
    /// or an id occurs twice.</exception>
    internal void Validate()
    {
        Require(IsSize(Sheet.Size), "the sheet has no size");
        Require(Sheet.Trim is { Left.Nanometres: >= 0, Top.Nanometres: >= 0, Right.Nanometres: >= 0, Bottom.Nanometres: >= 0 },
            "a trim is negative");
        Require(Kerf.Nanometres >= 0 && Kerf <= Length.Limit, "the kerf is negative");
        Require(Offcuts.All(o => IsSize(o.Size) && o.Count >= 0), "an offcut has no size or a negative count");
        Require(Pieces.All(p => IsSize(p.Size) && p.Count >= 0), "a piece has no size or a negative count");
        Require(Pieces.Select(p => p.Id).Distinct(StringComparer.Ordinal).Count() == Pieces.Length, "two kinds of piece share an id");
    }

    private static bool IsSize(Size size) =>
        size is { Width.Nanometres: > 0, Height.Nanometres: > 0 } && size.Width <= Length.Limit && size.Height <= Length.Limit;

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new ArgumentException(otherwise);
        }
    }
}
