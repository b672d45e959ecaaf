using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>Findings as JSON.</summary>
public static class FindingsJson
{
    /// <summary>Writes the property <c>findings</c>, each file called by its path.</summary>
    public static void Write(Utf8JsonWriter json, ImmutableArray<Finding> findings)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            WriteMembers(json, finding, finding.Location.Source.Path);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes what an object tells of a finding: lines and columns from 1, the end exclusive. <c>replacement</c> is there where
    /// the hint is plainly a text to put in place of what is marked.</summary>
    /// <param name="json">Where to, within an object.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="file">What its file is called.</param>
    public static void WriteMembers(Utf8JsonWriter json, Finding finding, string file)
    {
        var (start, end) = (finding.Location.Start, finding.Location.End);
        json.WriteString("file", file);
        json.WriteString("code", finding.Code);
        json.WriteString("severity", FindingsText.NameOf(finding.Severity));
        json.WriteString("message", finding.Message);
        json.WriteString("hint", finding.Hint);
        json.WriteNumber("line", start.Line);
        json.WriteNumber("column", start.Column);
        json.WriteNumber("endLine", end.Line);
        json.WriteNumber("endColumn", end.Column);
        if (finding.Replacement is { } replacement)
        {
            json.WriteString("replacement", replacement);
        }
    }
}
