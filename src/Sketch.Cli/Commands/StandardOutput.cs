using System.Runtime.InteropServices;

namespace Sketch.Cli.Commands;

/// <summary>The reader of standard output has closed its end, as <c>head</c> does once it has enough lines.</summary>
internal sealed class OutputClosedException() : IOException("The reader of standard output closed it.");

/// <summary>
/// Standard output that notices when its reader is gone. The console's own stream drops what nobody reads, so a long run would otherwise
/// continue in vain and report success.
/// </summary>
/// <param name="console">The console's stream.</param>
internal sealed class StandardOutput(Stream console) : Stream
{
    /// <summary>Opens standard output.</summary>
    /// <exception cref="IOException">The process was started without one.</exception>
    public static StandardOutput Open() => new(Console.OpenStandardOutput());

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <exception cref="OutputClosedException">The reader is gone.</exception>
    /// <exception cref="IOException">For example, the disk is full.</exception>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        console.Write(buffer);
        if (!OperatingSystem.IsWindows() && Pipe.HasNoReader())
        {
            throw new OutputClosedException();
        }
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush() => console.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    // poll(2): a pipe whose reader is gone reports an error, even when no events are requested.
    private static class Pipe
    {
        private const int OutputHandle = 1;
        private const short Error = 8;

        public static bool HasNoReader()
        {
            var state = new State { Handle = OutputHandle };
            return Poll(ref state, 1, 0) == 1 && (state.Found & Error) != 0;
        }

        [DllImport("libc", EntryPoint = "poll")]
        [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
        private static extern int Poll(ref State state, nuint count, int milliseconds);

        [StructLayout(LayoutKind.Sequential)]
        private struct State
        {
            public int Handle;
            public short Asked;
            public short Found;
        }
    }
}
