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
/// The real world: files on disk and the fonts of this machine. A file may name files in its own folder and the folders
/// in it; files elsewhere, including by a link, only if that is allowed. Backslashes in names count as slashes, so that
/// files written on Windows can be read anywhere. Problems read as the end of a sentence after a colon: "it is not a font."
/// </summary>
/// <param name="mayLeaveFolder">Whether files may name files outside their own folder.</param>
/// <param name="fonts">The fonts; null for the tool's own font and the installed ones.</param>
/// <param name="asked">Is told the path of each file that another file names, before it is read, whether it exists or not.</param>
public sealed class FolderFiles(bool mayLeaveFolder = false, FontLibrary? fonts = null, Action<string>? asked = null) : IWorld
{
    private const int MostNames = 10_000;

    private readonly FontLibrary _fonts = fonts ?? new();

    /// <summary>Reads a file named on the command line, from any folder.</summary>
    public static FileReading ReadFile(string path) => Reading(path, limit => FileContent.ReadUpTo(path, limit));

    /// <summary>Reads a stream, such as standard input, as if it were a file of the current folder.</summary>
    /// <param name="name">What the file is called.</param>
    /// <param name="content">The stream, which is read to its end.</param>
    public static FileReading ReadStream(string name, Stream content) => Reading(name, limit => FileContent.ReadUpTo(content, limit));

    private static FileReading Reading(string path, Func<int, Result<byte[]>> content)
    {
        Result<string> read;
        try
        {
            read = content(TextContent.Limit).Then(bytes => TextContent.Decode(bytes));
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new(null, null, $"\"{path}\" cannot be opened: {FileTrouble.Reason(exception, path)}.");
        }

        if (read.Problem is not { } problem)
        {
            return new(new(path, read.Value), null, "");
        }

        var empty = new SourceText(path, "");
        var location = new Location(empty, new(0, 0));
        return new(empty, new(FindingCatalogue.Unreadable, location, $"\"{path}\" cannot be read: {problem}",
            "Name a card, stash or batch file, saved as plain text in UTF-8."), "");
    }

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn) => Find(path, namedIn).Then(found =>
        FileContent.Read(found, TextContent.Limit).Then(content => TextContent.Decode(content)).Map(text => new SourceText(found, text)));

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path)
    {
        try
        {
            return [.. Directory.EnumerateFiles(Path.GetDirectoryName(Path.GetFullPath(path))!).Take(MostNames)
                .Select(f => Path.GetFileName(f))];
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return [];
        }
    }

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn) =>
        Find(path, namedIn).Then(found => FileContent.Read(found, ArtworkReader.FileLimit)).Then(content =>
        {
            using var stream = new MemoryStream(content, writable: false);
            return ArtworkReader.Read(stream);
        });

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) =>
        Find(path, namedIn).Then(found => PaperScan.Read(found, width.Millimetres));

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => font is null || !FontLibrary.IsFontFile(font)
        ? _fonts.Shape(words, font)
        : Find(font, namedIn).Then(found => _fonts.ShapeInFile(words, found));

    /// <inheritdoc/>
    public TextRun SetWords(string words) => _fonts.Set(words);

    private Result<string> Find(string path, string namedIn)
    {
        var written = path.Replace('\\', '/');
        try
        {
            var folder = Path.GetDirectoryName(namedIn) ?? "";
            var found = Path.Combine(folder, written);
            if (!mayLeaveFolder && (Path.IsPathRooted(written) || FolderBounds.Leaves(folder, written)))
            {
                return new Failure(
                    $"it lies outside the folder of \"{Path.GetFileName(namedIn)}\"; put it into that folder or one in it.");
            }

            asked?.Invoke(found);
            return Result.Of(found);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new Failure($"{FileTrouble.Reason(exception, path)}.");
        }
    }
}
