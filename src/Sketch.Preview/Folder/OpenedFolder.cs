using System.Text;
using Sketch.Diagnostics;
using Sketch.Output.Files;

namespace Sketch.Preview.Folder;

/// <summary>
/// The folder that the page works in. Files are named by their relative paths, with slashes, such as <c>lamp-day/fair-winds.card</c>; a
/// name that leads out of the folder, also through a link, or into a hidden folder, is invalid.
/// </summary>
public sealed class OpenedFolder
{
    /// <summary>The most files that are listed; a folder with more is not just for cards.</summary>
    public const int ListLimit = 2000;

    /// <summary>How many folders deep files are searched.</summary>
    private const int DepthLimit = 6;

    /// <summary>
    /// The most bytes in UTF-8 that the name of a file or folder can have on all systems, less those that a temporary name adds.
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

    /// <summary>The full path of the folder.</summary>
    public string Root { get; }

    /// <summary>Whether it exists now; it may have been deleted, moved or renamed since, and restored.</summary>
    public bool IsThere => Directory.Exists(Root);

    /// <summary>The message while it does not exist.</summary>
    public string Gone => $"the folder \"{Root}\" is no longer there. Put it back where it was, under the same name. "
        + "Until then what you typed is in memory only, so leave Sketch running.";

    /// <summary>The files that the tool itself keeps in the folder.</summary>
    public OwnFiles Own { get; }

    /// <summary>
    /// The full path of a file by its name, or null when that is not the name of a card, stash or batch in this folder.
    /// </summary>
    public string? PathOf(string name)
    {
        var steps = name.Split('/');
        var isPlain = name.Length is > 0 and <= 400
            && steps.All(IsPlain)
            && Endings.Contains(Path.GetExtension(name).ToLowerInvariant());
        return isPlain && Holds(Root, name) ? Path.Combine([Root, .. steps]) : null;
    }

    /// <summary>Whether the folder of a file with this name exists, in this folder.</summary>
    public bool HoldsFolderOf(string name) => PathOf(name) is { } path && Directory.Exists(Path.GetDirectoryName(path));

    /// <summary>
    /// Whether a relative path leads to something hidden or in a hidden folder: one of its segments begins with a dot.
    /// </summary>
    public static bool IsHidden(ReadOnlySpan<char> path) =>
        path.StartsWith('.') || path.Contains("/.", StringComparison.Ordinal) || path.Contains("\\.", StringComparison.Ordinal);

    /// <summary>Whether a path lies in a folder, with links followed.</summary>
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

    /// <summary>The name of a file by its full path, or null for a path outside this folder.</summary>
    public string? NameOf(string path)
    {
        var relative = Path.GetRelativePath(Root, path);
        return relative == "." || relative.StartsWith("..", StringComparison.Ordinal) || Path.IsPathRooted(relative)
            ? null
            : relative.Replace(Path.DirectorySeparatorChar, '/');
    }

    /// <summary>Where files are searched: in the folder and its subfolders, without hidden ones and links.</summary>
    internal static EnumerationOptions Reach { get; } = new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = DepthLimit,
        IgnoreInaccessible = true,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    /// <summary>
    /// The names of all cards, stashes and batches in the folder and its subfolders, without hidden ones, in order; none while it is
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
    /// Deletes partly written files of killed processes from the folder, its subfolders and the tool's own hidden folder.
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
            // The folder is gone by now; there is nothing to clean up.
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
    /// <param name="path">A path from <see cref="PathOf"/>.</param>
    /// <returns>The text; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<FileText> Read(string path) => FileContent.Read(path, TextContent.Limit).Then(FileText.Of);
}
