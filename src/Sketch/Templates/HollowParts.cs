using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// The part of a layer that is neither visible nor needed as support: what lies flat on it covers it, and glue still has its margin
/// round the hole on every such piece and on the layer itself. Pieces on foam do not count, since foam must stand on paper. The layer
/// stays one piece: where a hidden part lies round paper that must stay, only a rectangle beside that paper is cut out.
/// </summary>
/// <param name="card">The card.</param>
/// <param name="gluing">The margin for glue on each side.</param>
internal sealed class HollowParts(LaidOutCard card, Length gluing)
{
    /// <summary>
    /// The most corners of pieces that lie on a layer, counted for each layer of a card: uniting them takes seconds beyond that. No real
    /// card comes near; further layers stay whole, which is never wrong.
    /// </summary>
    private const int MostCorners = 40_000;

    private readonly Cover?[] _covers = new Cover?[card.Pieces.Length];

    // Without its margin each piece covers all layers below it, so that is computed once.
    private readonly Outline?[] _withoutMargins = new Outline?[card.Pieces.Length];

    private readonly int?[] _coveredBy = new int?[card.Pieces.Length];

    private int _corners;

    /// <summary>How many layers stay whole because of that limit, of those asked about so far.</summary>
    public int LeftWhole { get; private set; }

    /// <summary>
    /// The hidden parts of a layer, in millimetres on its face as if nothing were turned; empty if nothing worth cutting out is hidden.
    /// </summary>
    /// <param name="index">The layer, in the card's pieces.</param>
    public ImmutableArray<FreedPart> Of(int index)
    {
        var inside = WithoutMargin(index);
        var covered = Enumerable.Range(index + 1, card.Pieces.Length - index - 1)
            .Where(i => AreLevel(i, index) && WithoutMargin(i) is { IsEmpty: false } o && o.Bounds.Overlaps(inside.Bounds))
            .Where(i => CoveredBy(i) <= index)
            .Select(WithoutMargin)
            .ToList();
        _corners += covered.Sum(o => o.Corners);
        if (_corners > MostCorners)
        {
            LeftWhole += covered.Count > 0 ? 1 : 0;
            return [];
        }

        var hidden = covered.Count switch
        {
            0 => Outline.Empty,
            1 => covered[0],
            _ => Outline.Union(covered),
        };
        var layer = card.Pieces[index];
        var back = layer.Turning.IsIdentity ? Affine.Identity : layer.Turning.Inverse();
        return FreedPaper.WorthKeeping(hidden.Intersect(inside).Transform(back));
    }

    /// <summary>Whether both are paper that lies equally high on the same face.</summary>
    private bool AreLevel(int one, int other) => card.Pieces[one] is { Matter: PieceMatter.Paper } a
        && card.Pieces[other] is { Matter: PieceMatter.Paper } b && a.Face == b.Face && a.Raised == b.Raised;

    private Outline WithoutMargin(int index) =>
        _withoutMargins[index] ??= card.Pieces[index].TurnedOutline.Grow(-gluing.Millimetres);

    /// <summary>The topmost piece that covers all that a piece covers, as the mat behind it does; -1 for none.</summary>
    private int CoveredBy(int small)
    {
        return _coveredBy[small] ??= Enumerable.Range(0, card.Pieces.Length).Reverse()
            .FirstOrDefault(large => large != small && AreLevel(large, small) && IsLarger(large)
                && CoverOf(large).Covers(WithoutMargin(small)), -1);

        // Of equal pieces the topmost counts.
        bool IsLarger(int large) => WithoutMargin(large).Bounds.Covers(WithoutMargin(small).Bounds)
            && (large > small || WithoutMargin(large).Area > WithoutMargin(small).Area);
    }

    private Cover CoverOf(int index) => _covers[index] ??= new(WithoutMargin(index));
}
