using System.Text.Json;
using System.Text.Json.Serialization;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>Writes each length of a record as <see cref="ReportJson.WriteLengthValue"/> does.</summary>
public sealed class LengthConverter : JsonConverter<Length>
{
    /// <inheritdoc/>
    public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Reports are only written.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) => writer.WriteLengthValue(value);
}
