using System.Collections.Immutable;
using Sketch.Drawing;
using Sketch.Lettering;
using Sketch.Shapes;
using Sketch.World;

namespace Sketch.Templates;

/// <summary>Words on a template.</summary>
/// <param name="Words">All the words.</param>
/// <param name="Runs">Each word at its place, in millimetres of the finished card.</param>
/// <param name="Box">The room that they take, in millimetres.</param>
public sealed record TemplateText(string Words, ImmutableArray<PlacedRun> Runs, Bounds Box)
{
    /// <summary>The outlines of the letters.</summary>
    public Outline Letters => new([.. Runs.SelectMany(r => r.Outline.Contours)]);

    /// <summary>The words shifted.</summary>
    public TemplateText Shift(double x, double y) => this with
    {
        Runs = [.. Runs.Select(r => r.Shift(x, y))],
        Box = new(Box.Left + x, Box.Top + y, Box.Right + x, Box.Bottom + y),
    };

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

    /// <summary>Height of a capital in millimetres.</summary>
    public const double CapitalHeight = Points * Point * TextRun.CapitalPerSize;

    // From the ink of one word to that of the next: wide enough that 1 3/4 is never read as 13/4.
    private const double Blank = Points * Point * 0.45;

    /// <summary>Lines of words one below the other with their top left corner at 0, 0.</summary>
    public TemplateText Set(params IReadOnlyList<string> lines)
    {
        var runs = ImmutableArray.CreateBuilder<PlacedRun>();
        var width = 0.0;
        for (var i = 0; i < lines.Count; i++)
        {
            // The lowest descenders reach as far below the last line as the room above the capitals of the first.
            var baseline = i * LineHeight + (LineHeight + CapitalHeight) / 2;
            var line = Place(lines[i]);
            width = Math.Max(width, line.Width);
            runs.AddRange(line.Words.Select(w => w.Shift(0, baseline)));
        }

        return new(string.Join(" / ", lines), runs.ToImmutable(), new(0, 0, width, lines.Count * LineHeight));
    }

    /// <summary>The width of a line of words, in millimetres.</summary>
    public double Width(string words) => Place(words).Width;

    /// <summary>
    /// Breaks words at blanks into lines no wider than <paramref name="width"/>; a longer single word is kept whole, and so is a mixed
    /// number such as 1 3/4, since either part alone reads as another size.
    /// </summary>
    public ImmutableArray<string> Wrap(string words, double width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var word in Unbroken(words.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
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

    private static IEnumerable<string> Unbroken(string[] words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            var isMixed = i + 1 < words.Length && words[i].All(char.IsAsciiDigit) && char.IsAsciiDigit(words[i + 1][0])
                && words[i + 1].Contains('/', StringComparison.Ordinal);
            yield return isMixed ? $"{words[i]} {words[++i]}" : words[i];
        }
    }

    /// <summary>The words of a line with their places on a baseline at 0, and the width of the line.</summary>
    private (List<PlacedRun> Words, double Width) Place(string words)
    {
        var placed = new List<PlacedRun>();
        var right = 0.0;
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var run = world.SetWords(word);
            var left = right == 0 ? 0 : right + Blank;
            placed.Add(new(run, left, 0, CapitalHeight));
            right = left + run.Width * CapitalHeight;
        }

        return (placed, right);
    }
}
