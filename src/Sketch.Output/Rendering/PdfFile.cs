using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Sketch.Output.Rendering;

/// <summary>An object of a PDF.</summary>
/// <param name="Head">Its text; where it has data, the dictionary before them.</param>
/// <param name="Data">Its data as the file holds them; null for an object without.</param>
internal sealed partial record PdfObject(string Head, ReadOnlyMemory<byte>? Data = null)
{
    /// <summary>An object with a drawing or table that is not compressed.</summary>
    public PdfObject WithPlain(byte[] data) => new($"{FilterAndLength().Replace(Head, "").TrimEnd()[..^2].TrimEnd()}>>", data);

    /// <summary>The drawing or table that it holds.</summary>
    public byte[] Unpacked()
    {
        var data = Data ?? default;
        if (!Head.Contains("/FlateDecode", StringComparison.Ordinal))
        {
            return data.ToArray();
        }

        using var zip = new ZLibStream(new MemoryStream(data.ToArray()), CompressionMode.Decompress);
        using var result = new MemoryStream();
        zip.CopyTo(result);
        return result.ToArray();
    }

    [GeneratedRegex(@"\n?/Filter /FlateDecode|\n?/Length \d+\b")]
    private static partial Regex FilterAndLength();
}

/// <summary>The objects of a PDF that Skia wrote, to be changed and written again.</summary>
/// <param name="Objects">The objects; the one at index 0 has the number 1.</param>
/// <param name="Trailer">The dictionary that names the catalogue and the information about the document.</param>
internal sealed partial record PdfFile(List<PdfObject> Objects, string Trailer)
{
    /// <summary>Reads a file.</summary>
    /// <exception cref="InvalidOperationException">It is not built as Skia builds it.</exception>
    public static PdfFile Read(ReadOnlyMemory<byte> pdf)
    {
        var bytes = pdf.Span;
        var (start, trailer) = (bytes.LastIndexOf("startxref\n"u8), bytes.LastIndexOf("trailer"u8));
        if (start < 0 || trailer < 0)
        {
            throw Unknown();
        }

        var dictionary = Text(bytes[(trailer + "trailer".Length)..start]).Trim();
        var places = Text(bytes[(start + "startxref\n".Length)..]).Split('\n')[0];
        return new(ReadObjects(pdf, Text(bytes[int.Parse(places, CultureInfo.InvariantCulture)..trailer]), dictionary), dictionary);
    }

    /// <summary>The number of the catalogue.</summary>
    public int Catalogue => Number(CatalogueOf().Match(Trailer));

    /// <summary>The number of the object that says who made the document.</summary>
    public int Information => Number(InformationOf().Match(Trailer));

    /// <summary>The object of a number.</summary>
    public PdfObject this[int number]
    {
        get => Objects[number - 1];
        set => Objects[number - 1] = value;
    }

    /// <summary>Adds an object without data.</summary>
    /// <returns>Its number.</returns>
    public int Add(string text)
    {
        Objects.Add(new(text));
        return Objects.Count;
    }

    // By their numbers, from 1.
    private static List<PdfObject> ReadObjects(ReadOnlyMemory<byte> pdf, string table, string trailer)
    {
        var objects = new List<PdfObject>();
        var size = Number(SizeOfTable().Match(trailer));
        var lines = table.Split('\n', size + 3);
        for (var i = 1; i < size; i++)
        {
            var begin = Encoding.Latin1.GetBytes($"{i.ToString(CultureInfo.InvariantCulture)} 0 obj\n");
            if (!int.TryParse(lines[2 + i].AsSpan(0, 10), CultureInfo.InvariantCulture, out var place)
                || !pdf.Span[place..].StartsWith(begin))
            {
                throw Unknown();
            }

            objects.Add(Content(pdf[(place + begin.Length)..]));
        }

        return objects;
    }

    private static PdfObject Content(ReadOnlyMemory<byte> rest)
    {
        var end = rest.Span.IndexOf("endobj"u8);
        var stream = rest.Span[..end].IndexOf("stream\n"u8);
        if (stream < 0)
        {
            return new(Text(rest.Span[..end]).TrimEnd());
        }

        var head = Text(rest.Span[..stream]);
        return new(head.TrimEnd(), rest.Slice(stream + "stream\n".Length, Number(LengthOfStream().Match(head))));
    }

    private static string Text(ReadOnlySpan<byte> bytes) => Encoding.Latin1.GetString(bytes);

    private static int Number(Match match) => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);

    private static InvalidOperationException Unknown() => new("Skia built the PDF in an unknown way.");

    [GeneratedRegex(@"/Size (\d+)")]
    private static partial Regex SizeOfTable();

    [GeneratedRegex(@"/Root (\d+) 0 R")]
    private static partial Regex CatalogueOf();

    [GeneratedRegex(@"/Info (\d+) 0 R")]
    private static partial Regex InformationOf();

    [GeneratedRegex(@"/Length (\d+)\b")]
    private static partial Regex LengthOfStream();
}
