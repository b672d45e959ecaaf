using System.Buffers.Binary;

namespace Sketch.Output.Rendering;

/// <summary>
/// Adds to a PNG its pixel density, so that it prints at true size, and that Sketch drew it, which distinguishes it from
/// pictures of other origin (PNG specification, chunks pHYs and tEXt).
/// </summary>
internal static class PngDensity
{
    // The signature (8 bytes) and the header chunk (25 bytes) come first in every PNG.
    private const int AfterHeader = 33;

    private static readonly uint[] CrcTable = [.. Enumerable.Range(0, 256).Select(i =>
    {
        var crc = (uint)i;
        for (var bit = 0; bit < 8; bit++)
        {
            crc = (crc & 1) == 0 ? crc >> 1 : 0xEDB88320 ^ (crc >> 1);
        }

        return crc;
    })];

    /// <summary>Copies a PNG with both.</summary>
    public static void Write(ReadOnlySpan<byte> png, double dpi, Stream output)
    {
        output.Write(png[..AfterHeader]);
        WriteOwn(output, dpi);
        output.Write(png[AfterHeader..]);
    }

    /// <summary>Writes both chunks; the density is in pixels per metre, rounded to a whole number.</summary>
    public static void WriteOwn(Stream output, double dpi)
    {
        Span<byte> density = stackalloc byte[9];
        var perMetre = (int)Math.Round(dpi / 0.0254);
        BinaryPrimitives.WriteInt32BigEndian(density, perMetre);
        BinaryPrimitives.WriteInt32BigEndian(density[4..], perMetre);
        density[8] = 1;
        WriteChunk(output, "pHYs"u8, density);
        WriteChunk(output, "tEXt"u8, "Software\0Sketch"u8);
    }

    /// <summary>Writes one chunk with its checksum.</summary>
    public static void WriteChunk(Stream output, ReadOnlySpan<byte> kind, ReadOnlySpan<byte> data)
    {
        var chunk = new byte[12 + data.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        kind.CopyTo(chunk.AsSpan(4));
        data.CopyTo(chunk.AsSpan(8));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8 + data.Length), Crc(chunk.AsSpan(4, 4 + data.Length)));
        output.Write(chunk);
    }

    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc = CrcTable[(byte)(crc ^ value)] ^ (crc >> 8);
        }

        return ~crc;
    }
}
