using System.Collections.Concurrent;
using Sketch.Planning.Plans;

namespace Sketch.Preview.Sessions;

/// <summary>The latest plan of each window, for its workbook, and the running searches.</summary>
public sealed class BatchPlans
{
    private const int Most = 16;

    private readonly ConcurrentDictionary<(string Window, string File), BatchPlan> _plans = new();
    private readonly ConcurrentDictionary<(string Window, string File), CancellationTokenSource> _searches = new();

    /// <summary>The last plan of a window for a file, or null.</summary>
    public BatchPlan? Find(string window, string file) => _plans.GetValueOrDefault((window, file));

    /// <summary>Replaces the plan of a window; null removes it.</summary>
    public void Put(string window, string file, BatchPlan? plan)
    {
        if (plan is null)
        {
            _plans.TryRemove((window, file), out _);
            return;
        }

        if (_plans.Count >= Most)
        {
            _plans.Clear();
        }

        _plans[(window, file)] = plan;
    }

    /// <summary>Starts a search and stops the one that is still running in the window for this file.</summary>
    public CancellationTokenSource Begin(string window, string file, params CancellationToken[] ends)
    {
        var search = CancellationTokenSource.CreateLinkedTokenSource(ends);
        _searches.AddOrUpdate((window, file), search, (_, before) =>
        {
            Stop(before);
            return search;
        });
        return search;
    }

    /// <summary>Stops a search, which then returns its best plan so far.</summary>
    public void Enough(string window, string file)
    {
        if (_searches.TryGetValue((window, file), out var search))
        {
            Stop(search);
        }
    }

    /// <summary>Ends a search that <see cref="Begin"/> began.</summary>
    public void End(string window, string file, CancellationTokenSource search)
    {
        _searches.TryRemove(new((window, file), search));
        search.Dispose();
    }

    private static void Stop(CancellationTokenSource search)
    {
        try
        {
            search.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // It has just ended.
        }
    }
}
