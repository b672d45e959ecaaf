namespace Sketch.Fuzz;

/// <summary>Something that always holds does not.</summary>
/// <param name="rule">What should hold; failures of one rule count as the same.</param>
/// <param name="details">What was found.</param>
internal sealed class BrokenInvariantException(string rule, string details) : Exception($"{rule}: {details}")
{
    public string Rule => rule;

    /// <summary>Throws unless a rule holds.</summary>
    public static void Unless(bool holds, string rule, string details)
    {
        if (!holds)
        {
            throw new BrokenInvariantException(rule, details);
        }
    }
}
