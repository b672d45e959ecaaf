using Sketch.Binding;
using Sketch.Kinds;
using Sketch.Syntax;

namespace Sketch.Layout;

/// <summary>
/// How much a bound card contains once copies and parts are expanded, counted without expanding them: what parts
/// share is counted once and multiplied.
/// </summary>
/// <param name="deepest">The depth below which nothing is laid out.</param>
internal sealed class PieceCount(int deepest)
{
    // Far above every limit, and small enough to be multiplied by any count of copies without overflow.
    private const long Most = 1L << 40;

    private readonly Dictionary<BoundPiece, Amount> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>The amount of all copies of a bound piece with everything that lies on them.</summary>
    public Amount Of(BoundPiece bound, int depth = 0)
    {
        if (depth >= deepest)
        {
            return default;
        }

        if (_known.TryGetValue(bound, out var known))
        {
            return known;
        }

        var copies = CopiesOf(bound);
        var amount = OneCopy(bound) * copies;
        foreach (var child in bound.Children)
        {
            amount += Of(child, depth + 1) * copies;
        }

        foreach (var item in bound.Items)
        {
            foreach (var child in item.Children)
            {
                amount += Of(child, depth + 1) * Math.Min(item.Items.Length, copies);
            }
        }

        return _known[bound] = amount.AtMost(Most);
    }

    /// <summary>
    /// The amount of one piece with its mats. Its letters are those of one text where there is a text for each copy, else those of all.
    /// </summary>
    public static Amount OneCopy(BoundPiece bound)
    {
        var letters = bound.Texts.Length == bound.Count
            ? bound.Texts.Max(t => (long)t.Text.Length) : bound.Texts.Sum(t => (long)t.Text.Length);
        return new(1 + bound.Mats.Length, letters, bound.Kind.Traits.FollowsLetters ? letters : 0);
    }

    /// <summary>How many copies a line asks for, capped at one more than the limit for a line.</summary>
    public static long CopiesOf(BoundPiece bound) =>
        bound.Count ?? (bound.Rules.Arrange is { Clause: { Down: { } rows } grid }
            ? Math.Min((long)grid.Across * rows, Limits.Copies + 1) : 1);
}

/// <summary>The amounts that count against the limits of a card.</summary>
/// <param name="Pieces">Pieces with their mats.</param>
/// <param name="Letters">Letters, inked or cut out.</param>
/// <param name="CutOut">Letters that are cut out as words.</param>
internal readonly record struct Amount(long Pieces, long Letters, long CutOut)
{
    public static Amount operator +(Amount a, Amount b) => new(a.Pieces + b.Pieces, a.Letters + b.Letters, a.CutOut + b.CutOut);

    public static Amount operator *(Amount amount, long times) => new(amount.Pieces * times, amount.Letters * times, amount.CutOut * times);

    /// <summary>The same, with each number capped.</summary>
    public Amount AtMost(long most) => new(Math.Min(Pieces, most), Math.Min(Letters, most), Math.Min(CutOut, most));
}
