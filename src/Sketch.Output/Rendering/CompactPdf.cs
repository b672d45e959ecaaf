using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Sketch.Output.Rendering;

/// <summary>
/// Writes a PDF of Skia anew in less room: small objects together in compressed streams (PDF 1.5, 7.5.7 and 7.5.8), and the points of
/// outlines to a hundredth of a point on the page.
/// </summary>
public static partial class CompactPdf
{
    private const int ObjectsPerStream = 200;
    private const int Decimals = 2;
    private const int MostDecimals = 5;
    private const string StreamBegin = "stream\n";

    /// <summary>The same document; the file itself if it is not built as Skia builds it.</summary>
    public static byte[] Of(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var start = text.LastIndexOf("startxref", StringComparison.Ordinal);
        var trailer = text.LastIndexOf("trailer", StringComparison.Ordinal);
        if (start < 0 || trailer < 0 || Objects(text, text[trailer..start]) is not { } objects)
        {
            return pdf;
        }

        using var writer = new Writer(objects, text[(trailer + "trailer".Length)..start]);
        return writer.Write();
    }

    // By their numbers, from 1; null where the table of places is not as expected.
    private static List<string>? Objects(string text, string trailer)
    {
        var objects = new List<string>();
        var size = int.Parse(SizeOfTable().Match(trailer).Groups[1].Value, CultureInfo.InvariantCulture);
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

        var length = int.Parse(LengthOfStream().Match(text[from..stream]).Groups[1].Value, CultureInfo.InvariantCulture);
        return text[from..(stream + StreamBegin.Length + length)];
    }

    private sealed class Writer(List<string> objects, string trailer) : IDisposable
    {
        private readonly MemoryStream _file = new();
        private readonly (int Type, long Place, int Index)[] _places = new (int, long, int)[objects.Count + 1];

        public void Dispose() => _file.Dispose();

        public byte[] Write()
        {
            Text("%PDF-1.5\n%\u00e2\u00e3\u00cf\u00d3\n");
            var info = Number(InfoOf().Match(trailer));
            // Who made the file is read from its beginning.
            Plain(info);
            var small = new List<int>();
            for (var i = 1; i <= objects.Count; i++)
            {
                if (i == info)
                {
                    continue;
                }

                if (objects[i - 1].Contains(StreamBegin, StringComparison.Ordinal))
                {
                    Plain(i);
                }
                else
                {
                    small.Add(i);
                }
            }

            var places = _places.ToList();
            foreach (var group in small.Chunk(ObjectsPerStream))
            {
                var number = places.Count;
                places.Add((1, _file.Length, 0));
                for (var i = 0; i < group.Length; i++)
                {
                    places[group[i]] = (2, number, i);
                }

                Together(number, group);
            }

            Table(places);
            return _file.ToArray();
        }

        private void Plain(int number)
        {
            _places[number] = (1, _file.Length, 0);
            Text($"{number.ToString(CultureInfo.InvariantCulture)} 0 obj\n");
            var content = objects[number - 1];
            var stream = content.IndexOf(StreamBegin, StringComparison.Ordinal);
            if (stream < 0)
            {
                Text(content + "\nendobj\n");
                return;
            }

            var (head, data) = (content[..stream], Encoding.Latin1.GetBytes(content[(stream + StreamBegin.Length)..]));
            var isDrawing = !IsData().IsMatch(head);
            if (isDrawing)
            {
                var drawing = Encoding.Latin1.GetString(head.Contains("/FlateDecode", StringComparison.Ordinal) ? Unzip(data) : data);
                data = Zip(Encoding.Latin1.GetBytes(Rounded(drawing)));
                head = FilterAndLength().Replace(head, "").TrimEnd();
                head = $"{head[..^2].TrimEnd()}\n/Filter /FlateDecode\n/Length {data.Length.ToString(CultureInfo.InvariantCulture)}>>\n";
            }

            Text(head + StreamBegin);
            _file.Write(data);
            Text("\nendstream\nendobj\n");
        }

        private void Together(int number, int[] group)
        {
            var (heads, contents) = (new StringBuilder(), new StringBuilder());
            foreach (var one in group)
            {
                heads.Append(CultureInfo.InvariantCulture, $"{one} {contents.Length} ");
                contents.Append(objects[one - 1]).Append('\n');
            }

            var data = Zip(Encoding.Latin1.GetBytes($"{heads}{contents}"));
            Text(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<</Type /ObjStm\n/N {group.Length}\n/First {heads.Length}\n")
                + string.Create(CultureInfo.InvariantCulture, $"/Filter /FlateDecode\n/Length {data.Length}>>\n{StreamBegin}"));
            _file.Write(data);
            Text("\nendstream\nendobj\n");
        }

        // Each entry: its type in one byte, its place in four, its index in two.
        private void Table(List<(int Type, long Place, int Index)> places)
        {
            var (number, at) = (places.Count, _file.Length);
            places.Add((1, at, 0));
            var entries = new byte[places.Count * 7];
            for (var i = 0; i < places.Count; i++)
            {
                var (type, place, index) = i == 0 ? (0, 0, 0xFFFF) : places[i];
                entries[i * 7] = (byte)type;
                System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(entries.AsSpan(i * 7 + 1), (uint)place);
                System.Buffers.Binary.BinaryPrimitives.WriteUInt16BigEndian(entries.AsSpan(i * 7 + 5), (ushort)index);
            }

            var data = Zip(entries);
            var kept = SizeOfTable().Replace(trailer.Trim(), "").Replace("<<", "", StringComparison.Ordinal);
            kept = kept[..kept.LastIndexOf(">>", StringComparison.Ordinal)].Trim();
            Text(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<</Type /XRef\n/Size {places.Count}\n/W [1 4 2]\n{kept}\n")
                + string.Create(CultureInfo.InvariantCulture, $"/Filter /FlateDecode\n/Length {data.Length}>>\n{StreamBegin}"));
            _file.Write(data);
            Text(string.Create(CultureInfo.InvariantCulture, $"\nendstream\nendobj\nstartxref\n{at}\n%%EOF\n"));
        }

        private void Text(string text) => _file.Write(Encoding.Latin1.GetBytes(text));

        private static int Number(Match match) => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
    }

    /// <summary>The points of outlines rounded, so that none moves by more than half a hundredth of a point on the page.</summary>
    private static string Rounded(string drawing)
    {
        var result = new StringBuilder(drawing.Length);
        var (scale, outer) = (1.0, new Stack<double>());
        foreach (var line in drawing.Split('\n'))
        {
            if (line == "q")
            {
                outer.Push(scale);
            }
            else if (line == "Q" && outer.Count > 0)
            {
                scale = outer.Pop();
            }
            else if (line.EndsWith(" cm", StringComparison.Ordinal))
            {
                var matrix = line.Split(' ').Take(4).Select(n => Math.Abs(double.Parse(n, CultureInfo.InvariantCulture))).ToList();
                scale *= Math.Max(matrix[0] + matrix[2], matrix[1] + matrix[3]);
            }

            result.Append(Outline().IsMatch(line) ? Rounded(line, scale) : line).Append('\n');
        }

        return result.ToString(0, result.Length - 1);
    }

    private static string Rounded(string line, double scale)
    {
        var decimals = Math.Clamp(Decimals + (int)Math.Ceiling(Math.Log10(Math.Max(scale, 1e-3))), 0, MostDecimals);
        return Fraction().Replace(line, m => Short(Math.Round(double.Parse(m.Value, CultureInfo.InvariantCulture), decimals)));
    }

    private static string Short(double number)
    {
        var text = (number == 0 ? 0 : number).ToString("0.#####", CultureInfo.InvariantCulture);
        return text.StartsWith("0.", StringComparison.Ordinal) ? text[1..]
            : text.StartsWith("-0.", StringComparison.Ordinal) ? "-" + text[2..] : text;
    }

    private static byte[] Zip(byte[] data)
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

    [GeneratedRegex(@"/Size (\d+)")]
    private static partial Regex SizeOfTable();

    [GeneratedRegex(@"/Info (\d+) 0 R")]
    private static partial Regex InfoOf();

    [GeneratedRegex(@"/Length (\d+)\b")]
    private static partial Regex LengthOfStream();

    [GeneratedRegex(@"\n?/Filter /FlateDecode|\n?/Length \d+\b")]
    private static partial Regex FilterAndLength();

    // Fonts, pictures and the meaning of glyphs are kept as they are.
    [GeneratedRegex(@"/Subtype /Image|/Length1|/Type1C|/OpenType|/CIDFontType0C|/ShadingType|/FunctionType|/DecodeParms|/Metadata")]
    private static partial Regex IsData();

    [GeneratedRegex(@"^[-\d. ]+ (m|l|c|v|y|re)$")]
    private static partial Regex Outline();

    [GeneratedRegex(@"-?\d*\.\d+")]
    private static partial Regex Fraction();
}
