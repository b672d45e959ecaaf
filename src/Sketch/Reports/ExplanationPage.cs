using System.Collections.Immutable;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>The explanations of all findings as one Markdown page.</summary>
public static class ExplanationPage
{
    private const string Introduction = """
        # Findings

        This page lists every finding that Sketch can report: what it means, an example that gives it, and the corrected example.
        `sketch explain CODE` prints one of them; `sketch explain` lists them all.

        - An **error** stops a file from being read, laid out or made. The command exits with status 1.
        - A **warning** means that the card can be made, but probably not as you want it.
        - A **note** is worth knowing. Often there is nothing to fix.

        Codes are permanent: a retired code is never used again. Unless an example is followed by a command, run `sketch plan` on a batch
        and `sketch check` on anything else; other files that an example names are in this folder. A line `… 60 more` means sixty
        more lines that continue the pattern of the two lines above it. The tests run every example and every fix.

        <!-- Generated: dotnet run --project src/Sketch.Cli -- explain --markdown > sketches/FINDINGS.md -->

        """;

    /// <summary>Writes the page.</summary>
    public static void Write(TextWriter output, ImmutableArray<Explanation> explanations)
    {
        output.Write(Introduction.ReplaceLineEndings("\n") + "\n");
        var groups = explanations.GroupBy(e => FindingCatalogue.GroupOf(e.Kind)).ToList();
        foreach (var group in groups)
        {
            output.Write($"**{group.Key}**\n\n| code | severity | finding |\n| --- | --- | --- |\n");
            foreach (var kind in group.Select(e => e.Kind))
            {
                output.Write($"| [{kind.Code}](#{kind.Code.ToLowerInvariant()}) | {FindingsText.NameOf(kind.Severity)} | {kind.Title} |\n");
            }

            output.Write('\n');
        }

        foreach (var group in groups)
        {
            output.Write($"## {group.Key}\n\n");
            foreach (var explanation in group)
            {
                Write(output, explanation);
            }
        }
    }

    /// <summary>Writes one explanation.</summary>
    public static void Write(TextWriter output, Explanation explanation)
    {
        var kind = explanation.Kind;
        output.Write($"### {kind.Code}\n\n*{FindingsText.NameOf(kind.Severity)}: {kind.Title}*\n\n{explanation.Meaning}\n\n");
        Write(output, explanation.Example);
        output.Write($"**Fix:** {explanation.Remedy}\n\n");
        Write(output, explanation.Fix);
    }

    private static void Write(TextWriter output, Example example)
    {
        foreach (var file in example.Files)
        {
            var caption = file.Name == $"example.{file.Language}" ? "" : $"`{file.Name}`\n\n";
            output.Write($"{caption}```{file.Language}\n{file.Text}```\n\n");
        }

        if (example.Command is { } command)
        {
            output.Write($"```console\n{command}\n```\n\n");
        }
    }
}
