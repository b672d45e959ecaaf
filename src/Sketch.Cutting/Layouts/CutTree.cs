namespace Sketch.Cutting.Layouts;

/// <summary>
/// A layout as the cuts that make it, without places: a piece, or two layouts side by side or one above the other.
/// <see cref="Width"/> and <see cref="Height"/> are the smallest rectangle (nanometres) that it can be cut from.
/// </summary>
internal abstract record CutTree(long Width, long Height)
{
    /// <summary>The kinds of its pieces, with repetitions.</summary>
    public abstract void Count(int[] perKind);

    /// <summary>
    /// The same layout without the pieces that <paramref name="surplus"/> still counts; what it drops is subtracted from the counts. Null
    /// when nothing is left.
    /// </summary>
    public abstract CutTree? Without(int[] surplus);

    /// <summary>The same layout with no more of each kind than wanted; null when nothing is left.</summary>
    public CutTree? AtMost(int[] wanted)
    {
        var counts = new int[wanted.Length];
        Count(counts);
        return Without([.. counts.Select((count, kind) => Math.Max(0, count - wanted[kind]))]);
    }
}

/// <summary>One piece in its orientation.</summary>
internal sealed record PieceLeaf(Kind Kind, long Width, long Height) : CutTree(Width, Height)
{
    public override void Count(int[] perKind) => perKind[Kind.Index]++;

    public override CutTree? Without(int[] surplus)
    {
        if (surplus[Kind.Index] == 0)
        {
            return this;
        }

        surplus[Kind.Index]--;
        return null;
    }
}

/// <summary>Two layouts separated by one cut: upright if they lie side by side.</summary>
internal sealed record Join(bool SideBySide, CutTree First, CutTree Second) : CutTree(
    SideBySide ? First.Width + Second.Width : Math.Max(First.Width, Second.Width),
    SideBySide ? Math.Max(First.Height, Second.Height) : First.Height + Second.Height)
{
    public override void Count(int[] perKind)
    {
        First.Count(perKind);
        Second.Count(perKind);
    }

    public override CutTree? Without(int[] surplus)
    {
        var (first, second) = (First.Without(surplus), Second.Without(surplus));
        return first is null ? second
            : second is null ? first
            : ReferenceEquals(first, First) && ReferenceEquals(second, Second) ? this
            : new Join(SideBySide, first, second);
    }
}
