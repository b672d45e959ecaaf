using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Output.Folders;

/// <summary>The log of what is made, as a file beside its batch.</summary>
/// <param name="batch">The batch.</param>
/// <param name="path">The path of the batch.</param>
/// <param name="world">Reads the titles of the cards.</param>
public sealed class CountFile(Batch batch, string path, IWorld world)
{
    private readonly string _log = CountLog.PathOf(path);

    /// <summary>The cards that can be counted.</summary>
    public ImmutableArray<CountedCard> Cards { get; } = CountedCard.Of(batch, path, world);

    /// <summary>What the log says now; a problem is a whole sentence.</summary>
    /// <param name="findings">Receives what is wrong in the log.</param>
    public Result<BatchCount> Read(FindingBag findings) => SharedLog.Read(_log) switch
    {
        { Problem: { } problem } => new Failure($"\"{_log}\" cannot be read: {problem}"),
        var content => content.Map(c => Count(c, findings)),
    };

    /// <summary>
    /// Adds an entry, unless it takes back more than there is; one that is in the log already is not added again. When this returns
    /// null, the entry is on the disk.
    /// </summary>
    /// <returns>Why it is not added, as a whole sentence, or null.</returns>
    public Failure? Add(CountEntry entry) => SharedLog.Append(_log, CountLog.TornMark, content =>
        CountLog.Read(new(_log, content), new()).Entries.Any(e => e.Entry.Id == entry.Id) ? Result.Of("")
        : Count(content, new()).ProblemWith(entry) is { } problem ? new Failure(problem)
        : Result.Of(entry.Line()));

    private BatchCount Count(string content, FindingBag findings) =>
        BatchCount.Of(batch, Cards, CountLog.Read(new SourceText(_log, content), findings), findings);
}
