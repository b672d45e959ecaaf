using Sketch.Output.Files;

namespace Sketch.Preview.Folder;

/// <summary>The result of a save.</summary>
/// <param name="Stamp">The stamp of the current content of the file.</param>
/// <param name="Theirs">What somebody else wrote to the file in the meantime, when nothing was saved because of it; else null.</param>
/// <param name="Problem">Why it could not be saved, in a plain sentence; empty when it was saved.</param>
/// <param name="IsNameRefused">Whether the problem is the name of a new file, so that only another name helps.</param>
public sealed record SaveResult(string Stamp, FileText? Theirs, string Problem, bool IsNameRefused = false);

/// <summary>
/// Saves texts of the page: atomically, keeping the previous text, and never over what another program wrote in the meantime.
/// </summary>
/// <param name="folder">The opened folder.</param>
public sealed class Saving(OpenedFolder folder)
{
    /// <summary>The stamp of a file that does not exist.</summary>
    public const string NoFile = "";

    /// <summary>
    /// The stamp of a file that exists but cannot be read: no content has it, so a save over the file is refused or asked about.
    /// </summary>
    public const string Unreadable = "unreadable";

    private readonly Lock _one = new();

    /// <summary>Saves a text if the content of the file is still the one that the page knows.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="path">Its path.</param>
    /// <param name="text">The text.</param>
    /// <param name="known">The stamp of the content that the page knows, <see cref="NoFile"/> for a new file.</param>
    public SaveResult Save(string name, string path, string text, string known)
    {
        lock (_one)
        {
            if (!folder.IsThere)
            {
                return new(known, null, $"\"{name}\" is not saved: {folder.Gone}");
            }

            FileText? there = null;
            byte[]? content = null;
            if (File.Exists(path))
            {
                var read = FileContent.Read(path, TextContent.Limit);
                var decoded = read.Then(FileText.Of);
                if (decoded.Problem is { } problem)
                {
                    return new("", null, $"\"{name}\" is not saved, because the file on the disk cannot be read: {problem}");
                }

                (content, there) = (read.Value, decoded.Value);
            }

            if ((there?.Stamp ?? NoFile) != known)
            {
                return new(there?.Stamp ?? NoFile, there ?? new("", NoFile, default), "");
            }

            // An existing file got its name elsewhere, so it is saved; a new file does not get such a name.
            if (there is null && NameProblem(name) is { Length: > 0 } refusal)
            {
                return new(NoFile, null, refusal, IsNameRefused: true);
            }

            // Replacing a file needs no permission to write to it, so its protection is checked.
            if (there is not null && new FileInfo(path).IsReadOnly)
            {
                return new(known, null, $"\"{name}\" is not saved: the file is protected against writing. Remove that where your files "
                    + "are shown "
                    + "(properties of the file, “read only”), then save again; what you typed stays here.");
            }

            var bytes = (there?.Form ?? default).Write(text);
            if (bytes.Length > TextContent.Limit)
            {
                return new(known, null, $"\"{name}\" is not saved: the text is larger than {TextContent.Limit / 1_000_000} MB, too "
                    + "large to read again.");
            }

            var reason = "because the old text cannot be kept: ";
            try
            {
                if (content is not null && !content.AsSpan().SequenceEqual(bytes))
                {
                    folder.Own.KeepEarlier(name, content);
                }

                reason = "since ";
                // Another program may write while this write is in progress; that is a conflict too.
                return SafeFile.Write(path, file => file.Write(bytes), () => StampAt(path) == known)
                    ? new(FileText.StampOf(bytes), null, "")
                    : new(StampAt(path), OpenedFolder.Read(path).ValueOrDefault ?? new("", NoFile, default), "");
            }
            catch (FileWriteException refused)
            {
                return new(known, null, $"\"{name}\" is not saved, {reason}{refused.Message}");
            }
        }
    }

    // Existing folders got their names elsewhere too.
    private string NameProblem(string name)
    {
        var steps = name.Split('/');
        var added = folder.HoldsFolderOf(name) ? steps[^1..] : steps;
        return added.Select(CarriedName.Problem).FirstOrDefault(p => p.Length > 0) ?? "";
    }

    private static string StampAt(string path) =>
        File.Exists(path) && FileContent.Read(path, TextContent.Limit).ValueOrDefault is { } content ? FileText.StampOf(content) : NoFile;
}
