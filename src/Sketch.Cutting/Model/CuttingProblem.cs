using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Cutting.Model;

/// <summary>The sheet that new pieces are cut from.</summary>
/// <param name="Size">The whole sheet, trim included.</param>
/// <param name="Trim">What is cut off each edge first and is waste, such as a printed selvage; zero where there is none.</param>
/// <param name="OnHand">How many are there; null for any number. It never limits a plan, it only says how many are short.</param>
public sealed record StockSheet(Size Size, Insets Trim, int? OnHand = null)
{
    /// <summary>What is left of the sheet once its trim is off.</summary>
    public Rect Usable => new(Trim.Left, Trim.Top, Size.Width - Trim.Left - Trim.Right, Size.Height - Trim.Top - Trim.Bottom);
}

/// <summary>
/// A leftover of the same paper from earlier work, with no trim on it. It lies as the sheet it came from lay, so upright pieces are upright
/// on it.
/// </summary>
/// <param name="Size">Width across and height down.</param>
/// <param name="Count">How many of this size; at least 0.</param>
public sealed record OffcutStock(Size Size, int Count);

/// <summary>Pieces of one size that are asked for. Which side of the paper they show makes no difference to the cutting.</summary>
/// <param name="Id">The caller's own name for them; it must be there only once.</param>
/// <param name="Size">Cut size as the piece stands upright on the paper.</param>
/// <param name="Count">How many; at least 0.</param>
/// <param name="MayTurn">Whether it may lie a quarter turn on the sheet; false for upright pieces and for papers with a direction.</param>
public sealed record PieceDemand(string Id, Size Size, int Count, bool MayTurn = true);

/// <summary>Everything to be cut from one paper.</summary>
/// <param name="Sheet">The full sheet.</param>
/// <param name="Offcuts">Leftovers on hand, which are cut up before new sheets.</param>
/// <param name="Pieces">The pieces asked for.</param>
public sealed record CuttingProblem(StockSheet Sheet, ImmutableArray<OffcutStock> Offcuts, ImmutableArray<PieceDemand> Pieces)
{
    /// <summary>What each cut turns to dust: zero for a trimmer or scissors.</summary>
    public Length Kerf { get; init; }

    /// <summary>
    /// The shortest side that makes a leftover worth keeping; smaller ones are still listed, but nothing is done to keep them whole.
    /// </summary>
    public Length SmallestUse { get; init; } = Length.Inch(0, 1, 2);

    /// <summary>Fails on numbers that no reader of files lets through.</summary>
    /// <exception cref="ArgumentException">A size is not positive or larger than <see cref="Length.Limit"/>, a count or margin is negative,
    /// or an id is there twice.</exception>
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
