using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Output.Files;
using Sketch.Text;

namespace Sketch.Output.Lettering;

/// <summary>Finds fonts and shapes words with them; shaped words are cached. Thread-safe.</summary>
public sealed class FontLibrary
{
    /// <summary>Largest font file read: 50 MB, enough for a collection with Chinese, Japanese and Korean.</summary>
    public const int FontFileLimit = 50_000_000;

    // Otherwise a page that redraws while the user types would keep every half-written word.
    private const int RememberedWords = 4096;

    private readonly InstalledFonts _installed;
    private readonly ConcurrentDictionary<(string Path, int Index, DateTime Written), LetterFont?> _files = new();
    private readonly ConcurrentDictionary<(string Words, LetterFont Font), ShapedWords> _shaped = new();
    private readonly ConcurrentDictionary<string, TextRun> _set = new(StringComparer.Ordinal);

    /// <summary>The tool's own font and the fonts installed in the usual folders of the operating system.</summary>
    public FontLibrary()
        : this(InstalledFonts.UsualFolders())
    {
    }

    /// <summary>The tool's own font and the fonts in some folders and their subfolders.</summary>
    public FontLibrary(IEnumerable<string> folders) => _installed = new(folders);

    /// <summary>Whether a font's name is that of a file: it ends in .ttf, .otf, .ttc or .otc.</summary>
    public static bool IsFontFile(string name) =>
        Path.GetExtension(name).ToUpperInvariant() is ".TTF" or ".OTF" or ".TTC" or ".OTC";

    /// <summary>Shapes words in the tool's own font, or in an installed one.</summary>
    /// <param name="words">One line.</param>
    /// <param name="name">A family's name with or without style words ("Inter bold"); null for the tool's own font.</param>
    /// <returns>The shaped words; a problem of the font reads as the end of a sentence after a colon.</returns>
    public Result<ShapedWords> Shape(string words, string? name) => Find(name).Map(font => Shape(words, font));

    /// <summary>Shapes words in the first font of a file.</summary>
    /// <param name="words">One line.</param>
    /// <param name="path">The file.</param>
    /// <returns>The shaped words; a problem of the file reads as the end of a sentence after a colon.</returns>
    public Result<ShapedWords> ShapeInFile(string words, string path) => Open(path, 0).Map(font => Shape(words, font));

    /// <summary>Shapes words in the first font of a file's content, which is read anew each time.</summary>
    /// <param name="words">One line.</param>
    /// <param name="content">The content of the file.</param>
    /// <returns>The shaped words; a problem of the file reads as the end of a sentence after a colon.</returns>
    public static Result<ShapedWords> ShapeIn(string words, byte[] content) =>
        LetterFont.Open(content, 0) is { } font ? Result.Of(font.Shape(words)) : new Failure("it is not a valid font.");

    /// <summary>Sets one line of words in the tool's own font.</summary>
    public TextRun Set(string words)
    {
        if (_set.TryGetValue(words, out var known))
        {
            return known;
        }

        if (_set.Count > RememberedWords)
        {
            _set.Clear();
        }

        return _set.GetOrAdd(words, OwnFont.Plain.Open(OwnFont.Regular).Set);
    }

    private ShapedWords Shape(string words, LetterFont font)
    {
        if (_shaped.TryGetValue((words, font), out var known))
        {
            return known;
        }

        // To count locks the whole dictionary, so only new words do it.
        if (_shaped.Count > RememberedWords)
        {
            _shaped.Clear();
        }

        return _shaped.GetOrAdd((words, font), key => key.Font.Shape(key.Words));
    }

    private Result<LetterFont> Find(string? name)
    {
        if (name is null)
        {
            return Result.Of(OwnFont.Plain.Open(OwnFont.Regular));
        }

        var readings = FontName.Readings(name);
        foreach (var reading in readings)
        {
            var installed = _installed.OfFamily(reading.Family);
            if (OwnFont.Find(reading.Family) is { } own)
            {
                FontStyle style = new(reading.Weight ?? FontWeight.Regular, reading.Italic);
                if (own.Styles.Contains(style))
                {
                    return Result.Of(own.Open(style));
                }

                if (installed.IsEmpty)
                {
                    var styles = own.Styles.Select(s => new FontName(own.Name, s.Weight, s.Italic).Style);
                    return new Failure($"{own.Name} has no {reading.Style}; it has {string.Join(", ", styles)}.");
                }
            }

            if (!installed.IsEmpty)
            {
                return FindInstalled(reading, installed);
            }
        }

        var nearest = Nearest.Find(
            readings.IsEmpty ? "" : readings[^1].Family, [.. OwnFont.All.Select(f => f.Name), .. _installed.Families()]);
        return new Failure("no font of that name is installed; " + (nearest is null
            ? "write lettering and one of its kinds, or name an installed font or a font file beside the card."
            : $"did you mean \"{nearest}\"?"));
    }

    private Result<LetterFont> FindInstalled(FontName name, ImmutableArray<InstalledFont> family)
    {
        var wanted = (int)(name.Weight ?? FontWeight.Regular);
        var nearest = family.Where(f => f.Italic == name.Italic)
            .OrderBy(f => Math.Abs(f.Weight - wanted)).ThenBy(f => Math.Abs(f.Width - 5)).FirstOrDefault();
        if (name.Weight is null && !name.Italic)
        {
            nearest ??= family[0];
        }

        // A requested weight may be off by a step of 100, since font makers count them differently.
        if (nearest is null || (name.Weight is not null && Math.Abs(nearest.Weight - wanted) > 100))
        {
            return new Failure(
                $"{family[0].Family} has no {name.Style}; it has {string.Join(", ", family.Select(f => f.Style).Distinct())}.");
        }

        return Open(nearest.Path, nearest.Index);
    }

    private Result<LetterFont> Open(string path, int index)
    {
        var key = (path, index, FileContent.WrittenAt(path));
        if (!_files.TryGetValue(key, out var font))
        {
            var content = FileContent.Read(path, FontFileLimit);
            if (content.Problem is { } problem)
            {
                return new Failure(problem);
            }

            font = _files.GetOrAdd(key, _ => LetterFont.Open(content.Value, index));
        }

        return font is null ? new Failure("it is not a valid font.") : Result.Of(font);
    }
}
