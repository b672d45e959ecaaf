using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sketch.Output.Files;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Output.Lettering;

/// <summary>Finds fonts and shapes words with them; shaped words are cached. Thread-safe.</summary>
public sealed class FontShelf
{
    /// <summary>Largest font file read: 50 MB, enough for a collection with Chinese, Japanese and Korean.</summary>
    public const int FontFileLimit = 50_000_000;

    // Otherwise a page that redraws while the user types would keep every half-written word.
    private const int RememberedWords = 4096;

    private readonly InstalledFonts _installed;
    private readonly ConcurrentDictionary<(string Path, int Index, DateTime Written), LetterFont?> _files = new();
    private readonly ConcurrentDictionary<(string Words, LetterFont Font), ShapedWords> _shaped = new();

    /// <summary>The tool's own font and the fonts installed in the usual folders of the operating system.</summary>
    public FontShelf()
        : this(InstalledFonts.UsualFolders())
    {
    }

    /// <summary>The tool's own font and the fonts in some folders and their subfolders.</summary>
    public FontShelf(IEnumerable<string> folders) => _installed = new(folders);

    /// <summary>Whether a font's name is that of a file: it ends in .ttf, .otf, .ttc or .otc.</summary>
    public static bool IsFontFile(string name) =>
        Path.GetExtension(name).ToUpperInvariant() is ".TTF" or ".OTF" or ".TTC" or ".OTC";

    /// <summary>Shapes words in the tool's own font, or in an installed one.</summary>
    /// <param name="words">One line.</param>
    /// <param name="name">A family's name with or without style words ("Inter bold"); null for the tool's own font.</param>
    /// <param name="problem">Why there is no such font, as the end of a sentence after a colon; empty when there is.</param>
    /// <returns>The shaped words, or null with a problem.</returns>
    public ShapedWords? Shape(string words, string? name, out string problem) => Shape(words, Find(name, out problem));

    /// <summary>Shapes words in the first font of a file.</summary>
    /// <param name="words">One line.</param>
    /// <param name="path">The file.</param>
    /// <param name="problem">Why the file cannot be used, as the end of a sentence after a colon; empty when it can.</param>
    /// <returns>The shaped words, or null with a problem.</returns>
    public ShapedWords? ShapeInFile(string words, string path, out string problem) => Shape(words, Open(path, 0, out problem));

    private ShapedWords? Shape(string words, LetterFont? font)
    {
        if (font is null)
        {
            return null;
        }

        if (_shaped.Count > RememberedWords)
        {
            _shaped.Clear();
        }

        return _shaped.GetOrAdd((words, font), key => key.Font.Shape(key.Words));
    }

    private LetterFont? Find(string? name, out string problem)
    {
        problem = "";
        if (name is null)
        {
            return OwnFont.Plain.Open(OwnFont.Regular);
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
                    return own.Open(style);
                }

                if (installed.IsEmpty)
                {
                    var styles = own.Styles.Select(s => new FontName(own.Name, s.Weight, s.Italic).Style);
                    problem = $"{own.Name} has no {reading.Style}; it has {string.Join(", ", styles)}.";
                    return null;
                }
            }

            if (!installed.IsEmpty)
            {
                return FindInstalled(reading, installed, out problem);
            }
        }

        var nearest = Nearest.Find(
            readings.IsEmpty ? "" : readings[^1].Family, [.. OwnFont.All.Select(f => f.Name), .. _installed.Families()]);
        problem = "no font of that name is installed; " + (nearest is null
            ? "write lettering and one of its kinds, or name an installed font or a font file beside the card."
            : $"did you mean \"{nearest}\"?");
        return null;
    }

    private LetterFont? FindInstalled(FontName name, ImmutableArray<InstalledFont> family, out string problem)
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
            problem = $"{family[0].Family} has no {name.Style}; it has {string.Join(", ", family.Select(f => f.Style).Distinct())}.";
            return null;
        }

        return Open(nearest.Path, nearest.Index, out problem);
    }

    private LetterFont? Open(string path, int index, out string problem)
    {
        var key = (path, index, FileContent.WrittenAt(path));
        if (!_files.TryGetValue(key, out var font))
        {
            if (FileContent.Read(path, FontFileLimit, out problem) is not { } content)
            {
                return null;
            }

            font = _files.GetOrAdd(key, _ => LetterFont.Open(content, index));
        }

        problem = font is null ? "it is not a valid font." : "";
        return font;
    }
}
