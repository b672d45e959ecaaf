using System.Text.Encodings.Web;
using System.Text.Json;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>The parts that all JSON reports share.</summary>
public static class ReportJson
{
    /// <summary>
    /// Writes one JSON document to a text output, indented, with letters of all scripts unescaped, and followed by a line end.
    /// </summary>
    public static void WriteDocument(TextWriter output, Action<Utf8JsonWriter> write)
    {
        using var stream = new Utf8TextStream(output);
        using (var json = new Utf8JsonWriter(
            stream, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            write(json);
        }

        output.Write('\n');
    }

    /// <summary>Flushes the pending text if it is long; to be called now and then in a long list.</summary>
    internal static void FlushIfMuch(this Utf8JsonWriter json)
    {
        if (json.BytesPending > 1 << 16)
        {
            json.Flush();
        }
    }

    /// <summary>Writes a length as <c>{"mm": 69.85, "in": 2.75, "ruler": "2 3/4"}</c>, or null.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="name">The property's name.</param>
    /// <param name="length">The length.</param>
    /// <param name="marks">Marks per inch for the ruler's text: 16, 32 or 64.</param>
    public static void WriteLength(this Utf8JsonWriter json, string name, Length? length, int marks = 16)
    {
        if (length is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WritePropertyName(name);
        json.WriteLengthValue(known, marks);
    }

    /// <summary>Writes a length as an object, in place of a value.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="length">The length.</param>
    /// <param name="marks">Marks per inch for the ruler's text: 16, 32 or 64.</param>
    public static void WriteLengthValue(this Utf8JsonWriter json, Length length, int marks = 16)
    {
        json.WriteStartObject();
        json.WriteNumberText("mm", LengthFormat.MillimetreNumber(length, 6));
        json.WriteNumberText("in", LengthFormat.InchNumber(length));
        json.WriteString("ruler", LengthFormat.Ruler(length, marks));
        json.WriteEndObject();
    }

    /// <summary>Writes width and height as an object, or null.</summary>
    public static void WriteSize(this Utf8JsonWriter json, string name, Size? size, int marks = 16)
    {
        if (size is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteLength("width", known.Width, marks);
        json.WriteLength("height", known.Height, marks);
        json.WriteEndObject();
    }

    /// <summary>Writes text that already is a number.</summary>
    internal static void WriteNumberText(this Utf8JsonWriter json, string name, string number)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(number, skipInputValidation: true);
    }
}
