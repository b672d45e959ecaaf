using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Panels;

namespace Sketch.Reports;

/// <summary>
/// The size list as JSON: one entry for each physical piece. It is written piece by piece rather than from records, since a file may have
/// a hundred thousand pieces and only part of their text should be held at a time.
/// </summary>
public static class SizeJson
{
    /// <summary>
    /// Writes one file's object: its card, base, pieces and findings. A file without a card has null for both and no pieces.
    /// </summary>
    /// <param name="json">Where to.</param>
    /// <param name="file">The path of the file.</param>
    /// <param name="laidOut">Its card, or null.</param>
    /// <param name="findings">Its findings.</param>
    /// <param name="marks">Marks per inch for the ruler's text: 16, 32 or 64.</param>
    public static void Write(Utf8JsonWriter json, string file, LaidOutCard? laidOut, ImmutableArray<Finding> findings, int marks = 16)
    {
        json.WriteStartObject();
        json.WriteString("file", file);
        json.WriteString("card", laidOut?.Title);
        if (laidOut is { } card)
        {
            WriteBase(json, card.Base, marks);
        }
        else
        {
            json.WriteNull("base");
        }

        json.WriteStartArray("pieces");
        foreach (var entry in laidOut is null ? [] : SizeList.Of(laidOut).Entries)
        {
            WriteEntry(json, entry, marks);
            json.FlushIfMuch();
        }

        json.WriteEndArray();
        FindingsJson.Write(json, findings);
        json.WriteEndObject();
    }

    private static void WriteBase(Utf8JsonWriter json, CardBase card, int marks)
    {
        json.WriteStartObject("base");
        json.WriteLength("width", card.Closed.Width, marks);
        json.WriteLength("height", card.Closed.Height, marks);
        json.WriteLength("flatWidth", card.Flat.Width, marks);
        json.WriteLength("flatHeight", card.Flat.Height, marks);
        json.WriteString("fold", card.Fold.ToString().ToLowerInvariant());
        json.WriteEndObject();
    }

    /// <summary>A value too small to show is 0 without a sign.</summary>
    private static string Degrees(double degrees) => ((decimal)Math.Round(degrees, 6)).ToString("0.######", CultureInfo.InvariantCulture);

    private static void WriteEntry(Utf8JsonWriter json, SizeEntry entry, int marks)
    {
        json.WriteStartObject();
        json.WriteString("path", entry.Path.ToString());
        json.WriteString("face", Face.NameOf(entry.Face));
        json.WriteString("kind", entry.KindWord);
        json.WriteString("role", entry.Paint.Role);
        json.WriteString("paper", PaperText.Of(entry.Paint));
        json.WriteNumber("count", 1);
        json.WriteNumber("parts", entry.Parts);
        json.WriteSize("cut", entry.Cut, marks);
        json.WriteSize("finished", entry.Finished, marks);
        if (entry.Border is { } border)
        {
            json.WriteStartObject("border");
            json.WriteLength("left", border.Left, marks);
            json.WriteLength("right", border.Right, marks);
            json.WriteLength("top", border.Top, marks);
            json.WriteLength("bottom", border.Bottom, marks);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("border");
        }

        json.WriteStartObject("place");
        json.WriteLength("left", entry.Place.Left, marks);
        json.WriteLength("top", entry.Place.Top, marks);
        json.WriteEndObject();
        json.WriteNumberText("turn", Degrees(entry.Turn));
        json.WriteLength("raised", entry.Raised.Nanometres == 0 ? null : entry.Raised, marks);
        json.WriteEndObject();
    }
}
