using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>Cuts made one after the other without changing the trimmer's setting.</summary>
/// <param name="Number">Its place in the order of work, from 1.</param>
/// <param name="IsUpright">Whether the blade runs down the sheet as drawn; otherwise across.</param>
/// <param name="Setting">How far the part's left or upper edge lies from the blade.</param>
/// <param name="Cuts">The cuts in order, each from edge to edge of the part then in hand.</param>
public sealed record CutStep(int Number, bool IsUpright, Length Setting, ImmutableArray<Cut> Cuts)
{
    /// <summary>Whether it removes the waste at an edge of the sheet.</summary>
    public bool IsTrim { get; init; }

    /// <summary>Such as <c>set 5 1/4: 2 cuts across</c>.</summary>
    public string Text(LengthFormat lengths)
    {
        return $"set {lengths.Text(Setting)}: {Counted.Of(Cuts.Length, "cut")} "
            + $"{(IsUpright ? "down" : "across")}{(IsTrim ? ", the trim is waste" : "")}";
    }
}
