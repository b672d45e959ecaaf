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
public sealed class FolderFiles(bool mayLeaveFolder = false, FontLibrary? fonts = null) : IWorld
{
    private const int MostNames = 10_000;

    private readonly FontLibrary _fonts = fonts ?? new();

    /// <summary>Reads a file named on the command line, from any folder.</summary>
    public static FileReading ReadFile(string path)
    {
        Result<string> read;
        try
        {
            read = FileContent.ReadUpTo(path, TextContent.Limit).Then(content => TextContent.Decode(content));
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

            return Result.Of(found);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new Failure($"{FileTrouble.Reason(exception, path)}.");
        }
    }
}
