namespace Sketch.Output.Files;

/// <summary>
/// The operating system refused to write a file. <see cref="Exception.Message"/> is a plain sentence for the user.
/// </summary>
public sealed class FileWriteException(string path, string message, Exception reason) : IOException(message, reason)
{
    /// <summary>The file that could not be written.</summary>
    public string Path { get; } = path;
}

/// <summary>Writes files so that each is complete or absent, whatever happens in between.</summary>
public static class SafeFile
{
    /// <summary>
    /// Writes a file under another name in its folder and renames it when it is complete. Missing folders are created. A file
    /// that exists keeps its permissions, and is unchanged on any failure; a link keeps its target.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="write">Writes the content; the stream can seek. Its exceptions are rethrown after cleaning up.</param>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it.</exception>
    public static void Write(string path, Action<Stream> write) => Write(path, write, () => true);

    /// <summary>The same, unless at the last moment the existing file turns out to be worth keeping.</summary>
    /// <param name="path">The file.</param>
    /// <param name="write">Writes the content.</param>
    /// <param name="mayReplace">Called when everything is written and only the renaming remains.</param>
    /// <returns>Whether the file was written; if not, nothing has changed.</returns>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it.</exception>
    public static bool Write(string path, Action<Stream> write, Func<bool> mayReplace)
    {
        var writing = false;
        try
        {
            var target = System.IO.Path.GetFullPath(path);
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(target) ?? target);
            if (new FileInfo(target).LinkTarget is not null)
            {
                target = File.ResolveLinkTarget(target, returnFinalTarget: true)!.FullName;
            }

            if (Directory.Exists(target))
            {
                throw new IOException("a folder");
            }

            using var file = PartialFile.For(target);
            writing = true;
            write(file.Content);
            file.Content.Flush(flushToDisk: true);
            writing = false;
            if (!mayReplace())
            {
                return false;
            }

            file.Complete(target);
            return true;
        }
        catch (Exception exception) when (writing ? exception is IOException : FileTrouble.Is(exception))
        {
            throw new FileWriteException(path, $"\"{path}\" cannot be written: {FileTrouble.Reason(exception, path)}.", exception);
        }
    }

    /// <summary>Deletes partial files of killed processes in a folder; files of other programs stay.</summary>
    public static void DeleteOrphans(string folder) => PartialFile.DeleteOrphans(folder);

    /// <summary>Writes a text file in UTF-8 without a byte order mark.</summary>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it.</exception>
    public static void WriteText(string path, string text) => Write(path, stream => Put(stream, text));

    /// <summary>The same, unless the file exists.</summary>
    /// <returns>Whether it was written.</returns>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it.</exception>
    public static bool WriteNewText(string path, string text) => Write(path, stream => Put(stream, text), () => !File.Exists(path));

    private static void Put(Stream stream, string text)
    {
        using var writer = new StreamWriter(stream, leaveOpen: true);
        writer.Write(text);
    }
}
