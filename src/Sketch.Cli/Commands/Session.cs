using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Reports;

namespace Sketch.Cli.Commands;

/// <summary>Where one run of the command line reads and writes, and whether it should stop.</summary>
/// <param name="Output">The requested output of the verb.</param>
/// <param name="Error">All other messages.</param>
/// <param name="Cancellation">Set by Ctrl-C.</param>
internal sealed record Session(TextWriter Output, TextWriter Error, CancellationToken Cancellation)
{
    /// <summary>The word that means standard input or standard output instead of a file.</summary>
    public const string Standard = "-";

    /// <summary>The option of every verb that sets <see cref="IsQuiet"/>.</summary>
    public const string QuietOption = "--quiet";

    private bool _inputIsRead;

    /// <summary>Gives the time of entries in a log.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Opens standard input.</summary>
    public Func<Stream> OpenInput { get; init; } = () => Stream.Null;

    /// <summary>The same as <see cref="Output"/>, for pictures, which are no text; flush that first.</summary>
    public Stream Bytes { get; init; } = Stream.Null;

    /// <summary>Whether a person sees what is written to one of the two outputs.</summary>
    public Func<TextWriter, bool> IsTerminal { get; init; } = _ => false;

    /// <summary>The variables of the environment.</summary>
    public Func<string, string?> Variable { get; init; } = Environment.GetEnvironmentVariable;

    /// <summary>Whether only problems and what was asked for are written: no notes, progress or list of written files.</summary>
    public bool IsQuiet { get; set; }

    /// <summary>The files that the run has asked for, as they were then.</summary>
    public FilesRead Files { get; } = new();

    /// <summary>Files that other files name, and fonts.</summary>
    public FolderFiles World(bool mayLeaveFolder = false) => new(mayLeaveFolder, null, Files.Add);

    /// <summary>Reads a file named on the command line, or standard input, which can be read once.</summary>
    public FileReading Read(string name)
    {
        if (name != Standard)
        {
            Files.Add(name);
            return FolderFiles.ReadFile(name);
        }

        if (_inputIsRead)
        {
            return new(null, null, "Standard input can be read once: replace one of the - with the name of a file.");
        }

        _inputIsRead = true;
        using var input = OpenInput();
        return FolderFiles.ReadStream(name, input);
    }

    /// <summary>Prints one line about what was done, sanitized for a terminal.</summary>
    public void Print(string line)
    {
        if (!IsQuiet)
        {
            Output.Write($"{Printable.Line(line)}\n");
        }
    }

    /// <summary>Reports one sentence on the error output.</summary>
    public void Report(string sentence) => Error.Write($"sketch: {Printable.Line(sentence)}\n");

    /// <summary>Reports findings on the error output.</summary>
    public void Report(ImmutableArray<Finding> findings) => Report(findings, Error);

    /// <summary>Reports findings on one of the outputs, in colours where a person sees it.</summary>
    public void Report(ImmutableArray<Finding> findings, TextWriter output)
    {
        if (!findings.IsEmpty)
        {
            FindingsText.Write(output, IsQuiet ? [.. findings.Where(f => f.Severity != Severity.Note)] : findings, HasColours(output));
        }
    }

    /// <summary>Whether an output is shown in colours: on a terminal that has them, unless NO_COLOR forbids it (no-color.org).</summary>
    private bool HasColours(TextWriter output) =>
        IsTerminal(output) && string.IsNullOrEmpty(Variable("NO_COLOR")) && Variable("TERM") != "dumb";
}
