using Sketch.Cutting.Layouts;

namespace Sketch.Cutting.Sheets;

/// <summary>A stock to cut from, as the planner uses it: sides in nanometres without trim, plus one kerf.</summary>
/// <param name="Index">0 for the full sheet; the offcuts follow.</param>
/// <param name="Width">Across.</param>
/// <param name="Height">Down.</param>
/// <param name="OnHand">How many; null for full sheets, which may be bought.</param>
internal sealed record Stock(int Index, long Width, long Height, int? OnHand)
{
    public bool IsSheet => OnHand is null;
}

/// <summary>One layout of one stock with its piece counts.</summary>
internal sealed class Pattern
{
    public Pattern(Stock stock, CutTree tree, int kinds)
    {
        (Stock, Tree, Counts) = (stock, tree, new int[kinds]);
        tree.Count(Counts);
    }

    public Stock Stock { get; }

    public CutTree Tree { get; }

    /// <summary>Pieces of each kind.</summary>
    public int[] Counts { get; }

    /// <summary>The same for every pattern of this stock that holds the same pieces.</summary>
    public string Key => field ??= Stock.Index + ":" + string.Join(',', Counts);
}
