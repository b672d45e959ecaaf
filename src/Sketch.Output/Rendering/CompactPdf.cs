using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Sketch.Output.Rendering;

/// <summary>
/// Writes a PDF of Skia anew in less room: small objects together in compressed streams (PDF 1.5, 7.5.7 and 7.5.8), and the points of
/// outlines to a hundredth of a point on the page.
/// </summary>
internal static partial class CompactPdf
{
    // PDF 1.6, whose viewers know about scaling in print; then bytes that no text has.
    private const string Begin = "%PDF-1.6\n%\u00e2\u00e3\u00cf\u00d3\n";
    private const string StreamBegin = "stream\n";
    private const string StreamEnd = "\nendstream\nendobj\n";
    private const int ObjectsPerStream = 200;

    /// <summary>Writes a document.</summary>
    /// <param name="pdf">The document.</param>
    /// <param name="output">Receives the file.</param>
    /// <param name="cancellation">Stops between two objects.</param>
    public static void Write(PdfFile pdf, Stream output, CancellationToken cancellation) =>
        new Writer(pdf, output, cancellation).Write();

    private sealed class Writer(PdfFile pdf, Stream file, CancellationToken cancellation)
    {
        private readonly (int Type, long Place, int Index)[] _places = new (int, long, int)[pdf.Objects.Count + 1];
        private long _length;

        public void Write()
        {
            Text(Begin);
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

                if (pdf[i].Data is not null)
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
                places.Add((1, _length, 0));
                for (var i = 0; i < group.Length; i++)
                {
                    places[group[i]] = (2, number, i);
                }

                Together(number, group);
            }

            Table(places);
        }

        private void Plain(int number)
        {
            cancellation.ThrowIfCancellationRequested();
            _places[number] = (1, _length, 0);
            var content = pdf[number];
            if (content.Data is not { } data)
            {
                Text($"{number.ToString(CultureInfo.InvariantCulture)} 0 obj\n{content.Head}\nendobj\n");
            }
            else if (IsData().IsMatch(content.Head))
            {
                Text($"{number.ToString(CultureInfo.InvariantCulture)} 0 obj\n{content.Head}\n{StreamBegin}");
                Bytes(data.Span);
                Text(StreamEnd);
            }
            else
            {
                var drawing = RoundedDrawing.Of(content.Unpacked());
                Packed(number, content.WithPlain([]).Head[..^2], drawing);
            }
        }

        private void Together(int number, int[] group)
        {
            var (heads, contents) = (new StringBuilder(), new StringBuilder());
            foreach (var one in group)
            {
                heads.Append(CultureInfo.InvariantCulture, $"{one} {contents.Length} ");
                contents.Append(pdf[one].Head).Append('\n');
            }

            Packed(number, string.Create(CultureInfo.InvariantCulture, $"<</Type /ObjStm\n/N {group.Length}\n/First {heads.Length}"),
                Encoding.Latin1.GetBytes($"{heads}{contents}"));
        }

        // Each entry: its type in one byte, its place in four, its index in two.
        private void Table(List<(int Type, long Place, int Index)> places)
        {
            var (number, at) = (places.Count, _length);
            places.Add((1, at, 0));
            var entries = new byte[places.Count * 7];
            for (var i = 0; i < places.Count; i++)
            {
                var (type, place, index) = i == 0 ? (0, 0, 0xFFFF) : places[i];
                entries[i * 7] = (byte)type;
                BinaryPrimitives.WriteUInt32BigEndian(entries.AsSpan(i * 7 + 1), (uint)place);
                BinaryPrimitives.WriteUInt16BigEndian(entries.AsSpan(i * 7 + 5), (ushort)index);
            }

            var kept = SizeOfTable().Replace(pdf.Trailer, "").Replace("<<", "", StringComparison.Ordinal);
            kept = kept[..kept.LastIndexOf(">>", StringComparison.Ordinal)].Trim();
            Packed(
                number, string.Create(CultureInfo.InvariantCulture, $"<</Type /XRef\n/Size {places.Count}\n/W [1 4 2]\n{kept}"), entries);
            Text(string.Create(CultureInfo.InvariantCulture, $"startxref\n{at}\n%%EOF\n"));
        }

        // The dictionary is not yet closed.
        private void Packed(int number, string head, byte[] data)
        {
            using var packed = new MemoryStream();
            // The smallest size takes twice as long and saves a hundredth.
            using (var zip = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            {
                zip.Write(data);
            }

            Text(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n{head}\n/Filter /FlateDecode\n/Length {packed.Length}>>\n"));
            Text(StreamBegin);
            Bytes(packed.GetBuffer().AsSpan(0, (int)packed.Length));
            Text(StreamEnd);
        }

        private void Text(string text) => Bytes(Encoding.Latin1.GetBytes(text));

        private void Bytes(ReadOnlySpan<byte> bytes)
        {
            file.Write(bytes);
            _length += bytes.Length;
        }
    }

    [GeneratedRegex(@"/Size (\d+)")]
    private static partial Regex SizeOfTable();

    // Fonts, pictures and the meaning of glyphs are kept as they are.
    [GeneratedRegex(@"/Subtype /Image|/Length1|/Type1C|/OpenType|/CIDFontType0C|/ShadingType|/FunctionType|/DecodeParms|/Metadata")]
    private static partial Regex IsData();
}
