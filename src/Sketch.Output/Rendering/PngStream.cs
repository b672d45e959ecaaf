using System.Buffers.Binary;
using System.IO.Compression;

namespace Sketch.Output.Rendering;

/// <summary>
/// Writes a PNG from top to bottom, so that a long picture is never held as a whole: 8 bits for each of red, green and blue, every line
/// filtered by the one of "none", "sub" and "up" that leaves the smallest numbers (PNG specification, chapters 9 and 12.7).
/// </summary>
internal sealed class PngStream : IDisposable
{
    private const int PartSize = 1 << 16;

    private readonly Stream _output;
    private readonly MemoryStream _compressed = new();
    private readonly ZLibStream _zip;
    private readonly byte[] _filtered;
    private readonly byte[] _tried;
    private byte[] _above;
    private byte[] _line;

    /// <summary>Begins a picture.</summary>
    public PngStream(Stream output, int width, int height, double dpi)
    {
        _output = output;
        Width = width;
        (_above, _line, _filtered, _tried) = (new byte[width * 3], new byte[width * 3], new byte[width * 3 + 1], new byte[width * 3 + 1]);
        _zip = new(_compressed, CompressionLevel.Fastest, leaveOpen: true);
        output.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]);
        Span<byte> header = stackalloc byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header[4..], height);
        header[8] = 8;
        header[9] = 2;
        PngDensity.WriteChunk(output, "IHDR"u8, header);
        PngDensity.WriteOwn(output, dpi);
    }

    /// <summary>Pixels in a line.</summary>
    public int Width { get; }

    /// <summary>Adds lines with 4 bytes per pixel; the fourth is ignored.</summary>
    public void Write(ReadOnlySpan<byte> pixels)
    {
        for (; pixels.Length >= Width * 4; pixels = pixels[(Width * 4)..])
        {
            for (int from = 0, to = 0; to < _line.Length; from += 4, to += 3)
            {
                (_line[to], _line[to + 1], _line[to + 2]) = (pixels[from], pixels[from + 1], pixels[from + 2]);
            }

            WriteLine();
            (_above, _line) = (_line, _above);
        }
    }

    /// <summary>Ends the picture; all announced lines must have been written.</summary>
    public void End()
    {
        _zip.Dispose();
        WritePart();
        PngDensity.WriteChunk(_output, "IEND"u8, []);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _zip.Dispose();
        _compressed.Dispose();
    }

    private void WriteLine()
    {
        var least = long.MaxValue;
        for (byte filter = 0; filter <= 2; filter++)
        {
            long sum = 0;
            _tried[0] = filter;
            for (var i = 0; i < _line.Length; i++)
            {
                var before = filter switch { 0 => 0, 1 => i < 3 ? 0 : _line[i - 3], _ => _above[i] };
                var rest = (byte)(_line[i] - before);
                _tried[i + 1] = rest;
                sum += rest < 128 ? rest : 256 - rest;
            }

            if (sum < least)
            {
                least = sum;
                _tried.CopyTo(_filtered, 0);
            }
        }

        _zip.Write(_filtered);
        if (_compressed.Length > PartSize)
        {
            WritePart();
        }
    }

    private void WritePart()
    {
        PngDensity.WriteChunk(_output, "IDAT"u8, _compressed.GetBuffer().AsSpan(0, (int)_compressed.Length));
        _compressed.SetLength(0);
    }
}
