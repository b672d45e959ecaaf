using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Planning;

namespace Sketch.Preview.Views;

/// <summary>A batch with the files that it names.</summary>
public static class BatchView
{
    /// <summary>What is found in a text: for a batch also in the cards and the stash that it names, as they are on the disk.</summary>
    public static ImmutableArray<Finding> FindingsOf(Reading reading, CachedFiles files)
    {
        if (reading.Compilation.Batch is null)
        {
            return reading.Findings;
        }

        var findings = new FindingBag();
        BatchFiles.Read(reading.Source, files, findings);
        // What is only worth knowing about a card is told where the card is open.
        return [.. findings.ToImmutable().Where(f => f.Severity != Severity.Note || f.Location.Source == reading.Source)];
    }
}
