using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Planning;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>What is told of a batch and the files that it names.</summary>
public static class BatchFindings
{
    /// <summary>What is found in a text: for a batch also in the cards and the stash that it names, as they are on the disk.</summary>
    public static ImmutableArray<Finding> Of(Reading reading, CachedFiles files)
    {
        if (reading.Compilation.Batch is null)
        {
            return reading.Findings;
        }

        var findings = new FindingBag();
        BatchFiles.Read(reading.Source, files, findings);
        return Told(findings, reading.Source);
    }

    /// <summary>What is told where a batch is open: what is only worth knowing about a card is told where the card is.</summary>
    public static ImmutableArray<Finding> Told(FindingBag findings, SourceText batch) =>
        [.. findings.ToImmutable().Where(f => f.Severity != Severity.Note || f.Location.Source == batch)];
}
