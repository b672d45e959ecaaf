using Sketch.Panels;
using Sketch.Stashes;

namespace Sketch.Variants;

/// <summary>
/// Puts other papers into the roles of a laid-out card. No size or place depends on a paper, so nothing is laid out again.
/// </summary>
public static class Repainting
{
    /// <summary>The card with other papers: the same as if it had been laid out with them.</summary>
    /// <param name="card">The card, laid out without a stash or with that of <paramref name="filling"/>.</param>
    /// <param name="filling">What fills the roles.</param>
    public static LaidOutCard With(LaidOutCard card, RoleFilling filling)
    {
        var known = new Dictionary<Paint, Paint>();
        return card with
        {
            Base = card.Base with { Paint = Filled(card.Base.Paint) },
            Faces = [.. card.Faces.Select(f => f with { Paint = f.Paint is { } paint ? Filled(paint) : null })],
            Pieces = [.. card.Pieces.Select(Repaint)],
            Roles = [.. card.Roles.Select(r => r with { Paint = Filled(r.Paint) })],
        };

        Paint Filled(Paint paint)
        {
            if (!known.TryGetValue(paint, out var filled))
            {
                filled = filling.Resolve(paint);
                known.Add(paint, filled);
            }

            return filled;
        }

        Piece Repaint(Piece piece)
        {
            var words = piece.Words is { NamedInk: { } ink } named ? named with { NamedInk = Filled(ink) } : piece.Words;
            return piece with { Paint = Filled(piece.Paint), Words = words };
        }
    }
}
