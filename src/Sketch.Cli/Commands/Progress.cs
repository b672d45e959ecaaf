using System.Globalization;

namespace Sketch.Cli.Commands;

/// <summary>Tells on a terminal how far long work has come; elsewhere nothing.</summary>
/// <param name="session">The run; its error output is written to only where that is a terminal.</param>
/// <param name="what">What is made.</param>
/// <param name="count">Of how many parts.</param>
internal sealed class Progress(Session session, string what, int count) : IDisposable
{
    private readonly bool _isShown = StandardError.IsSeen(session.Error);
    private int _width;

    /// <summary>So many parts are done.</summary>
    public void Report(int done)
    {
        if (_isShown)
        {
            var text = string.Create(CultureInfo.InvariantCulture, $"{Reports.Printable.Line(what)}: {done} of {count}");
            session.Error.Write("\r" + text.PadRight(_width));
            _width = text.Length;
        }
    }

    /// <summary>Clears the line for what is told next.</summary>
    public void Dispose()
    {
        if (_width > 0)
        {
            session.Error.Write("\r" + new string(' ', _width) + "\r");
        }
    }
}
