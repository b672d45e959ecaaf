namespace Sketch.Output.Files;

/// <summary>
/// A file to write, which nobody else has open. The framework reports content that is too large for the file system, or for the limit of
/// the process, as an argument out of range, as if the tool were at fault; here it is an <see cref="IOException"/>, like a full disk.
/// </summary>
/// <param name="path">The file.</param>
/// <param name="mode">Whether it is new.</param>
/// <param name="bufferSize">How much is written at once; 0 for no buffer.</param>
internal sealed class RefusableFile(string path, FileMode mode, int bufferSize = 4096)
    : FileStream(path, mode, FileAccess.ReadWrite, FileShare.None, bufferSize)
{
    /// <inheritdoc/>
    public override void WriteByte(byte value) => Write([value], 0, 1);

    // Spans come here too: that is how the framework serves classes derived from its own.
    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        try
        {
            base.Write(buffer, offset, count);
        }
        catch (ArgumentOutOfRangeException large)
        {
            throw TooLarge(large);
        }
    }

    /// <inheritdoc/>
    public override void Flush(bool flushToDisk)
    {
        try
        {
            base.Flush(flushToDisk);
        }
        catch (ArgumentOutOfRangeException large)
        {
            throw TooLarge(large);
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        try
        {
            base.Dispose(disposing);
        }
        catch (ArgumentOutOfRangeException large)
        {
            throw TooLarge(large);
        }
    }

    private static IOException TooLarge(ArgumentOutOfRangeException large) => new(large.Message, FileTrouble.TooLarge);
}
