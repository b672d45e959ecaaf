using System.Collections.Concurrent;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Preview.Views;

/// <summary>
/// The files of the opened folder, with what is slow to read remembered until the file changes: pictures of papers and artwork. A card is
/// read anew on every keystroke, but its pictures are not.
/// </summary>
/// <param name="fonts">The fonts.</param>
public sealed class CachedFiles(FontShelf fonts) : IWorld
{
    private const int Most = 64;

    private readonly FolderFiles _files = new(fonts: fonts);
    private readonly ConcurrentDictionary<(FileState, Length), IPaperPicture> _pictures = new();
    private readonly ConcurrentDictionary<FileState, Outline> _artwork = new();

    /// <inheritdoc/>
    public SourceText? ReadText(string path, string namedIn, out string problem) => _files.ReadText(path, namedIn, out problem);

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path) => _files.NamesBeside(path);

    /// <inheritdoc/>
    public Outline? ReadArtwork(string path, string namedIn, out string problem)
    {
        problem = "";
        var state = StateOf(path, namedIn);
        if (state is { } known && _artwork.TryGetValue(known, out var kept))
        {
            return kept;
        }

        var outline = _files.ReadArtwork(path, namedIn, out problem);
        return state is { } read ? Keep(_artwork, read, outline) : outline;
    }

    /// <inheritdoc/>
    public IPaperPicture? ReadPicture(string path, string namedIn, Length width, out string problem)
    {
        problem = "";
        var state = StateOf(path, namedIn);
        if (state is { } known && _pictures.TryGetValue((known, width), out var kept))
        {
            return kept;
        }

        var picture = _files.ReadPicture(path, namedIn, width, out problem);
        return state is { } read ? Keep(_pictures, (read, width), picture) : picture;
    }

    /// <inheritdoc/>
    public ShapedWords? ShapeWords(string words, string? font, string namedIn, out string problem) =>
        _files.ShapeWords(words, font, namedIn, out problem);

    // The folder of the file that names it and the name as written: whether a file may be named depends on both.
    private readonly record struct FileState(string Folder, string Name, DateTime Written, long Size);

    private static FileState? StateOf(string path, string namedIn)
    {
        try
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(namedIn))!;
            var file = new FileInfo(Path.GetFullPath(path.Replace('\\', '/'), folder));
            return file.Exists ? new(folder, path, file.LastWriteTimeUtc, file.Length) : null;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    // A refusal is not kept: it may be lifted, as by leave to read, without a change of the file.
    private static TValue? Keep<TKey, TValue>(ConcurrentDictionary<TKey, TValue> cache, TKey key, TValue? value)
        where TKey : notnull
        where TValue : class
    {
        if (value is not null)
        {
            if (cache.Count >= Most)
            {
                cache.Clear();
            }

            cache[key] = value;
        }

        return value;
    }
}
