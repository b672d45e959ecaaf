using System.Collections.Concurrent;
using Sketch.Diagnostics;
using Sketch.Editors.Protocol;
using Sketch.Lettering;
using Sketch.Offers;
using Sketch.Output.Lettering;
using Sketch.Papers;
using Sketch.Planning.Plans;
using Sketch.Preview.Sessions;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Editors.Documents;

/// <summary>
/// The texts that are open in the editor, and the files beside them. What is open counts instead of the file on the disk, also for the
/// texts that name it.
/// </summary>
internal sealed class OpenDocuments : IWorld
{
    private static readonly string[] Kinds = [".card", ".stash", ".batch"];

    private readonly ConcurrentDictionary<string, OpenDocument> _open = new(StringComparer.Ordinal);
    private readonly CachedFiles _files = new(new FontLibrary());
    private readonly Compilations _compilations;

    /// <summary>None is open.</summary>
    public OpenDocuments() => _compilations = new(this);

    /// <summary>All of them.</summary>
    public IEnumerable<OpenDocument> All => _open.Values.OrderBy(d => d.Uri, StringComparer.Ordinal);

    /// <summary>An open text; null where none has that address.</summary>
    public OpenDocument? Find(string uri) => _open.GetValueOrDefault(uri);

    /// <summary>A text is opened.</summary>
    public void Open(DocumentText opened) => _open[opened.Uri] = OpenDocument.Of(opened);

    /// <summary>A text is changed; what is not open is left alone.</summary>
    public void Change(ChangedDocument changed)
    {
        if (Find(changed.TextDocument.Uri) is { } document)
        {
            _open[document.Uri] = document.After(changed.TextDocument.Version, changed.ContentChanges);
        }
    }

    /// <summary>A text is closed.</summary>
    public void Close(string uri) => _open.TryRemove(uri, out _);

    /// <summary>A text read, laid out and checked; for a batch also with what it names.</summary>
    public Compilation Check(OpenDocument document) => BatchCheck.Of(Compile(document), this, _compilations.Of);

    /// <summary>A text read, laid out and checked by itself.</summary>
    public Compilation Compile(OpenDocument document) => _compilations.Of(document.Source);

    /// <summary>What is beside a text.</summary>
    public FilesBeside Beside(OpenDocument document) => _compilations.Beside(document.Source.Path);

    /// <summary>All cards, stashes and batches in the folder of a file; those that are open are as in the editor.</summary>
    public IReadOnlyList<OpenDocument> InFolderOf(string path)
    {
        var folder = FolderOf(path);
        var open = All.Where(d => FolderOf(d.Source.Path) == folder).ToList();
        return
        [
            .. open,
            .. NamesBeside(path).Where(name => Kinds.Contains(Path.GetExtension(name)))
                .Except(open.Select(d => Path.GetFileName(d.Source.Path)))
                .Select(name => _files.ReadText(name, path).ValueOrDefault).OfType<SourceText>()
                .Select(source => new OpenDocument(FileAddress.UriOf(source.Path), 0, source)),
        ];

        static string? FolderOf(string path) => Path.GetDirectoryName(Path.GetFullPath(path));
    }

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn)
    {
        var read = _files.ReadText(path, namedIn);
        return read.ValueOrDefault is { } file && _open.Values.FirstOrDefault(d => IsAt(d, file.Path)) is { } open
            ? Result.Of(new SourceText(file.Path, open.Source.Content)) : read;
    }

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path) => _files.NamesBeside(path);

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn) => _files.ReadArtwork(path, namedIn);

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) => _files.ReadPicture(path, namedIn, width);

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => _files.ShapeWords(words, font, namedIn);

    /// <inheritdoc/>
    public TextRun SetWords(string words) => _files.SetWords(words);

    private static bool IsAt(OpenDocument document, string path) =>
        Path.GetFullPath(document.Source.Path) == Path.GetFullPath(path);
}
