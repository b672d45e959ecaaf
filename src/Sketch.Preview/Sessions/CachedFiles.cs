using System.Collections.Concurrent;
using System.Security.Cryptography;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Preview.Sessions;

/// <summary>
/// The files of the opened folder, with what is slow to read cached until the file changes: pictures of papers and artwork. At most
/// <see cref="Most"/> of each are held.
/// </summary>
/// <param name="fonts">The fonts.</param>
public sealed class CachedFiles(FontLibrary fonts) : IWorld
{
    private const int Most = 64;

    // Two writes within the resolution of a file's time may leave time and length the same. The coarsest in use (FAT) is two seconds.
    private static readonly TimeSpan TimeResolution = TimeSpan.FromSeconds(2);

    private readonly FolderFiles _files = new(fonts: fonts);
    private readonly ConcurrentDictionary<(FileState, Length), IPaperPicture> _pictures = new();
    private readonly ConcurrentDictionary<FileState, Outline> _artwork = new();

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn) => _files.ReadText(path, namedIn);

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path) => _files.NamesBeside(path);

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn)
    {
        var state = StateOf(path, namedIn);
        if (state is { } known && _artwork.TryGetValue(known, out var kept))
        {
            return Result.Of(kept);
        }

        var outline = _files.ReadArtwork(path, namedIn);
        return state is { } before && before == StateOf(path, namedIn) ? Keep(_artwork, before, outline) : outline;
    }

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width)
    {
        var state = StateOf(path, namedIn);
        if (state is { } known && _pictures.TryGetValue((known, width), out var kept))
        {
            return Result.Of(kept);
        }

        var picture = _files.ReadPicture(path, namedIn, width);
        return state is { } before && before == StateOf(path, namedIn) ? Keep(_pictures, (before, width), picture) : picture;
    }

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => _files.ShapeWords(words, font, namedIn);

    /// <inheritdoc/>
    public TextRun SetWords(string words) => _files.SetWords(words);

    /// <summary>
    /// What identifies the content of a file. It includes the folder of the file that names it and the name as written, since
    /// whether a file may be named depends on both.
    /// </summary>
    /// <param name="Folder">The folder of the file that names it.</param>
    /// <param name="Name">The name as written.</param>
    /// <param name="Written">When it was last written, in UTC.</param>
    /// <param name="Length">Its length in bytes.</param>
    /// <param name="Hash">The hash of its content where the time is too recent to distinguish two contents, else empty.</param>
    private readonly record struct FileState(string Folder, string Name, DateTime Written, long Length, string Hash);

    private static FileState? StateOf(string path, string namedIn)
    {
        try
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(namedIn))!;
            var file = new FileInfo(Path.GetFullPath(path.Replace('\\', '/'), folder));
            if (!file.Exists || OrdinaryFile.IsOtherwise(file.FullName))
            {
                return null;
            }

            var isRecent = file.LastWriteTimeUtc > DateTime.UtcNow - TimeResolution;
            return new(folder, path, file.LastWriteTimeUtc, file.Length, isRecent ? HashOf(file.FullName) : "");
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    private static string HashOf(string path)
    {
        using var content = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return Convert.ToHexStringLower(SHA256.HashData(content));
    }

    // A failure is not cached: it may be cured without a change of the file, for example by a permission.
    private static Result<TValue> Keep<TKey, TValue>(ConcurrentDictionary<TKey, TValue> cache, TKey key, Result<TValue> read)
        where TKey : notnull
        where TValue : class
    {
        if (read.ValueOrDefault is { } value)
        {
            if (cache.Count >= Most)
            {
                cache.Clear();
            }

            cache[key] = value;
        }

        return read;
    }
}
