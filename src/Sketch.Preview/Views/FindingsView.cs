using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>Findings for the page: files called by their names in the opened folder, and a replacement where the hint is one.</summary>
public static class FindingsView
{
    /// <summary>
    /// Writes the property <c>findings</c>; errors first, then warnings, then notes, each in the order of lines, those of the text itself
    /// first.
    /// </summary>
    /// <param name="json">Where to.</param>
    /// <param name="findings">What was found.</param>
    /// <param name="source">The text that the window shows.</param>
    /// <param name="folder">The opened folder.</param>
    public static void Write(Utf8JsonWriter json, ImmutableArray<Finding> findings, SourceText source, OpenedFolder folder)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings
            .OrderByDescending(f => f.Severity)
            .ThenBy(f => f.Location.Source == source ? 0 : 1)
            .ThenBy(f => f.Location.Source.Path, StringComparer.Ordinal)
            .ThenBy(f => f.Location.Start.Line)
            .ThenBy(f => f.Location.Start.Column))
        {
            json.WriteStartObject();
            json.WriteBoolean("here", finding.Location.Source == source);
            FindingsJson.WriteMembers(
                json, finding, folder.NameOf(finding.Location.Source.Path) ?? Path.GetFileName(finding.Location.Source.Path));
            if (finding.Replacement is null)
            {
                json.WriteNull("replacement");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("summary", FindingsText.Summary(findings));
    }
}
