using System.Diagnostics;

namespace Sketch.Fuzz;

/// <summary>What went wrong with an input.</summary>
/// <param name="Key">Equal for failures with the same cause, as far as can be known: the rule, or the exception and its place.</param>
/// <param name="Text">All that is known.</param>
internal sealed record Failure(string Key, string Text)
{
    /// <summary>
    /// The most memory in all that an input may allocate: a measure of work that does not depend on the machine. The costliest text within
    /// the limits of the language takes a third of it.
    /// </summary>
    public const long MostAllocated = 8_000_000_000;

    /// <summary>Runs a target; null if all is well.</summary>
    public static Failure? Of(IFuzzTarget target, FuzzInput input)
    {
        var before = GC.GetTotalAllocatedBytes();
        try
        {
            target.Run(input);
        }
        catch (BrokenInvariantException broken)
        {
            return new(broken.Rule, broken.Message);
        }
        catch (Exception bug)
        {
            var own = new StackTrace(bug).GetFrames().Select(f => f.GetMethod())
                .FirstOrDefault(m => m?.DeclaringType?.FullName?.StartsWith("Sketch", StringComparison.Ordinal) == true);
            return new($"{bug.GetType().Name} in {own?.DeclaringType?.Name}.{own?.Name}", bug.ToString());
        }

        var allocated = GC.GetTotalAllocatedBytes() - before;
        return allocated > MostAllocated ? new("work is limited", $"{allocated:N0} bytes were allocated.") : null;
    }
}
