using System.Text.Json;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>Explanations of findings as JSON.</summary>
public static class ExplanationJson
{
    /// <summary>
    /// Writes <c>{"findings":[{"code","severity","title","meaning",
    /// "example":{"files":[{"name","text"}],"command"},"remedy","fix":{…}}]}</c>.
    /// </summary>
    public static void Write(Utf8JsonWriter json, IEnumerable<Explanation> explanations)
    {
        json.WriteStartObject();
        json.WriteStartArray("findings");
        foreach (var explanation in explanations)
        {
            json.WriteStartObject();
            json.WriteString("code", explanation.Kind.Code);
            json.WriteString("severity", FindingsText.NameOf(explanation.Kind.Severity));
            json.WriteString("title", explanation.Kind.Title);
            json.WriteString("meaning", explanation.Meaning);
            Write(json, "example", explanation.Example);
            json.WriteString("remedy", explanation.Remedy);
            Write(json, "fix", explanation.Fix);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Example example)
    {
        json.WriteStartObject(name);
        json.WriteStartArray("files");
        foreach (var file in example.Files)
        {
            json.WriteStartObject();
            json.WriteString("name", file.Name);
            json.WriteString("text", file.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("command", example.Command);
        json.WriteEndObject();
    }
}
