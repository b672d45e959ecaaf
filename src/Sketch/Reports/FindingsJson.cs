using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>Findings as JSON.</summary>
public static class FindingsJson
{
    /// <summary>Writes the property <c>findings</c>: lines and columns from 1, the end exclusive. <c>replacement</c> is there where the hint
    /// is plainly a text to put in place of what is marked.</summary>
    public static void Write(Utf8JsonWriter json, ImmutableArray<Finding> findings)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            var (start, end) = (finding.Location.Start, finding.Location.End);
            json.WriteStartObject();
            json.WriteString("file", finding.Location.Source.Path);
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

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
