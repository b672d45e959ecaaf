using System.Diagnostics;
using Sketch.Cli.Commands;
using Sketch.Planning.Plans;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>One line on the terminal that shows the progress of planning, and disappears at the end.</summary>
internal sealed class PlanProgressLine : IProgress<BatchProgress>, IDisposable
{
    private const string ClearLine = "\r\u001b[K";
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(150);

    private readonly TextWriter _error;
    private readonly Stopwatch _last = new();
    private readonly Lock _gate = new();

    private PlanProgressLine(TextWriter error) => _error = error;

    /// <summary>A line if messages go to a terminal, else null.</summary>
    public static PlanProgressLine? On(Session session) =>
        !session.IsQuiet && session.IsTerminal(session.Error) ? new(session.Error) : null;

    /// <inheritdoc/>
    public void Report(BatchProgress value)
    {
        lock (_gate)
        {
            if (_last.IsRunning && _last.Elapsed < Often)
            {
                return;
            }

            _last.Restart();
            _error.Write($"{ClearLine}{Printable.Line(value.Paper)}: {Counted.Of(value.Sheets, "sheet")}, at least {value.LowerBound}");
        }
    }

    /// <summary>Removes the line.</summary>
    public void Dispose() => _error.Write(ClearLine);
}
