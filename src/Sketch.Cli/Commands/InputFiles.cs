using System.Collections.Immutable;
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

    /// <summary>The ends of the names of cards.</summary>
    public static readonly string[] Cards = [".card"];

    /// <summary>The ends of the names of batches.</summary>
    public static readonly string[] Batches = [".batch"];

    /// <summary>The ends of the names of all files that Sketch reads.</summary>
    public static readonly string[] AllKinds = [".card", ".stash", ".batch"];

    /// <summary>Reads and lays out every card.</summary>
    /// <param name="session">The run, which receives the names of files that cannot be opened.</param>
    /// <param name="names">Files and folders as typed.</param>
    public static InputFiles Of(Session session, IEnumerable<string> names) =>
        Of(session, names, Cards, s => Compiler.Compile(s, session.World()));

    /// <summary>Reads every file, even after one that cannot be read. A file named twice is read once.</summary>
    /// <param name="session">The run, which receives the names of files that cannot be opened.</param>
    /// <param name="names">Files as typed; names with * or ? match files, for shells that leave the expansion to the
    /// program; a folder stands for its files; - is standard input.</param>
    /// <param name="kinds">The ends of the names of the files that a folder stands for.</param>
    /// <param name="understand">Compiles a text.</param>
    public static InputFiles Of(
        Session session, IEnumerable<string> names, IReadOnlyCollection<string> kinds, Func<SourceText, Compilation> understand)
    {
        var files = ImmutableArray.CreateBuilder<Compilation>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var allOpened = true;
        foreach (var name in Expand(session, names, kinds, ref allOpened))
        {
            session.Cancellation.ThrowIfCancellationRequested();
            if (!seen.Add(FullName(name)))
            {
                continue;
            }

            var reading = session.Read(name);
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

    /// <summary>The names of all files that the typed names stand for; a folder without any is reported.</summary>
    /// <param name="session">The run.</param>
    /// <param name="names">Names as typed.</param>
    /// <param name="kinds">The ends of the names of the files that a folder stands for.</param>
    /// <param name="allOpened">Becomes false where a folder has no such file.</param>
    public static IReadOnlyList<string> Expand(
        Session session, IEnumerable<string> names, IReadOnlyCollection<string> kinds, ref bool allOpened)
    {
        var files = new List<string>();
        foreach (var name in names)
        {
            if (name == Session.Standard || !Directory.Exists(name))
            {
                files.AddRange(Expand(name));
                continue;
            }

            session.Files.AddFolder(name, kinds);
            var inside = InFolder(name, kinds);
            files.AddRange(inside);
            if (inside.Length == 0)
            {
                session.Report($"There is no file in \"{name}\" whose name ends in {string.Join(" or ", kinds)}.");
                allOpened = false;
            }
        }

        return files;
    }

    /// <summary>The files of some kinds in a folder, not in those below it, by name; none if the folder cannot be read.</summary>
    public static string[] InFolder(string folder, IReadOnlyCollection<string> kinds)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder).Where(f => kinds.Contains(Path.GetExtension(f)))
                .Select(f => Path.Combine(folder, Path.GetFileName(f))).Order(StringComparer.Ordinal)];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The beginning of the names of files that are made from a file.</summary>
    public static string StemOf(string name) => name == Session.Standard ? "standard-input" : Path.GetFileNameWithoutExtension(name);

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
