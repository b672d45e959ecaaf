using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.CutSteps;

/// <summary>Cuts made one after the other without changing the trimmer's setting.</summary>
/// <param name="Number">Its place in the order of work, from 1.</param>
/// <param name="Against">The edge of the part in hand that is pushed against the stop.</param>
/// <param name="Setting">
/// The distance from the stop to the blade: the size of the part that is cut off or, where trim is removed, of the part that is kept.
/// </param>
/// <param name="Runs">The parts that are cut, in order, each with its cuts.</param>
public sealed record CutStep(int Number, Edge Against, Length Setting, ImmutableArray<CutRun> Runs)
{
    /// <summary>How to follow the steps, for the head of a list of them.</summary>
    public const string Instruction =
        "Push the named edge of the part in hand against the stop; set the distance from the stop to the blade";

    /// <summary>The cuts in order, each from edge to edge of the part then in hand.</summary>
    public ImmutableArray<Cut> Cuts { get; } = [.. Runs.SelectMany(r => r.Cuts)];

    /// <summary>Whether the blade runs down the sheet as drawn; otherwise across.</summary>
    public bool IsUpright => Against is Edge.Left or Edge.Right;

    /// <summary>Whether it removes the waste at the edge of the sheet away from the stop.</summary>
    public bool IsTrim { get; init; }

    /// <summary>Whether the part in hand is all that is left of the sheet, so that it needs no name.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Such as <c>set 5 1/4 from the top of 2 parts 4 x 11: 2 cuts across</c>.</summary>
    public string Text(LengthFormat lengths) => Text(lengths, PartsText(lengths));

    /// <summary>Such as <c>set 5 1/4 from the top: 2 cuts across</c>, beside a diagram that shows the parts.</summary>
    public string ShortText(LengthFormat lengths) => Text(lengths, "");

    private string Text(LengthFormat lengths, string parts) =>
        $"set {lengths.Text(Setting)} from the {Against.Name()}{parts}: {Counted.Of(Cuts.Length, "cut")} {(IsUpright ? "down" : "across")}"
            + (IsTrim ? $", the {Against.Opposite().Name()} trim is waste" : "");

    private string PartsText(LengthFormat lengths)
    {
        if (IsTrim || IsWhole)
        {
            return "";
        }

        var size = Runs.All(r => r.Part.Size == Runs[0].Part.Size) ? " " + lengths.Text(Runs[0].Part.Size) : "";
        return Runs.Length == 1 ? $" of the part{size}" : $" of {Counted.Of(Runs.Length, "part")}{size}";
    }
}
