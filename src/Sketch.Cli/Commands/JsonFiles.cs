using System.Collections.Immutable;
using System.Text.Json;

namespace Sketch.Cli.Commands;

/// <summary>The frame of every JSON document: one object with the property <c>files</c>.</summary>
internal static class JsonFiles
{
    /// <summary>Writes the frame with one object per file, in the order of the command line.</summary>
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
}
