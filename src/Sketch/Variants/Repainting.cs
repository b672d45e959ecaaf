using Sketch.Panels;

namespace Sketch.Variants;

/// <summary>
/// Puts other papers into the roles of a card that is laid out. No size or place depends on a paper, so nothing is laid out anew.
/// </summary>
public static class Repainting
{
    /// <summary>The card with other papers.</summary>
    /// <param name="card">The card.</param>
    /// <param name="paints">What fills the roles; each names its role.</param>
    public static LaidOutCard With(LaidOutCard card, IEnumerable<Paint> paints)
    {
        var filled = paints.ToDictionary(
            p => p.Role ?? throw new ArgumentException("A paint that fills no role."), StringComparer.OrdinalIgnoreCase);
        var roles = card.Roles.Select(r => r.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return card with
        {
            Base = card.Base with { Paint = Filled(card.Base.Paint) },
            Faces = [.. card.Faces.Select(f => f with { Paint = f.Paint is { } paint ? Filled(paint) : null })],
            Pieces = [.. card.Pieces.Select(Repaint)],
            Roles = [.. card.Roles.Select(r => r with { Paint = Filled(r.Paint) })],
        };

        Paint Filled(Paint paint) =>
            paint.Role is { } role && roles.Contains(role) && filled.TryGetValue(role, out var other) ? other : paint;

        Piece Repaint(Piece piece)
        {
            var words = piece.Words is { NamedInk: { } ink } named ? named with { NamedInk = Filled(ink) } : piece.Words;
            return piece with { Paint = Filled(piece.Paint), Words = words };
        }
    }
}
