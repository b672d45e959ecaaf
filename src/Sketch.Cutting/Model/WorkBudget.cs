namespace Sketch.Cutting.Model;

/// <summary>
/// How much a search may do, as a count of its elementary steps and not as a time: the same problem with the same budget gives the same
/// plan, however busy the machine is. A step takes one to three nanoseconds. A cancellation ends the work at any moment. Not for several
/// threads at once: give each a budget of its own.
/// </summary>
/// <param name="amount">The steps allowed.</param>
/// <param name="cancellation">Ends the work early.</param>
public sealed class WorkBudget(long amount, CancellationToken cancellation = default)
{
    /// <summary>What one problem may take by default.</summary>
    public const long Usual = 1_600_000_000;

    private readonly WorkBudget? _whole;

    private WorkBudget(WorkBudget whole, long amount) : this(amount, whole.Cancellation) => _whole = whole;

    /// <summary>The steps that are left; negative if the last one took more than was left.</summary>
    public long Left { get; private set; } = amount;

    /// <summary>Ends the work early.</summary>
    public CancellationToken Cancellation { get; } = cancellation;

    /// <summary>Whether nothing more should be done.</summary>
    public bool IsOver => Left <= 0 || Cancellation.IsCancellationRequested;

    /// <summary>Counts steps that were done.</summary>
    public void Spend(long steps)
    {
        Left -= steps;
        _whole?.Spend(steps);
    }

    /// <summary>
    /// Does tasks side by side, each with an equal part of what is left, so that the results do not depend on which is done first.
    /// </summary>
    /// <param name="tasks">The tasks.</param>
    /// <param name="run">Does one with its part.</param>
    public void Share<T>(IReadOnlyList<T> tasks, Action<T, WorkBudget> run)
    {
        var each = Math.Max(0, Left) / Math.Max(1, tasks.Count);
        var parts = tasks.Select(_ => new WorkBudget(each, Cancellation)).ToArray();
        Parallel.For(0, tasks.Count, i => run(tasks[i], parts[i]));
        Spend(parts.Sum(p => each - p.Left));
    }

    /// <summary>A part of what is left; steps of the part count for the whole too.</summary>
    /// <param name="share">Between 0 and 1.</param>
    public WorkBudget Part(double share) => new(this, (long)(Math.Max(0, Left) * share));
}
