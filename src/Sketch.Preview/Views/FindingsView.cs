using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>Findings for the page: with file names relative to the opened folder, and a replacement where the hint is one.</summary>
public static class FindingsView
{
    /// <summary>
    /// Writes the property <c>findings</c>: errors first, then warnings, then notes, each in line order, with those of the text itself
    /// first.
    /// </summary>
    /// <param name="json">The writer.</param>
    /// <param name="findings">The findings.</param>
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
            var path = finding.Location.Source.Path;
            var name = folder.NameOf(path) ?? Path.GetFileName(path);
            JsonSerializer.Serialize(json, PageFinding.Of(finding, name, source), ViewRecords.Default.PageFinding);
        }

        json.WriteEndArray();
        json.WriteString("summary", FindingsText.Summary(findings));
    }
}

/// <summary>A finding in the form for the page; <c>replacement</c> is null where the hint is not simply one.</summary>
internal sealed record PageFinding : FindingRecord
{
    private PageFinding(Finding finding, string file)
        : base(finding, file)
    {
    }

    /// <summary>Whether it is in the text that the window shows.</summary>
    public bool Here { get; private init; }

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.Never)]
    public override string? Replacement => base.Replacement;

    /// <summary>A finding for the page.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="file">The name of its file in the folder.</param>
    /// <param name="source">The text that the window shows.</param>
    public static PageFinding Of(Finding finding, string file, SourceText source) =>
        new(finding, file) { Here = finding.Location.Source == source };
}

/// <summary>How the records of this namespace are written as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(PageFinding))]
internal sealed partial class ViewRecords : JsonSerializerContext;
