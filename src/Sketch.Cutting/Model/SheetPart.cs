using Sketch.Units;

namespace Sketch.Cutting.Model;

/// <summary>
/// A sheet or a part of one, and its use: it is a <see cref="SheetPiece"/>, a <see cref="SheetRest"/>, or it is cut in two
/// (<see cref="SheetCut"/>). Together they are the tree of cuts of a layout.
/// </summary>
/// <param name="Place">Its place, right and down from the top left corner of the whole sheet; what the blade removes entirely has no
/// width or height.</param>
public abstract record SheetPart(Rect Place)
{
    /// <summary>This part and all its parts, each before its own parts, the first before the second.</summary>
    public IEnumerable<SheetPart> InOrder()
    {
        // On an explicit stack: a row of many pieces is cut many levels deep, too deep for recursion.
        var waiting = new Stack<SheetPart>([this]);
        while (waiting.TryPop(out var part))
        {
            yield return part;
            if (part is SheetCut cut)
            {
                waiting.Push(cut.Second);
                waiting.Push(cut.First);
            }
        }
    }

    /// <summary>The same tree with another part in place of a leftover.</summary>
    /// <param name="leftover">The place of the leftover.</param>
    /// <param name="part">Its use.</param>
    /// <exception cref="ArgumentException">No leftover lies there.</exception>
    public SheetPart With(Rect leftover, SheetPart part)
    {
        var path = new Stack<SheetCut>();
        var at = this;
        while (at is SheetCut cut)
        {
            path.Push(cut);
            at = Holds(cut.First.Place, leftover) ? cut.First : cut.Second;
        }

        if (at is not SheetRest { IsTrim: false } || at.Place != leftover)
        {
            throw new ArgumentException("No leftover lies there.", nameof(leftover));
        }

        var (replaced, by) = (at, part);
        while (path.TryPop(out var cut))
        {
            var changed = ReferenceEquals(cut.First, replaced) ? cut with { First = by } : cut with { Second = by };
            (replaced, by) = (cut, changed);
        }

        return by;
    }

    private static bool Holds(Rect part, Rect within) =>
        within.Left >= part.Left && within.Right <= part.Right && within.Top >= part.Top && within.Bottom <= part.Bottom;
}

/// <summary>A piece.</summary>
/// <param name="Piece">The piece.</param>
public sealed record SheetPiece(PlacedPiece Piece) : SheetPart(Piece.Place);

/// <summary>A part that is not a piece.</summary>
/// <param name="Place">Where it lies.</param>
/// <param name="IsTrim">Whether it is trim, which is waste; else it is a leftover.</param>
public sealed record SheetRest(Rect Place, bool IsTrim) : SheetPart(Place)
{
    /// <summary>Whether the blade removes all of it.</summary>
    public bool IsNothing => Place.Width <= Length.Zero || Place.Height <= Length.Zero;
}

/// <summary>A part that is cut in two, from edge to edge.</summary>
/// <param name="Place">Where it lies.</param>
/// <param name="IsUpright">Whether the blade runs down the sheet; else it runs across.</param>
/// <param name="Distance">How far the blade's near side is from the part's left edge, or from its upper edge for a cut across; negative
/// if the blade is wider than the trim that it removes.</param>
/// <param name="First">The part to the left of the cut, or above it.</param>
/// <param name="Second">The part beyond the blade's width.</param>
public sealed record SheetCut(Rect Place, bool IsUpright, Length Distance, SheetPart First, SheetPart Second) : SheetPart(Place)
{
    /// <summary>The cut itself.</summary>
    public Cut Cut => IsUpright
        ? new(new(Place.Left + Distance, Place.Top), new(Place.Left + Distance, Place.Bottom))
        : new(new(Place.Left, Place.Top + Distance), new(Place.Right, Place.Top + Distance));

    /// <summary>The part kept if the cut removes trim; else null.</summary>
    public SheetPart? WithoutTrim =>
        First is SheetRest { IsTrim: true } ? Second : Second is SheetRest { IsTrim: true } ? First : null;

    /// <summary>Two trees are equal only if they are the same object: a structural comparison would recurse as deep as the trees.</summary>
    public bool Equals(SheetCut? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    /// <summary>The cut without its parts.</summary>
    public override string ToString() => $"{Place} cut {(IsUpright ? "down" : "across")} at {Distance}";
}
