using Sketch.Text;

namespace Sketch.Planning.Plans;

/// <summary>A change that would save sheets, planned again to be sure.</summary>
/// <param name="Paper">The paper that is short.</param>
/// <param name="Change">What to change, as the beginning of a sentence.</param>
/// <param name="Before">Sheets of the paper for the batch as it is.</param>
/// <param name="After">Sheets of it with the change.</param>
/// <param name="IsEnough">Whether the sheets on hand are then enough.</param>
/// <param name="Rank">How large the change is: smaller ones are proposed first.</param>
public sealed record Suggestion(string Paper, string Change, int Before, int After, bool IsEnough, int Rank)
{
    /// <summary>What to change, and what that saves, as a plain sentence.</summary>
    public string Text => $"{Change}: {Counted.Of(After, "sheet")} of {Paper} instead of {Before}.";
}
