using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Reports;

namespace Sketch.Cli.Commands;

/// <summary>The property <c>files</c> of JSON documents.</summary>
internal static class JsonFiles
{
    /// <summary>Writes a document with that property alone: one object per file, in the order of the command line.</summary>
    public static void WriteFiles<T>(this Utf8JsonWriter json, ImmutableArray<T> files, Action<T> write)
    {
        json.WriteStartObject();
        json.WriteStartArray("files");
        foreach (var file in files)
        {
            write(file);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Writes the property <c>files</c> into an open object: each file with its card and its findings.</summary>
    /// <param name="json">The document.</param>
    /// <param name="files">The files, in the order of the command line.</param>
    /// <param name="further">What was found later; each finding goes to its file.</param>
    public static void WriteCards(this Utf8JsonWriter json, ImmutableArray<Compilation> files, ImmutableArray<Finding> further = default)
    {
        json.WriteStartArray("files");
        foreach (var file in files)
        {
            json.WriteStartObject();
            json.WriteString("file", file.Source.Path);
            json.WriteString("card", file.Card?.Title);
            FindingsJson.Write(json, [.. file.Findings, .. further.IsDefault ? [] : further.Where(f => f.Location.Source == file.Source)]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
