using System.Text;

namespace Sketch.Cli.Commands;

/// <summary>
/// Standard error. If it cannot be written, as on a full disk, its messages are lost, since there is no other place for them; the run
/// continues and its exit status reports it.
/// </summary>
internal sealed class StandardError : TextWriter
{
    private readonly Lazy<TextWriter> _console = new(() => Console.Error);
    private volatile bool _hasLost;

    /// <summary>Whether a message was lost.</summary>
    public bool HasLost => _hasLost;

    public override Encoding Encoding => _console.Value.Encoding;

    public override void Write(char value) => Try(e => e.Write(value));

    public override void Write(string? value) => Try(e => e.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(e => e.Write(buffer, index, count));

    public override void Flush() => Try(e => e.Flush());

    private void Try(Action<TextWriter> write)
    {
        try
        {
            write(_console.Value);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            _hasLost = true;
        }
    }
}
