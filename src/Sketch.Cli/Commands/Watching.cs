using System.CommandLine;

namespace Sketch.Cli.Commands;

/// <summary>Runs a verb again whenever a file that it has read changes.</summary>
internal static class Watching
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    /// <summary>The option that asks for it.</summary>
    public static Option<bool> Option() => new("--watch")
    {
        Description = "Run again whenever a file that was read changes, until Ctrl-C.",
    };

    /// <summary>Runs once, or until Ctrl-C.</summary>
    /// <param name="session">The run.</param>
    /// <param name="isWatching">Whether to go on after the first time.</param>
    /// <param name="names">The files as typed; standard input cannot be watched.</param>
    /// <param name="once">Runs the verb once and returns its exit status.</param>
    /// <returns>The exit status; after Ctrl-C that of a run that was stopped.</returns>
    public static int Run(Session session, bool isWatching, string[] names, Func<int> once)
    {
        if (isWatching && names.Contains(Session.Standard))
        {
            session.Report("Standard input cannot be watched: name a file, or leave out --watch.");
            return ExitStatus.Usage;
        }

        var status = once();
        while (isWatching && !session.Cancellation.IsCancellationRequested)
        {
            session.Output.Flush();
            string? changed;
            while ((changed = session.Files.Changed) is null)
            {
                if (session.Cancellation.WaitHandle.WaitOne(Pause))
                {
                    return ExitStatus.Stopped;
                }
            }

            if (!session.IsQuiet)
            {
                session.Report($"{changed} has changed.");
            }

            session.Files.Clear();
            status = once();
        }

        return status;
    }
}
