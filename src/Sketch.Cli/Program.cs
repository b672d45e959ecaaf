using System.CommandLine;
using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;
using Sketch.Cli.Commands;
using Sketch.Output.Files;

namespace Sketch.Cli;

/// <summary>The command line.</summary>
public static class Program
{
    // SIGXFSZ on Linux and macOS: a file would exceed the limit of the process.
    private const int FileSizeSignal = 25;

    private static readonly TimeSpan PatienceAfterStop = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan LongestPatience = TimeSpan.FromSeconds(15);

    /// <summary>
    /// Runs the command line of the process; Ctrl-C stops it with status 130, at the latest two seconds later unless the machine is busy.
    /// </summary>
    public static int Main(string[] args)
    {
        using var error = new StandardError();
        using var stop = new CancellationTokenSource();
        var (stopped, worked) = (new Stopwatch(), TimeSpan.Zero);
        using var patience = new Timer(_ =>
        {
            // On a busy machine little may have been done in that time.
            if (Environment.CpuUsage.TotalTime - worked >= PatienceAfterStop / 2 || stopped.Elapsed >= LongestPatience)
            {
                error.Write("sketch: Stopped.\n");
                Environment.Exit(ExitStatus.Stopped);
            }
        });

        // Otherwise the system would end the process; now the write fails, and a sentence says why.
        using var large = OperatingSystem.IsWindows() ? null : PosixSignalRegistration.Create((PosixSignal)FileSizeSignal, signal =>
            signal.Cancel = true);
        Console.CancelKeyPress += (_, press) =>
        {
            press.Cancel = true;
            (stopped, worked) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
            patience.Change(PatienceAfterStop, PatienceAfterStop / 4);
            stop.Cancel();
        };
        try
        {
            var encoding = new UTF8Encoding(false);
            Console.OutputEncoding = encoding;
            var bytes = StandardOutput.Open();
            var output = new StreamWriter(bytes, encoding);
            var status = Run(args, new(output, error, stop.Token)
            {
                OpenInput = Console.OpenStandardInput,
                Bytes = bytes,
                IsTerminal = writer => writer == error ? !Console.IsErrorRedirected : !Console.IsOutputRedirected,
            });
            output.Flush();
            return error.HasLost ? Math.Max(status, ExitStatus.Usage) : status;
        }
        catch (OutputClosedException)
        {
            return ExitStatus.OutputClosed;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            error.Write($"sketch: Standard output cannot be written: {FileTrouble.Reason(refused, "")}.\n");
            return ExitStatus.Usage;
        }
    }

    /// <summary>Runs one command line.</summary>
    /// <param name="args">The verb and its arguments.</param>
    /// <param name="output">The requested output of the verb.</param>
    /// <param name="error">All other messages.</param>
    /// <param name="cancellation">Stops the run between two files, with status 130.</param>
    /// <returns>The exit status.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, CancellationToken cancellation = default) =>
        Run(args, output, error, TimeProvider.System, cancellation);

    /// <summary>Runs one command line with a clock, which gives the time of entries in a log.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter error, TimeProvider clock, CancellationToken cancellation) =>
        Run(args, new(output, error, cancellation) { Clock = clock });

    /// <summary>Runs one command line in a session.</summary>
    internal static int Run(string[] args, Session session)
    {
        var (output, error) = (session.Output, session.Error);
        try
        {
            // A file name may begin with @, so no token is treated as a response file.
            var parsed = CommandTree.Build(session).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            session.IsQuiet = parsed.GetValue<bool>(Session.QuietOption);
            var problems = UsageProblems.Of(parsed);
            return problems.Count > 0
                ? UsageProblems.Report(problems, parsed, error)
                : parsed.Invoke(new()
                {
                    Output = output,
                    Error = error,
                    EnableDefaultExceptionHandler = false,
                    ProcessTerminationTimeout = null
                });
        }
        catch (OperationCanceledException) when (session.Cancellation.IsCancellationRequested)
        {
            session.Report("Stopped.");
            return ExitStatus.Stopped;
        }
    }
}
