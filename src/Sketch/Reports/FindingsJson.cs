using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>Findings as JSON.</summary>
public static class FindingsJson
{
    /// <summary>Writes the property <c>findings</c>, with each file named by its path.</summary>
    public static void Write(Utf8JsonWriter json, ImmutableArray<Finding> findings)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            JsonSerializer.Serialize(json, FindingRecord.Of(finding, finding.Location.Source.Path), ReportRecords.Default.FindingRecord);
        }

        json.WriteEndArray();
    }
}
