using System.Globalization;
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

    /// <summary>The same document; the file itself if it is not built as Skia builds it.</summary>
    public static byte[] Of(byte[] pdf)
    {
        if (PdfFile.Read(pdf) is not { } file)
        {
            return pdf;
        }

        using var writer = new Writer(file);
        return writer.Write();
    }

    private sealed class Writer(PdfFile pdf) : IDisposable
    {
        private readonly MemoryStream _file = new();
        private readonly (int Type, long Place, int Index)[] _places = new (int, long, int)[pdf.Objects.Count + 1];

        public void Dispose() => _file.Dispose();

        public byte[] Write()
        {
            Text(PdfFile.Begin);
            var info = pdf.Information;
            // Who made the file is read from its beginning.
            Plain(info);
            var small = new List<int>();
            for (var i = 1; i <= pdf.Objects.Count; i++)
            {
                if (i == info)
                {
                    continue;
                }

                if (PdfFile.IsStream(pdf[i]))
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
            var content = pdf[number];
            if (!PdfFile.IsStream(content))
            {
                Text(content + "\nendobj\n");
                return;
            }

            var isDrawing = !IsData().IsMatch(PdfFile.Parts(content).Head);
            Text((isDrawing ? PdfFile.Repacked(content, Rounded(PdfFile.Unpacked(content))) : content) + PdfFile.StreamEnd);
        }

        private void Together(int number, int[] group)
        {
            var (heads, contents) = (new StringBuilder(), new StringBuilder());
            foreach (var one in group)
            {
                heads.Append(CultureInfo.InvariantCulture, $"{one} {contents.Length} ");
                contents.Append(pdf[one]).Append('\n');
            }

            var data = PdfFile.Zip(Encoding.Latin1.GetBytes($"{heads}{contents}"));
            Text(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<</Type /ObjStm\n/N {group.Length}\n/First {heads.Length}\n")
                + string.Create(CultureInfo.InvariantCulture, $"/Filter /FlateDecode\n/Length {data.Length}>>\n{PdfFile.StreamBegin}"));
            _file.Write(data);
            Text(PdfFile.StreamEnd);
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

            var data = PdfFile.Zip(entries);
            var kept = SizeOfTable().Replace(pdf.Trailer, "").Replace("<<", "", StringComparison.Ordinal);
            kept = kept[..kept.LastIndexOf(">>", StringComparison.Ordinal)].Trim();
            Text(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<</Type /XRef\n/Size {places.Count}\n/W [1 4 2]\n{kept}\n")
                + string.Create(CultureInfo.InvariantCulture, $"/Filter /FlateDecode\n/Length {data.Length}>>\n{PdfFile.StreamBegin}"));
            _file.Write(data);
            Text(string.Create(CultureInfo.InvariantCulture, $"{PdfFile.StreamEnd}startxref\n{at}\n%%EOF\n"));
        }

        private void Text(string text) => _file.Write(Encoding.Latin1.GetBytes(text));
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

    [GeneratedRegex(@"/Size (\d+)")]
    private static partial Regex SizeOfTable();

    // Fonts, pictures and the meaning of glyphs are kept as they are.
    [GeneratedRegex(@"/Subtype /Image|/Length1|/Type1C|/OpenType|/CIDFontType0C|/ShadingType|/FunctionType|/DecodeParms|/Metadata")]
    private static partial Regex IsData();

    [GeneratedRegex(@"^[-\d. ]+ (m|l|c|v|y|re)$")]
    private static partial Regex Outline();

    [GeneratedRegex(@"-?\d*\.\d+")]
    private static partial Regex Fraction();
}
