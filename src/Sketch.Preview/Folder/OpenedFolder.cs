using System.Text;
using Sketch.Output.Files;

namespace Sketch.Preview.Folder;

/// <summary>
/// The folder that the page works in. Files are called by their names from it, with slashes, such as <c>lamp-day/fair-winds.card</c>; a
/// name that leads out of the folder, also by way of a link, or into a hidden folder, is no name.
/// </summary>
public sealed class OpenedFolder
{
    /// <summary>The most files that are listed; a folder with more is not one for cards alone.</summary>
    public const int ListLimit = 2000;

    /// <summary>How many folders deep files are looked for.</summary>
    private const int DepthLimit = 6;

    /// <summary>
    /// The most bytes in UTF-8 that a file or folder can be called by on all systems, less those of a name for writing it.
    /// </summary>
    private const int StepLimit = 200;

    private static readonly string[] Endings = [".card", ".stash", ".batch"];

    /// <summary>Opens a folder.</summary>
    /// <param name="path">A folder that exists.</param>
    public OpenedFolder(string path)
    {
        Root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        Own = new(Root);
    }

    /// <summary>The folder's full path.</summary>
    public string Root { get; }

    /// <summary>Whether it is there now; it may have been deleted, moved or renamed since, and come back.</summary>
    public bool IsThere => Directory.Exists(Root);

    /// <summary>What to tell while it is not there.</summary>
    public string Gone => $"the folder \"{Root}\" is no longer there. Put it back where it was, under the same name. "
        + "Until then what you typed is in memory only, so leave Sketch running.";

    /// <summary>What the tool itself keeps in the folder.</summary>
    public OwnFiles Own { get; }

    /// <summary>
    /// The full path of a file called by its name, or null when that is no name of a card, stash or batch in this folder.
    /// </summary>
    public string? PathOf(string name)
    {
        var steps = name.Split('/');
        var isPlain = name.Length is > 0 and <= 400
            && steps.All(IsPlain)
            && Endings.Contains(Path.GetExtension(name).ToLowerInvariant());
        return isPlain && Holds(Root, name) ? Path.Combine([Root, .. steps]) : null;
    }

    /// <summary>Whether the folder in which a file of this name would lie is there, in this folder.</summary>
    public bool HoldsFolderOf(string name) => PathOf(name) is { } path && Directory.Exists(Path.GetDirectoryName(path));

    /// <summary>
    /// Whether a path from the folder is that of something hidden or in a hidden folder: one of its steps begins with a point.
    /// </summary>
    public static bool IsHidden(ReadOnlySpan<char> path) =>
        path.StartsWith('.') || path.Contains("/.", StringComparison.Ordinal) || path.Contains("\\.", StringComparison.Ordinal);

    /// <summary>Whether what is called so lies in a folder, links followed.</summary>
    internal static bool Holds(string root, string name)
    {
        try
        {
            return !FolderBounds.Leaves(root, name);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool IsPlain(string step) => step.Length > 0 && !IsHidden(step) && Encoding.UTF8.GetByteCount(step) <= StepLimit
        && step.IndexOfAny(Path.GetInvalidFileNameChars()) < 0 && !step.Any(c => c is '\\' or ':' || char.IsControl(c));

    /// <summary>What a full path in this folder is called, or null for a path elsewhere.</summary>
    public string? NameOf(string path)
    {
        var relative = Path.GetRelativePath(Root, path);
        return relative == "." || relative.StartsWith("..", StringComparison.Ordinal) || Path.IsPathRooted(relative)
            ? null
            : relative.Replace(Path.DirectorySeparatorChar, '/');
    }

    /// <summary>Where files are looked for: in the folder and the folders in it, hidden ones and links left out.</summary>
    internal static EnumerationOptions Reach { get; } = new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = DepthLimit,
        IgnoreInaccessible = true,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    /// <summary>
    /// The names of all cards, stashes and batches in the folder and the folders in it, hidden ones left out, in order; none while it is
    /// gone.
    /// </summary>
    public IReadOnlyList<string> List()
    {
        if (!IsThere)
        {
            return [];
        }

        return [.. Directory.EnumerateFiles(Root, "*", Reach)
            .Where(f => Endings.Contains(Path.GetExtension(f).ToLowerInvariant()))
            .Select(NameOf).OfType<string>().Where(n => PathOf(n) is { } path && !OrdinaryFile.IsOtherwise(path))
            .Take(ListLimit).Order(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>
    /// Deletes what killed processes left half written in the folder, the folders in it and the tool's own hidden folder.
    /// </summary>
    public void DeleteOrphans()
    {
        try
        {
            var own = Path.GetDirectoryName(Own.Drafts)!;
            string[] folders =
            [
                Root,
                .. Directory.EnumerateDirectories(Root, "*", Reach),
                .. Directory.Exists(own) && Own.IsWithin(own) ? Directory.EnumerateDirectories(own, "*", OwnReach) : [],
            ];
            Array.ForEach(folders, SafeFile.DeleteOrphans);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            // The folder has gone meanwhile; there is nothing to clean up.
        }
    }

    private static EnumerationOptions OwnReach { get; } = new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = DepthLimit,
        IgnoreInaccessible = true,
        AttributesToSkip = FileAttributes.ReparsePoint,
    };

    /// <summary>Reads a file.</summary>
    /// <param name="path">A path that <see cref="PathOf"/> gave.</param>
    /// <param name="problem">Why it cannot be read, as a sentence goes on after a colon; empty when it was.</param>
    public static FileText? Read(string path, out string problem) =>
        FileContent.Read(path, TextContent.Limit, out problem) is { } content ? FileText.Of(content, out problem) : null;
}
