using System.Collections.Concurrent;
using Sketch.Output.Files;
using Sketch.Output.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Surroundings;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>
/// The files of the opened folder, with what is slow to read remembered until the file changes: pictures of papers and artwork. A card is read
/// anew on every keystroke, but its pictures are not.
/// </summary>
/// <param name="fonts">The fonts.</param>
public sealed class CachedFiles(FontShelf fonts) : ISurroundings
{
    private const int Most = 64;

    private readonly FolderFiles _files = new(fonts: fonts);
    private readonly ConcurrentDictionary<(string, Length, DateTime, long), (IPaperPicture? Picture, string Problem)> _pictures = new();
    private readonly ConcurrentDictionary<(string, DateTime, long), (Outline? Outline, string Problem)> _artwork = new();

    /// <inheritdoc/>
    public SourceText? ReadText(string path, string namedIn, out string problem) => _files.ReadText(path, namedIn, out problem);

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path) => _files.NamesBeside(path);

    /// <inheritdoc/>
    public Outline? ReadArtwork(string path, string namedIn, out string problem)
    {
        if (StateOf(path, namedIn) is not { } state)
        {
            return _files.ReadArtwork(path, namedIn, out problem);
        }

        Bound(_artwork);
        (var outline, problem) = _artwork.GetOrAdd((state.Path, state.Written, state.Size), _ => (_files.ReadArtwork(path, namedIn, out var found), found));
        return outline;
    }

    /// <inheritdoc/>
    public IPaperPicture? ReadPicture(string path, string namedIn, Length width, out string problem)
    {
        if (StateOf(path, namedIn) is not { } state)
        {
            return _files.ReadPicture(path, namedIn, width, out problem);
        }

        Bound(_pictures);
        (var picture, problem) = _pictures.GetOrAdd((state.Path, width, state.Written, state.Size), _ => (_files.ReadPicture(path, namedIn, width, out var found), found));
        return picture;
    }

    /// <inheritdoc/>
    public ShapedWords? ShapeWords(string words, string? font, string namedIn, out string problem) => _files.ShapeWords(words, font, namedIn, out problem);

    private static (string Path, DateTime Written, long Size)? StateOf(string path, string namedIn)
    {
        try
        {
            var file = new FileInfo(Path.GetFullPath(path.Replace('\\', '/'), Path.GetDirectoryName(Path.GetFullPath(namedIn))!));
            return file.Exists ? (file.FullName, file.LastWriteTimeUtc, file.Length) : null;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    private static void Bound<TKey, TValue>(ConcurrentDictionary<TKey, TValue> cache)
        where TKey : notnull
    {
        if (cache.Count >= Most)
        {
            cache.Clear();
        }
    }
}
