using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace Sketch.Preview.Server;

/// <summary>
/// Reads any string that a browser can hold: a lone surrogate, which JSON can escape but no text can contain, becomes U+FFFD.
/// </summary>
internal sealed partial class WholeText : JsonConverter<string>
{
    /// <summary>So that a list in a request has no missing strings.</summary>
    public override bool HandleNull => true;

    /// <inheritdoc/>
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.String)
        {
            throw new JsonException("A string is expected.");
        }

        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            return Corrected(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan);
        }
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteStringValue(value);

    private static string Corrected(ReadOnlySpan<byte> escaped)
    {
        try
        {
            var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(escaped);
            using var corrected = JsonDocument.Parse(
                $"\"{Escape().Replace(text, e => e.Groups["half"].Success ? @"\ufffd" : e.Value)}\"");
            return corrected.RootElement.GetString()!;
        }
        catch (DecoderFallbackException broken)
        {
            throw new JsonException("The text is not UTF-8.", broken);
        }
    }

    /// <summary>An escape in JSON: a surrogate pair, a lone surrogate, or any other.</summary>
    [GeneratedRegex(@"\\(u[dD][89abAB]..\\u[dD][c-fC-F]..|(?<half>u[dD][89a-fA-F]..)|.)", RegexOptions.ExplicitCapture)]
    private static partial Regex Escape();
}
