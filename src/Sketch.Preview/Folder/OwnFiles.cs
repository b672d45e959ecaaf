using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Sketch.Output.Files;

namespace Sketch.Preview.Folder;

/// <summary>
/// The files that the tool itself keeps in a folder, hidden in <c>.sketch</c>: texts as they were before they were overwritten, and edits
/// not saved yet. Nothing else is ever written there, and it can be deleted at any time.
/// </summary>
/// <param name="root">The full path of the opened folder.</param>
public sealed class OwnFiles(string root)
{
    /// <summary>How many earlier versions of a file are kept.</summary>
    public const int EarlierLimit = 20;

    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private const string TimeForm = "yyyyMMdd-HHmmss-fff";

    private readonly string _earlier = Path.Combine(root, ".sketch", "earlier");

    /// <summary>The folder of unsaved edits.</summary>
    public string Drafts { get; } = Path.Combine(root, ".sketch", "drafts");

    /// <summary>Keeps a text before it is overwritten; a text that is already kept is not kept twice.</summary>
    /// <param name="name">The file's name in the opened folder.</param>
    /// <param name="content">Its bytes.</param>
    /// <exception cref="FileWriteException">The disk does not allow it.</exception>
    public void KeepEarlier(string name, byte[] content)
    {
        var folder = FolderOf(name);
        var kept = Earlier(name);
        if (kept is [var last, ..] && FileContent.Read(Path.Combine(folder, last), TextContent.Limit).ValueOrDefault is { } same
            && same.AsSpan().SequenceEqual(content))
        {
            return;
        }

        // Two saves within a millisecond must not use the same name.
        var time = DateTime.UtcNow;
        while (File.Exists(PathAt(time)))
        {
            time = time.AddMilliseconds(1);
        }

        Write(PathAt(time), file => file.Write(content));
        foreach (var old in kept.Skip(EarlierLimit - 1))
        {
            Remove(Path.Combine(folder, old));
        }

        string PathAt(DateTime at) => Path.Combine(folder, at.ToString(TimeForm, CultureInfo.InvariantCulture) + ".txt");
    }

    // Nobody else may read the hidden folder: its texts may come from files that nobody else may read.
    private void Prepare()
    {
        try
        {
            var folder = Path.Combine(root, ".sketch");
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, OwnerOnly);
            }
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            throw new FileWriteException(root, $"\"{root}\" takes no new folder: {refused.Message}", refused);
        }
    }

    /// <summary>The earlier versions of a file, by the names under which they are kept, latest first.</summary>
    public IReadOnlyList<string> Earlier(string name)
    {
        var folder = FolderOf(name);
        return Directory.Exists(folder) && IsWithin(folder)
            ? [.. Directory.GetFiles(folder, "*.txt").Select(f => Path.GetFileName(f)).Where(f => TimeOf(f) is not null)
            .OrderDescending(StringComparer.Ordinal)]
            : [];
    }

    /// <summary>When an earlier version was overwritten, in UTC; null for an invalid name.</summary>
    public static DateTime? TimeOf(string kept) =>
        DateTime.TryParseExact(Path.GetFileNameWithoutExtension(kept), TimeForm, CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var time)
            ? time
            : null;

    /// <summary>Reads an earlier version; null when there is none of that name.</summary>
    public FileText? ReadEarlier(string name, string kept)
    {
        var path = Path.Combine(FolderOf(name), kept);
        return TimeOf(kept) is not null && Path.GetFileName(kept) == kept && IsWithin(path) ? OpenedFolder.Read(path).ValueOrDefault : null;
    }

    /// <summary>Writes a file of the tool's own; one that a link would place elsewhere is not written.</summary>
    /// <exception cref="FileWriteException">The disk does not allow it.</exception>
    public void Write(string path, Action<Stream> write)
    {
        if (!IsWithin(path))
        {
            throw new FileWriteException(
                path, $"\"{path}\" cannot be written: a link there leads out of the folder.", new IOException("a link"));
        }

        // A folder that was deleted or renamed is not recreated for this: it would be in the way when the folder is restored.
        if (!Directory.Exists(root))
        {
            throw new FileWriteException(
                path, $"\"{path}\" cannot be written: there is no folder \"{root}\".", new DirectoryNotFoundException());
        }

        Prepare();
        SafeFile.Write(path, write);
    }

    /// <summary>Whether a path of the tool's own is still in the opened folder, with links followed.</summary>
    public bool IsWithin(string path) => OpenedFolder.Holds(root, Path.GetRelativePath(root, path));

    /// <summary>Deletes a file of the tool's own; one that cannot be deleted stays, and does no harm.</summary>
    public static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
        }
    }

    // Names of files may be too long for names of folders, or contain invalid characters.
    private string FolderOf(string name) =>
        Path.Combine(_earlier, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(name)).AsSpan(0, 12)));
}
