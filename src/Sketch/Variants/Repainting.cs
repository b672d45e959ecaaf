using System.Collections.Immutable;
using Sketch.Layout;
using Sketch.Panels;

namespace Sketch.Variants;

/// <summary>
/// Puts other papers into the roles of a card that is laid out. No size or place depends on a paper, so nothing is laid out anew; ink that
/// the file does not say is chosen again for the paper that it now stands on.
/// </summary>
public static class Repainting
{
    /// <summary>The card with other papers.</summary>
    /// <param name="card">The card.</param>
    /// <param name="paints">What fills the roles; each names its role.</param>
    public static LaidOutCard With(LaidOutCard card, IEnumerable<Paint> paints)
    {
        var filled = paints.ToDictionary(p => p.Role ?? throw new ArgumentException("A paint that fills no role."), StringComparer.OrdinalIgnoreCase);
        var roles = card.Roles.Select(r => r.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var face = Filled(card.Base.Paint);
        var pieces = ImmutableArray.CreateBuilder<Piece>(card.Pieces.Length);
        foreach (var piece in card.Pieces)
        {
            pieces.Add(Repaint(piece));
        }

        return card with
        {
            Base = card.Base with { Paint = face },
            Faces = [.. card.Faces.Select(f => f with { Paint = f.Paint is { } paint ? Filled(paint) : null })],
            Pieces = pieces.MoveToImmutable(),
            Roles = [.. card.Roles.Select(r => r with { Paint = Filled(r.Paint) })],
        };

        Paint Filled(Paint paint) => paint.Role is { } role && roles.Contains(role) && filled.TryGetValue(role, out var other) ? other : paint;

        Piece Repaint(Piece piece)
        {
            var own = Filled(piece.Paint);
            if (piece.Words is not { } words)
            {
                return piece with { Paint = own };
            }

            var isInk = piece.Matter == PieceMatter.Ink;
            var ground = !isInk ? own : piece.LiesOn >= 0 ? pieces[piece.LiesOn].Paint : FacePaint(piece.Face);
            var ink = Paints.IsUnsaidInk(words.InkPaint) ? Paints.ReadableOn(ground.Look.Ground) : Filled(words.InkPaint);
            return piece with { Paint = isInk && Paints.IsUnsaidInk(piece.Paint) ? ink : own, Words = words with { InkPaint = ink } };
        }

        Paint FacePaint(FaceKind kind) => card.Find(kind)?.Paint is { } own ? Filled(own) : face;
    }
}
