using System.Collections.Immutable;
using Sketch.Lettering;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Messages;

/// <summary>A message set in its place.</summary>
/// <param name="Lines">Its lines, broken so that they fit.</param>
/// <param name="Ink">The outlines of its letters in millimetres, with the top left corner of the place at 0, 0.</param>
/// <param name="Letters">The height of a capital in millimetres.</param>
/// <param name="Fits">Whether it stays within its place.</param>
public sealed record SetMessage(ImmutableArray<string> Lines, Outline Ink, double Letters, bool Fits)
{
    // Room around the words on a strip, as at the ends of words that a piece fits.
    private const double Room = 3.175;

    // From one line to the next in heights of a capital, as on a card.
    private const double LineDistance = 1.75;

    // Letters on writing lines are at most so high, in parts of the distance between lines.
    private const double OnLines = 0.55;

    private const double Step = 0.25;

    // The least height of a small x, 2 mm for older readers (RNIB clear print).
    private const double LeastSmallLetter = 2;

    /// <summary>
    /// Sets a message in the largest letters up to those of large print in which it fits, but in none that are too small to read; null
    /// if its font cannot be used.
    /// </summary>
    /// <param name="message">The message.</param>
    /// <param name="place">The place.</param>
    /// <param name="card">The card, whose lettering holds where the message has none.</param>
    /// <param name="world">Shapes the words.</param>
    public static SetMessage? In(MessagePlace place, CardMessage message, LaidOutCard card, IWorld world)
    {
        var font = message.Font ?? card.Font;
        var setter = new Setter(place, message, s => world.ShapeWords(
            s, font?.Name, font?.NamedIn ?? message.Location.Source.Path).ValueOrDefault);
        return setter.Set(card.Units);
    }

    private sealed class Setter(MessagePlace place, CardMessage message, Func<string, ShapedWords?> shape)
    {
        private readonly Dictionary<string, ShapedWords?> _shaped = [];
        private readonly double _margin = place.Lines is null ? Room : 0;

        private double Width => place.Box.Width.Millimetres - 2 * _margin;

        private double Height => place.Box.Height.Millimetres - 2 * _margin;

        public SetMessage? Set(UnitSystem units)
        {
            if (Shape("x") is not { } small || message.Lines.Any(l => Shape(l) is null))
            {
                return null;
            }

            var usual = units == UnitSystem.Inches ? Length.Inch(0, 3, 16).Millimetres : Length.Millimetre(5).Millimetres;
            var most = place.Lines is { } apart ? Math.Min(usual, apart.Millimetres * OnLines) : usual;
            var least = LeastSmallLetter / Math.Max(0.1, small.Outline.Bounds.Height);
            if (message.Letters is { } written)
            {
                (most, least) = (written.Millimetres, written.Millimetres);
            }

            for (var letters = most; letters > least; letters -= Step)
            {
                if (Try(letters) is { Fits: true } set)
                {
                    return set;
                }
            }

            return Try(message.Letters is null ? Math.Min(most, least) : least);
        }

        private SetMessage Try(double letters)
        {
            var lines = message.Lines.SelectMany(l => Wrap(l, letters)).ToImmutableArray();
            var distance = place.Lines?.Millimetres ?? letters * LineDistance;
            var block = letters + distance * (lines.Length - 1);
            var first = place.Lines is null ? _margin + (Height - block) / 2 + letters : distance;
            var fits = lines.All(l => WidthOf(l) * letters <= Width + 1e-6)
                && (place.Lines is null ? block <= Height + 1e-6 : first + distance * (lines.Length - 1) <= Height + 1e-6);
            var ink = lines.SelectMany((line, i) => InkOf(line, letters, first + i * distance).Contours);
            return new(lines, new([.. ink]), letters, fits);
        }

        private Outline InkOf(string line, double letters, double baseline)
        {
            var (shaped, free) = (Shape(line)!, Width - WidthOf(line) * letters);
            var left = (message.Range ?? (place.Lines is null ? LineRange.Centred : LineRange.Left)) switch
            {
                LineRange.Left => 0,
                LineRange.Right => free,
                _ => free / 2,
            };
            return shaped.Outline.IsEmpty ? shaped.Outline
                : shaped.Outline.Transform(Affine.Scale(letters, letters).Then(Affine.Shift(_margin + left, baseline)));
        }

        private IEnumerable<string> Wrap(string words, double letters)
        {
            var line = "";
            foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                var longer = line.Length == 0 ? word : $"{line} {word}";
                if (line.Length > 0 && WidthOf(longer) * letters > Width)
                {
                    yield return line;
                    line = word;
                }
                else
                {
                    line = longer;
                }
            }

            yield return line;
        }

        private double WidthOf(string words) => Shape(words) is { Outline: { IsEmpty: false } ink } ? ink.Bounds.Width : 0;

        private ShapedWords? Shape(string words)
        {
            if (!_shaped.TryGetValue(words, out var shaped))
            {
                _shaped[words] = shaped = shape(words);
            }

            return shaped;
        }
    }
}
