using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Sketch.Output.Rendering;

/// <summary>The objects of a PDF that Skia wrote, to be changed and written again.</summary>
/// <param name="Objects">The text of each object, one byte a character; the object at index 0 has the number 1.</param>
/// <param name="Trailer">The dictionary that names the catalogue and the information about the document.</param>
internal sealed partial record PdfFile(List<string> Objects, string Trailer)
{
    /// <summary>What begins the data of an object.</summary>
    public const string StreamBegin = "stream\n";

    /// <summary>What begins and ends the data of an object, and the object.</summary>
    public const string StreamEnd = "\nendstream\nendobj\n";

    /// <summary>The first lines of a file: PDF 1.6, whose viewers know about scaling in print; then bytes that no text has.</summary>
    public const string Begin = "%PDF-1.6\n%\u00e2\u00e3\u00cf\u00d3\n";

    /// <summary>Reads a file; null if it is not built as Skia builds it.</summary>
    public static PdfFile? Read(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var start = text.LastIndexOf("startxref", StringComparison.Ordinal);
        var trailer = text.LastIndexOf("trailer", StringComparison.Ordinal);
        return start >= 0 && trailer >= 0 && ReadObjects(text, text[trailer..start]) is { } objects
            ? new(objects, text[(trailer + "trailer".Length)..start].Trim()) : null;
    }

    /// <summary>The number of the catalogue.</summary>
    public int Catalogue => Number(CatalogueOf().Match(Trailer));

    /// <summary>The number of the object that says who made the document.</summary>
    public int Information => Number(InformationOf().Match(Trailer));

    /// <summary>The object of a number.</summary>
    public string this[int number]
    {
        get => Objects[number - 1];
        set => Objects[number - 1] = value;
    }

    /// <summary>Adds an object.</summary>
    /// <returns>Its number.</returns>
    public int Add(string content)
    {
        Objects.Add(content);
        return Objects.Count;
    }

    /// <summary>Writes the objects one after the other.</summary>
    public byte[] Write()
    {
        using var file = new MemoryStream();
        Text(Begin);
        var places = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {Objects.Count + 1}\n0000000000 65535 f \n"));
        for (var i = 1; i <= Objects.Count; i++)
        {
            places.Append(CultureInfo.InvariantCulture, $"{file.Length:0000000000} 00000 n \n");
            Text($"{i.ToString(CultureInfo.InvariantCulture)} 0 obj\n{this[i]}");
            Text(IsStream(this[i]) ? StreamEnd : "\nendobj\n");
        }

        var at = file.Length;
        var trailer = SizeOfTable().Replace(Trailer, $"/Size {(Objects.Count + 1).ToString(CultureInfo.InvariantCulture)}");
        Text(string.Create(CultureInfo.InvariantCulture, $"{places}trailer\n{trailer}\nstartxref\n{at}\n%%EOF\n"));
        return file.ToArray();

        void Text(string text) => file.Write(Encoding.Latin1.GetBytes(text));
    }

    /// <summary>Whether an object has data.</summary>
    public static bool IsStream(string content) => content.Contains(StreamBegin, StringComparison.Ordinal);

    /// <summary>The drawing or table that an object holds.</summary>
    public static string Unpacked(string content)
    {
        var (head, data) = Parts(content);
        return head.Contains("/FlateDecode", StringComparison.Ordinal)
            ? Encoding.Latin1.GetString(Unzip(Encoding.Latin1.GetBytes(data))) : data;
    }

    /// <summary>The object with another drawing or table in it, compressed.</summary>
    public static string Repacked(string content, string data)
    {
        var head = FilterAndLength().Replace(Parts(content).Head, "").TrimEnd();
        var zipped = Zip(Encoding.Latin1.GetBytes(data));
        return $"{head[..^2].TrimEnd()}\n/Filter /FlateDecode\n/Length {zipped.Length.ToString(CultureInfo.InvariantCulture)}>>\n"
            + StreamBegin + Encoding.Latin1.GetString(zipped);
    }

    /// <summary>The dictionary of an object with data, and the data.</summary>
    public static (string Head, string Data) Parts(string content)
    {
        var stream = content.IndexOf(StreamBegin, StringComparison.Ordinal);
        return (content[..stream], content[(stream + StreamBegin.Length)..]);
    }

    /// <summary>Compresses data as much as can be.</summary>
    public static byte[] Zip(byte[] data)
    {
        using var result = new MemoryStream();
        using (var zip = new ZLibStream(result, CompressionLevel.SmallestSize))
        {
            zip.Write(data);
        }

        return result.ToArray();
    }

    private static byte[] Unzip(byte[] data)
    {
        using var zip = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress);
        using var result = new MemoryStream();
        zip.CopyTo(result);
        return result.ToArray();
    }

    // By their numbers, from 1; null where the table of places is not as expected.
    private static List<string>? ReadObjects(string text, string trailer)
    {
        var objects = new List<string>();
        var size = Number(SizeOfTable().Match(trailer));
        var last = text.LastIndexOf("startxref", StringComparison.Ordinal) + "startxref\n".Length;
        var at = int.Parse(text[last..].Split('\n')[0], CultureInfo.InvariantCulture);
        var lines = text[at..].Split('\n', size + 3);
        for (var i = 1; i < size; i++)
        {
            if (!int.TryParse(lines[2 + i].AsSpan(0, 10), CultureInfo.InvariantCulture, out var place))
            {
                return null;
            }

            var begin = $"{i.ToString(CultureInfo.InvariantCulture)} 0 obj\n";
            if (string.CompareOrdinal(text, place, begin, 0, begin.Length) != 0)
            {
                return null;
            }

            objects.Add(Content(text, place + begin.Length));
        }

        return objects;
    }

    private static string Content(string text, int from)
    {
        var end = text.IndexOf("endobj", from, StringComparison.Ordinal);
        var stream = text.IndexOf(StreamBegin, from, StringComparison.Ordinal);
        if (stream < 0 || stream > end)
        {
            return text[from..end].TrimEnd();
        }

        var length = Number(LengthOfStream().Match(text[from..stream]));
        return text[from..(stream + StreamBegin.Length + length)];
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/Size (\d+)")]
    private static partial Regex SizeOfTable();

    [GeneratedRegex(@"/Root (\d+) 0 R")]
    private static partial Regex CatalogueOf();

    [GeneratedRegex(@"/Info (\d+) 0 R")]
    private static partial Regex InformationOf();

    [GeneratedRegex(@"/Length (\d+)\b")]
    private static partial Regex LengthOfStream();

    [GeneratedRegex(@"\n?/Filter /FlateDecode|\n?/Length \d+\b")]
    private static partial Regex FilterAndLength();
}
