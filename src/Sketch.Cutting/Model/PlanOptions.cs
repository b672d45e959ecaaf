namespace Sketch.Cutting.Model;

/// <summary>How long to search for a better plan.</summary>
/// <param name="TimeLimit">
/// When it is over, the best plan so far is returned. Work that ends before it always gives the same plan; the search also ends by itself
/// once it has done a fixed amount of work, usually long before.
/// </param>
public sealed record PlanOptions(TimeSpan TimeLimit)
{
    /// <summary>Ten seconds.</summary>
    public static readonly PlanOptions Default = new(TimeSpan.FromSeconds(10));
}

/// <summary>The progress of the search.</summary>
/// <param name="Sheets">Sheets of the best plan so far.</param>
/// <param name="LowerBound">No plan needs fewer.</param>
public readonly record struct PlanProgress(int Sheets, int LowerBound);
