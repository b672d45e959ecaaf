namespace Sketch.Planning.Plans;

/// <summary>A change that would save sheets, planned again to be sure.</summary>
/// <param name="Paper">The paper that is short.</param>
/// <param name="Text">What to change, in a plain sentence.</param>
/// <param name="Before">Sheets of the paper for the batch as it is.</param>
/// <param name="After">Sheets of it with the change.</param>
/// <param name="IsEnough">Whether the sheets on hand are then enough.</param>
/// <param name="Rank">How large the change is: smaller ones are proposed first.</param>
public sealed record Suggestion(string Paper, string Text, int Before, int After, bool IsEnough, int Rank);
