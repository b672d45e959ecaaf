using Sketch.Diagnostics;
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
public sealed class FolderFiles(bool mayLeaveFolder = false, FontShelf? fonts = null) : IWorld
{
    private const int MostNames = 10_000;

    private readonly FontShelf _fonts = fonts ?? new();

    /// <summary>Reads a file named on the command line, from any folder.</summary>
    public static FileReading ReadFile(string path)
    {
        byte[]? content;
        string problem;
        try
        {
            content = FileContent.ReadUpTo(path, TextContent.Limit, out problem);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new(null, null, $"\"{path}\" cannot be opened: {FileTrouble.Reason(exception, path)}.");
        }

        if (content is not null && TextContent.Decode(content, out problem) is { } text)
        {
            return new(new(path, text), null, "");
        }

        var empty = new SourceText(path, "");
        var location = new Location(empty, new(0, 0));
        return new(empty, new(FindingCatalogue.Unreadable, location, $"\"{path}\" cannot be read: {problem}",
            "Name a card, stash or batch file, saved as plain text in UTF-8."), "");
    }

    /// <inheritdoc/>
    public SourceText? ReadText(string path, string namedIn, out string problem)
    {
        var content = Read(path, namedIn, TextContent.Limit, out problem, out var found);
        var text = content is null ? null : TextContent.Decode(content, out problem);
        return text is null ? null : new(found, text);
    }

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
    public Outline? ReadArtwork(string path, string namedIn, out string problem)
    {
        var content = Read(path, namedIn, ArtworkReader.FileLimit, out problem, out _);
        if (content is null)
        {
            return null;
        }

        using var stream = new MemoryStream(content, writable: false);
        return ArtworkReader.Read(stream, out problem);
    }

    /// <inheritdoc/>
    public IPaperPicture? ReadPicture(string path, string namedIn, Length width, out string problem) =>
        Find(path, namedIn, out problem) is { } found ? PaperScan.Read(found, width.Millimetres, out problem) : null;

    /// <inheritdoc/>
    public ShapedWords? ShapeWords(string words, string? font, string namedIn, out string problem)
    {
        if (font is null || !FontShelf.IsFontFile(font))
        {
            return _fonts.Shape(words, font, out problem);
        }

        return Find(font, namedIn, out problem) is { } found ? _fonts.ShapeInFile(words, found, out problem) : null;
    }

    private byte[]? Read(string path, string namedIn, int limit, out string problem, out string found)
    {
        found = Find(path, namedIn, out problem) ?? "";
        return problem.Length == 0 ? FileContent.Read(found, limit, out problem) : null;
    }

    private string? Find(string path, string namedIn, out string problem)
    {
        var written = path.Replace('\\', '/');
        try
        {
            var folder = Path.GetDirectoryName(namedIn) ?? "";
            var found = Path.Combine(folder, written);
            if (!mayLeaveFolder && (Path.IsPathRooted(written) || FolderBounds.Leaves(folder, written)))
            {
                problem = $"it lies outside the folder of \"{Path.GetFileName(namedIn)}\"; put it into that folder or one in it.";
                return null;
            }

            problem = "";
            return found;
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            problem = $"{FileTrouble.Reason(exception, path)}.";
            return null;
        }
    }
}
