using System.Collections.Immutable;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Output.Artwork;
using Sketch.Output.Files;
using Sketch.Output.Lettering;
using Sketch.Output.Pictures;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Output.Folders;

/// <summary>
/// Files in memory and the fonts that come with Sketch, so that the same texts give the same card on every machine. Immutable. Names are
/// paths with slashes; a file names others relative to its own folder.
/// </summary>
public sealed class MemoryFiles : IWorld
{
    private static readonly FontLibrary OwnFonts = new([]);

    private readonly ImmutableDictionary<string, byte[]> _files;

    /// <summary>No files.</summary>
    public MemoryFiles()
        : this(ImmutableDictionary.Create<string, byte[]>(StringComparer.Ordinal))
    {
    }

    private MemoryFiles(ImmutableDictionary<string, byte[]> files) => _files = files;

    /// <summary>The same files and one more text, such as a stash; it replaces one of that name.</summary>
    public MemoryFiles With(string name, string text) => With(name, Encoding.UTF8.GetBytes(text));

    /// <summary>The same files and one more, such as a picture or a font; it replaces one of that name.</summary>
    public MemoryFiles With(string name, byte[] content) => new(_files.SetItem(Plain(name), content));

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn) => Find(path, namedIn).Then(content => TextContent.Decode(content))
        .Map(text => new SourceText(Resolve(path, namedIn), text));

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path)
    {
        var folder = FolderOf(Plain(path));
        return _files.Keys.Where(name => FolderOf(name) == folder).Select(name => name[folder.Length..]);
    }

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn) => Find(path, namedIn).Then(content =>
    {
        using var stream = new MemoryStream(content, writable: false);
        return ArtworkReader.Read(stream);
    });

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) => Find(path, namedIn)
        .Then(content => PaperScan.Read(() => new MemoryStream(content, writable: false), width.Millimetres));

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => font is null || !FontLibrary.IsFontFile(font)
        ? OwnFonts.Shape(words, font)
        : Find(font, namedIn).Then(content => FontLibrary.ShapeIn(words, content));

    /// <inheritdoc/>
    public TextRun SetWords(string words) => OwnFonts.Set(words);

    private Result<byte[]> Find(string path, string namedIn) =>
        _files.TryGetValue(Resolve(path, namedIn), out var content) ? Result.Of(content) : new Failure("there is no such file.");

    private static string Resolve(string path, string namedIn) => Plain(FolderOf(Plain(namedIn)) + path);

    private static string FolderOf(string name) => name[..(name.LastIndexOf('/') + 1)];

    /// <summary>A path without backslashes, dots and parent folders.</summary>
    private static string Plain(string path)
    {
        var steps = new List<string>();
        foreach (var step in path.Replace('\\', '/').Split('/').Where(s => s.Length > 0 && s != "."))
        {
            if (step == ".." && steps is [.., not ".."])
            {
                steps.RemoveAt(steps.Count - 1);
            }
            else
            {
                steps.Add(step);
            }
        }

        return string.Join('/', steps);
    }
}
