using System.Globalization;

namespace Sketch.Cli.Commands;

/// <summary>Shows the progress of long work on a terminal; does nothing elsewhere.</summary>
/// <param name="session">The run; its error output is used only where that is a terminal.</param>
/// <param name="what">What is made.</param>
/// <param name="count">The number of parts.</param>
internal sealed class Progress(Session session, string what, int count) : IDisposable
{
    private readonly bool _isShown = !session.IsQuiet && session.IsTerminal(session.Error);
    private int _width;

    /// <summary>Shows how many parts are done.</summary>
    public void Report(int done)
    {
        if (_isShown)
        {
            var text = string.Create(CultureInfo.InvariantCulture, $"{Reports.Printable.Line(what)}: {done} of {count}");
            session.Error.Write("\r" + text.PadRight(_width));
            _width = text.Length;
        }
    }

    /// <summary>Clears the line for the next message.</summary>
    public void Dispose()
    {
        if (_width > 0)
        {
            session.Error.Write("\r" + new string(' ', _width) + "\r");
        }
    }
}
