namespace Sketch.Cli.Commands;

/// <summary>The exit status of the process: the largest that applies.</summary>
internal static class ExitStatus
{
    /// <summary>Done; nothing worse than a warning.</summary>
    public const int Done = 0;

    /// <summary>The files were read and contain errors.</summary>
    public const int Errors = 1;

    /// <summary>Wrong usage, or the operating system cannot open or write a file.</summary>
    public const int Usage = 2;

    /// <summary>Stopped by Ctrl-C.</summary>
    public const int Stopped = 130;

    /// <summary>The reader of standard output has closed it; the same as for programs ended by a broken pipe (128 + SIGPIPE).</summary>
    public const int OutputClosed = 141;
}
