namespace Sketch.Cutting.Model;

/// <summary>The progress of the search.</summary>
/// <param name="Sheets">Sheets of the best plan so far.</param>
/// <param name="LowerBound">No plan needs fewer.</param>
public readonly record struct PlanProgress(int Sheets, int LowerBound);
