using System.Buffers.Binary;
using Sketch.Diagnostics;

namespace Sketch.Output.Pictures;

/// <summary>A photograph or scan of a paper, as its file describes it.</summary>
/// <param name="Width">Pixels from left to right of the upright picture.</param>
/// <param name="Height">Pixels from top to bottom.</param>
/// <param name="Ending">The ending that its kind of file has.</param>
/// <param name="DotsPerInch">Its resolution, as scanners write it; null where the file has none, or only the usual one of screens.</param>
public sealed record ScanFile(int Width, int Height, string Ending, double? DotsPerInch)
{
    // Cameras and screens write 72 or 96, whatever they show.
    private const double LeastDotsPerInch = 100;
    private const double InchesPerMetre = 0.0254;
    private const double CentimetresPerInch = 2.54;

    /// <summary>Reads what a file says of its picture, without decoding it.</summary>
    /// <param name="content">The file.</param>
    /// <returns>The picture; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<ScanFile> Read(byte[] content)
    {
        using var stream = new MemoryStream(content, writable: false);
        return PictureDecoder.Measure(stream).Map(size =>
        {
            var (ending, dots) = content[0] switch
            {
                0x89 => (".png", PngDensity(content)),
                0xFF => (".jpg", JpegDensity(content)),
                _ => (".webp", null),
            };
            return new ScanFile(size.Width, size.Height, ending, dots is >= LeastDotsPerInch ? dots : null);
        });
    }

    /// <summary>The chunk <c>pHYs</c> (PNG specification, 11.3.4.3), which comes before the pixels.</summary>
    private static double? PngDensity(ReadOnlySpan<byte> file)
    {
        const int Signature = 8;
        const int Frame = 12;
        for (var rest = file[Signature..]; rest.Length >= Frame;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(rest);
            if (rest[4..8].SequenceEqual("IDAT"u8) || length > rest.Length - Frame)
            {
                return null;
            }

            if (rest[4..8].SequenceEqual("pHYs"u8) && length == 9)
            {
                return rest[16] == 1 ? BinaryPrimitives.ReadUInt32BigEndian(rest[8..]) * InchesPerMetre : null;
            }

            rest = rest[(Frame + (int)length)..];
        }

        return null;
    }

    /// <summary>The density of the segment JFIF (ITU-T T.871, 10.1), else that of Exif.</summary>
    private static double? JpegDensity(ReadOnlySpan<byte> file)
    {
        double? found = null;
        for (var rest = file[2..]; rest.Length > 4 && rest[0] == 0xFF && rest[1] is >= 0xC0 and < 0xDA or > 0xDA;)
        {
            var length = BinaryPrimitives.ReadUInt16BigEndian(rest[2..]) + 2;
            if (length < 4 || length > rest.Length)
            {
                break;
            }

            var segment = rest[4..length];
            if (rest[1] == 0xE0 && segment.Length >= 12 && segment.StartsWith("JFIF\0"u8) && segment[7] is 1 or 2)
            {
                var density = BinaryPrimitives.ReadUInt16BigEndian(segment[8..]);
                found = segment[7] == 1 ? density : density * CentimetresPerInch;
            }
            else if (rest[1] == 0xE1 && segment.StartsWith("Exif\0\0"u8))
            {
                found = ExifDensity(segment[6..]) ?? found;
            }

            rest = rest[length..];
        }

        return found;
    }

    /// <summary>The tags XResolution and ResolutionUnit of the first directory (Exif 2.32, 4.6.4).</summary>
    private static double? ExifDensity(ReadOnlySpan<byte> tiff)
    {
        const int Entry = 12;
        if (tiff.Length < 8)
        {
            return null;
        }

        var isLittle = tiff[0] == (byte)'I';
        var (at, density, unit) = ((long)Long(tiff, 4), (double?)null, 2);
        for (var left = at + 2 <= tiff.Length ? Short(tiff, (int)at) : 0; left > 0; left--)
        {
            var entry = (int)at + 2 + (left - 1) * Entry;
            if (entry + Entry > tiff.Length)
            {
                continue;
            }

            var tag = Short(tiff, entry);
            var place = Long(tiff, entry + 8);
            if (tag == 0x011A && place + 8L <= tiff.Length && Long(tiff, (int)place + 4) is var divisor and > 0)
            {
                density = (double)Long(tiff, (int)place) / divisor;
            }
            else if (tag == 0x0128)
            {
                unit = Short(tiff, entry + 8);
            }
        }

        return unit == 3 ? density * CentimetresPerInch : density;

        int Short(ReadOnlySpan<byte> bytes, int from) => isLittle
            ? BinaryPrimitives.ReadUInt16LittleEndian(bytes[from..]) : BinaryPrimitives.ReadUInt16BigEndian(bytes[from..]);

        uint Long(ReadOnlySpan<byte> bytes, int from) => isLittle
            ? BinaryPrimitives.ReadUInt32LittleEndian(bytes[from..]) : BinaryPrimitives.ReadUInt32BigEndian(bytes[from..]);
    }
}
