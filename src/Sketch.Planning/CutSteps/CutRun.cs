using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>Equal cuts that are made one after the other in one part, each taking the same strip off what is left of it.</summary>
/// <param name="Part">The part in hand before the first of them, with the place that it had on the sheet.</param>
/// <param name="Cuts">The cuts, at least one; each runs from edge to edge of what is left of the part.</param>
public sealed record CutRun(Rect Part, ImmutableArray<Cut> Cuts)
{
    /// <summary>Whether the blade runs down the sheet; otherwise across.</summary>
    public bool IsUpright => Cuts[0].IsUpright;

    /// <summary>Where the first cut is, from the left edge of the sheet or, if it runs across, from the upper edge.</summary>
    public Length At => IsUpright ? Cuts[0].From.Left : Cuts[0].From.Top;
}
