using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Messages;

/// <summary>The place that a card gives its message inside.</summary>
/// <param name="Face">The face.</param>
/// <param name="Box">The place on it.</param>
/// <param name="Lines">The distance between its writing lines, or null if it has none.</param>
public sealed record MessagePlace(FaceKind Face, Rect Box, Length? Lines)
{
    /// <summary>The name of the piece that is the place.</summary>
    public const string Name = "message";

    private static readonly FaceKind[] Inside = [FaceKind.Inside, FaceKind.InsideLeft, FaceKind.InsideTop];

    // Half an inch, as on a page; a band of less than an inch takes no message.
    private static readonly Length Margin = Length.Inch(0, 1, 2);
    private static readonly Length LeastHeight = Length.Inch(1);

    /// <summary>
    /// The piece inside that is called <c>message</c>, else the first writing lines, else the highest free band of the inside; null if
    /// there is none.
    /// </summary>
    public static MessagePlace? Of(LaidOutCard card)
    {
        var inside = Inside.SelectMany(card.On).Where(p => p.Turning.IsIdentity).ToList();
        var piece = inside.Find(p => !p.Kind.Traits.IsLayer && p.Path.Name.Equals(Name, StringComparison.OrdinalIgnoreCase))
            ?? inside.Find(p => p.LinesApart is not null);
        return piece is null ? FreeBand(card) : new(piece.Face, piece.Box, piece.LinesApart);
    }

    private static MessagePlace? FreeBand(LaidOutCard card)
    {
        var size = card.Base.Closed;
        var taken = card.On(FaceKind.Inside).Where(p => p.Matter != PieceMatter.Unseen)
            .Select(p => (From: p.Box.Top, To: p.Box.Bottom)).OrderBy(b => b.From).ToList();
        var (top, best) = (Length.Zero, (From: Length.Zero, To: Length.Zero));
        foreach (var (from, to) in taken.Append((size.Height, size.Height)))
        {
            if (from - top > best.To - best.From)
            {
                best = (top, from);
            }

            top = Length.Max(top, to);
        }

        // Strips are cut by a ruler.
        var (width, height) = card.Units.Format().Down(new Size(size.Width - Margin * 2, best.To - best.From - Margin * 2));
        return width > Length.Zero && height >= LeastHeight
            ? new(FaceKind.Inside, new(Margin, best.From + Margin, width, height), null) : null;
    }
}
