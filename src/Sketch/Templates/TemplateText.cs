using System.Collections.Immutable;
using Sketch.Shapes;
using Sketch.World;

namespace Sketch.Templates;

/// <summary>Words on a template, as outlines of letters.</summary>
/// <param name="Words">The words, for readers of the SVG.</param>
/// <param name="Letters">The letters at their place.</param>
/// <param name="Box">The room that they take, in millimetres.</param>
public sealed record TemplateText(string Words, Outline Letters, Bounds Box)
{
    /// <summary>The words shifted.</summary>
    public TemplateText Shift(double x, double y) =>
        this with { Letters = Letters.Transform(Affine.Shift(x, y)), Box = new(Box.Left + x, Box.Top + y, Box.Right + x, Box.Bottom + y) };

    /// <summary>The words centred on a place.</summary>
    public TemplateText CentredAt(Point centre) => Shift(centre.X - Box.Centre.X, centre.Y - Box.Centre.Y);
}

/// <summary>Sets words for templates, all in one size that older people can read: 12 points.</summary>
/// <param name="world">Shapes the words in the tool's own font.</param>
public sealed class TemplateLettering(IWorld world)
{
    /// <summary>Millimetres in a point, 1/72 in.</summary>
    public const double Point = 25.4 / 72;

    /// <summary>Size of the letters in points.</summary>
    public const double Points = 12;

    /// <summary>From one line to the next, in millimetres: 1.2 times the size, as usual in print.</summary>
    public const double LineHeight = Points * Point * 1.2;

    // The tool's own font has capitals of 0.727 of its size; those of most text faces are close to that.
    private const double CapitalHeight = Points * Point * 0.727;

    // From the ink of one word to that of the next: wide enough that 1 3/4 is never read as 13/4.
    private const double Blank = Points * Point * 0.45;

    private readonly Dictionary<string, (Outline Letters, double Width)> _shaped = new(StringComparer.Ordinal);

    /// <summary>Lines of words one below the other with their top left corner at 0, 0.</summary>
    public TemplateText Set(params IReadOnlyList<string> lines)
    {
        var contours = ImmutableArray.CreateBuilder<Contour>();
        var width = 0.0;
        for (var i = 0; i < lines.Count; i++)
        {
            // The lowest descenders reach as far below the last line as the room above the capitals of the first.
            var baseline = i * LineHeight + (LineHeight + CapitalHeight) / 2;
            var line = Place(lines[i]);
            width = Math.Max(width, line.Width);
            contours.AddRange(line.Words.SelectMany(w => w.Letters.Transform(Affine.Shift(w.Left, baseline)).Contours));
        }

        return new(string.Join(" / ", lines), new(contours.ToImmutable()), new(0, 0, width, lines.Count * LineHeight));
    }

    /// <summary>The width of a line of words, in millimetres.</summary>
    public double Width(string words) => Place(words).Width;

    /// <summary>Breaks words at blanks into lines no wider than <paramref name="width"/>; a longer single word is kept whole.</summary>
    public ImmutableArray<string> Wrap(string words, double width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    /// <summary>The words of a line with their places, and the width of the line.</summary>
    private (List<(Outline Letters, double Left)> Words, double Width) Place(string words)
    {
        var placed = new List<(Outline Letters, double Left)>();
        var right = 0.0;
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var (letters, width) = ShapeWord(word);
            var left = right == 0 ? 0 : right + Blank;
            placed.Add((letters, left));
            right = left + width;
        }

        return (placed, right);
    }

    /// <summary>Cached, since labels repeat the same few words and numbers.</summary>
    private (Outline Letters, double Width) ShapeWord(string word)
    {
        if (!_shaped.TryGetValue(word, out var shaped))
        {
            var letters = world.ShapeWords(word, null, "").ValueOrDefault?.Outline.Transform(Affine.Scale(CapitalHeight, CapitalHeight))
                ?? Outline.Empty;
            shaped = _shaped[word] = (letters, letters.Bounds.Right);
        }

        return shaped;
    }
}
