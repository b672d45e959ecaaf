using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Planning.Demand;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Planning.Plans;

/// <summary>Checks a batch together with the stash and the cards that it names, without planning a sheet.</summary>
public static class BatchCheck
{
    /// <summary>
    /// A compiled file; for a batch, with all findings in it and in the files that it names, and with those of what does not
    /// go together.
    /// </summary>
    /// <param name="file">The file.</param>
    /// <param name="world">Reads the files that it names.</param>
    /// <param name="compile">Compiles a file that it names; null to compile each.</param>
    public static Compilation Of(Compilation file, IWorld world, Func<SourceText, Compilation>? compile = null)
    {
        if (file.Batch is null)
        {
            return file;
        }

        var findings = new FindingBag();
        if (BatchFiles.Read(file, world, findings, compile ?? (s => Compiler.Compile(s, world))) is { HasWork: true } files)
        {
            OrderFindings.Report(files, findings);
        }

        return file with { Findings = Shown(findings, file.Source) };
    }

    /// <summary>Reports what concerns the recipients of a batch that is planned together with others.</summary>
    public static void Recipients(BatchFiles files, FindingBag findings) => new OrderFindings(files, findings).Recipients();

    /// <summary>The findings shown for a batch: notes on a card or stash belong to the check of that file.</summary>
    public static ImmutableArray<Finding> Shown(FindingBag findings, params ReadOnlySpan<SourceText> batches)
    {
        var own = batches.ToArray();
        return [.. findings.ToImmutable().Where(f => f.Severity != Severity.Note || own.Contains(f.Location.Source))];
    }
}
