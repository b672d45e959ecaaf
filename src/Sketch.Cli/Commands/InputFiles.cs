using System.Collections.Immutable;
using Sketch.Output.Folders;
using Sketch.Text;

namespace Sketch.Cli.Commands;

/// <summary>All files of a command line, read and laid out.</summary>
/// <param name="Files">The files that could be opened, in the order of the command line.</param>
/// <param name="AllOpened">Whether every file could be opened.</param>
internal sealed record InputFiles(ImmutableArray<Compilation> Files, bool AllOpened)
{
    /// <summary>The exit status after reading.</summary>
    public int ExitStatus => !AllOpened ? Commands.ExitStatus.Usage
        : Files.Any(f => f.HasErrors) ? Commands.ExitStatus.Errors : Commands.ExitStatus.Done;

    /// <summary>The same for a verb that needs cards: a file without errors that is not a card is wrong usage.</summary>
    public int ExitStatusForCards => Files.Any(f => f.Card is null && !f.HasErrors) ? Commands.ExitStatus.Usage : ExitStatus;

    /// <summary>Reads and lays out every file.</summary>
    /// <param name="session">The run, which receives the names of files that cannot be opened.</param>
    /// <param name="names">Files as typed.</param>
    public static InputFiles Of(Session session, IEnumerable<string> names) =>
        Of(session, names, s => Compiler.Compile(s, new FolderFiles()));

    /// <summary>Reads every file, even after one that cannot be read. A file named twice is read once.</summary>
    /// <param name="session">The run, which receives the names of files that cannot be opened.</param>
    /// <param name="names">Files as typed; names with * or ? match files, for shells that leave the expansion to the
    /// program.</param>
    /// <param name="understand">Compiles a text.</param>
    public static InputFiles Of(Session session, IEnumerable<string> names, Func<SourceText, Compilation> understand)
    {
        var files = ImmutableArray.CreateBuilder<Compilation>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var allOpened = true;
        foreach (var name in names.SelectMany(Expand))
        {
            session.Cancellation.ThrowIfCancellationRequested();
            if (!seen.Add(FullName(name)))
            {
                continue;
            }

            var reading = FolderFiles.ReadFile(name);
            if (reading.Source is { } source)
            {
                files.Add(reading.Finding is { } finding ? new(source, null, [finding]) : understand(source));
            }
            else
            {
                session.Report(reading.Problem);
                allOpened = false;
            }
        }

        return new(files.ToImmutable(), allOpened);
    }

    private static string[] Expand(string name)
    {
        if (name.IndexOfAny(['*', '?']) < 0 || File.Exists(name))
        {
            return [name];
        }

        var folder = Path.GetDirectoryName(name) ?? "";
        try
        {
            var found = Directory.GetFiles(folder.Length == 0 ? "." : folder, Path.GetFileName(name));
            return found.Length == 0
                ? [name] : [.. found.Select(f => Path.Combine(folder, Path.GetFileName(f))).Order(StringComparer.Ordinal)];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [name];
        }
    }

    private static string FullName(string name)
    {
        try
        {
            return Path.GetFullPath(name);
        }
        catch (Exception exception) when (exception is ArgumentException or IOException or NotSupportedException)
        {
            return name;
        }
    }
}
