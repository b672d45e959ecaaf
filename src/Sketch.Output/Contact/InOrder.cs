namespace Sketch.Output.Contact;

/// <summary>Makes the parts of a long output on all cores and hands them on in order, so many at a time that memory stays the same however many there are.</summary>
public static class InOrder
{
    /// <summary>Makes and takes parts 0 to <paramref name="count"/> - 1.</summary>
    /// <param name="count">How many parts there are.</param>
    /// <param name="make">Makes a part; runs on several threads.</param>
    /// <param name="take">Takes each part in order, on this thread.</param>
    /// <param name="cancellation">Stops between parts.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Run<T>(int count, Func<int, T> make, Action<T> take, CancellationToken cancellation)
    {
        var parts = new T[Math.Max(1, Environment.ProcessorCount)];
        for (var first = 0; first < count; first += parts.Length)
        {
            var some = Math.Min(parts.Length, count - first);
            var from = first;
            Parallel.For(0, some, new ParallelOptions { CancellationToken = cancellation }, i => parts[i] = make(from + i));
            for (var i = 0; i < some; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                take(parts[i]);
            }
        }
    }
}
