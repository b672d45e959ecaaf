using System.Buffers.Binary;

namespace Sketch.Output.Rendering;

/// <summary>Writes into a PNG how many pixels make an inch, so that it prints at its true size (PNG specification, chunk pHYs).</summary>
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

    /// <summary>Copies a PNG with its density; the chunk counts pixels a metre and is rounded to whole ones.</summary>
    public static void Write(ReadOnlySpan<byte> png, double dpi, Stream output)
    {
        Span<byte> chunk = stackalloc byte[21];
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        var perMetre = (int)Math.Round(dpi / 0.0254);
        BinaryPrimitives.WriteInt32BigEndian(chunk[8..], perMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk[12..], perMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], Crc(chunk[4..17]));
        output.Write(png[..AfterHeader]);
        output.Write(chunk);
        output.Write(png[AfterHeader..]);
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
