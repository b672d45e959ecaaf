using System.Text;

namespace Sketch.Reports;

/// <summary>A stream that passes UTF-8 on to a text output piece by piece, so that a large document is never held as a whole.</summary>
internal sealed class Utf8TextStream(TextWriter output) : Stream
{
    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder();
    private char[] _characters = new char[4096];

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        var most = Encoding.UTF8.GetMaxCharCount(buffer.Length);
        if (_characters.Length < most)
        {
            _characters = new char[most];
        }

        output.Write(_characters, 0, _decoder.GetChars(buffer, _characters, flush: false));
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
