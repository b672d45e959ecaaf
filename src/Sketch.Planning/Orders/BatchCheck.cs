using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Surroundings;
using Sketch.Text;

namespace Sketch.Planning;

/// <summary>Checks a batch together with the stash and the cards that it names, without planning a sheet.</summary>
public static class BatchCheck
{
    /// <summary>
    /// A compiled file as it is; where it is a batch, with all that is found in it and in the files that it names, and with what does not go
    /// together among them.
    /// </summary>
    public static Compilation Of(Compilation file, ISurroundings surroundings)
    {
        if (file.Batch is null)
        {
            return file;
        }

        var findings = new FindingBag();
        if (BatchFiles.Read(file, surroundings, findings) is { HasWork: true } files)
        {
            OrderFindings.Tell(files, findings);
        }

        return file with { Findings = Shown(findings, file.Source) };
    }

    /// <summary>The findings shown for a batch: notes on a card or stash belong to the check of that file.</summary>
    public static ImmutableArray<Finding> Shown(FindingBag findings, SourceText batch) =>
        [.. findings.ToImmutable().Where(f => f.Severity != Severity.Note || f.Location.Source == batch)];
}
