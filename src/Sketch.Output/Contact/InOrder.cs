namespace Sketch.Output.Contact;

/// <summary>
/// Makes the parts of a long output on all cores and passes them on in order, in batches of constant size, so that memory does not depend
/// on their number.
/// </summary>
public static class InOrder
{
    /// <summary>Makes and passes on parts 0 to <paramref name="count"/> - 1.</summary>
    /// <param name="count">How many parts there are.</param>
    /// <param name="make">Makes a part; runs on several threads.</param>
    /// <param name="take">Receives each part in order, on the calling thread.</param>
    /// <param name="cancellation">Cancels between parts.</param>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static void Run<T>(int count, Func<int, T> make, Action<T> take, CancellationToken cancellation)
    {
        var some = Math.Max(1, Environment.ProcessorCount);
        var next = Make(0);
        for (var first = 0; first < count; first += some)
        {
            var parts = next.GetAwaiter().GetResult();
            // The next parts are made while these are written.
            next = Make(first + some);
            foreach (var part in parts)
            {
                cancellation.ThrowIfCancellationRequested();
                take(part);
            }
        }

        Task<T[]> Make(int first) => Task.Run(() =>
        {
            var parts = new T[Math.Clamp(count - first, 0, some)];
            Parallel.For(0, parts.Length, new ParallelOptions { CancellationToken = cancellation }, i => parts[i] = make(first + i));
            return parts;
        }, cancellation);
    }
}
