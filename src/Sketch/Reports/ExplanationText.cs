using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>Explanations of findings in plain text.</summary>
public static class ExplanationText
{
    /// <summary>Writes every code with its severity and title, in groups.</summary>
    public static void WriteList(TextWriter output, IEnumerable<FindingKind> kinds)
    {
        foreach (var group in kinds.GroupBy(FindingCatalogue.GroupOf))
        {
            output.Write($"{group.Key}\n");
            foreach (var kind in group)
            {
                output.Write($"  {kind.Code}  {FindingsText.NameOf(kind.Severity),-7}  {kind.Title}\n");
            }

            output.Write('\n');
        }

        output.Write("sketch explain CODE explains a finding and shows how to fix it.\n");
    }

    /// <summary>Writes what a finding means, with its example and the fix.</summary>
    public static void Write(TextWriter output, Explanation explanation)
    {
        var kind = explanation.Kind;
        output.Write($"{kind.Code} ({FindingsText.NameOf(kind.Severity)}): {kind.Title}\n\n{explanation.Meaning}\n\n");
        Write(output, explanation.Example);
        output.Write($"Fix: {explanation.Remedy}\n\n");
        Write(output, explanation.Fix);
    }

    private static void Write(TextWriter output, Example example)
    {
        foreach (var file in example.Files)
        {
            output.Write($"  {file.Name}\n");
            foreach (var line in file.Text.TrimEnd('\n').Split('\n'))
            {
                output.Write(line.Length == 0 ? "\n" : $"    {line}\n");
            }

            output.Write('\n');
        }

        if (example.Command is { } command)
        {
            output.Write($"  {command}\n\n");
        }
    }
}
