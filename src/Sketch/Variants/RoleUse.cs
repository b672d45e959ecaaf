using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Units;

namespace Sketch.Variants;

/// <summary>What a role is used for in a card.</summary>
/// <param name="Role">The role.</param>
/// <param name="Cuts">What is cut for one card from the paper that fills it.</param>
/// <param name="IsInk">Whether something is written with it, so that it must be one colour.</param>
/// <param name="IsBase">Whether the base is folded from it, so that it must be cardstock.</param>
/// <param name="Weight">How much it determines the look of the card: the side in millimetres of a square as large as its largest piece, as
/// a small piece is seen too. Only the edges of mats show.</param>
/// <param name="Character">The character of the paper that the card gives it; null where the card takes any offcut.</param>
internal sealed record RoleUse(string Role, IReadOnlyList<Size> Cuts, bool IsInk, bool IsBase, double Weight, PaperCharacter? Character)
{
    /// <summary>The weight of a mat in millimetres, however large it is.</summary>
    private const double MatWeight = 15;

    /// <summary>Whether paper is cut for it.</summary>
    public bool IsCut => Cuts.Count > 0;

    public static RoleUse Of(LaidOutCard card, string role)
    {
        var isBase = Fills(card.Base.Paint);
        var cuts = card.Pieces.Where(p => Fills(p.Paint) && !p.IsReadyMade).Select(p => p.Cut).OfType<Size>().ToList();
        var weight = card.Pieces.Where(p => Fills(p.Paint) && p.Cut is not null)
            .Select(p => p.Kind.Traits.IsLayer ? MatWeight : Math.Sqrt(p.Box.Width.Millimetres * p.Box.Height.Millimetres))
            .DefaultIfEmpty(MatWeight).Max();
        if (isBase)
        {
            cuts.Add(card.Base.Flat);
        }

        return new(role, cuts, card.Pieces.Any(
            p => (p.Matter == PieceMatter.Ink && Fills(p.Paint))
                || (p.Words is { } w && Fills(w.InkPaint) && p.Kind != PieceKind.Word)), isBase,
                weight,
                card.Roles.FirstOrDefault(r => r.Name.Equals(role, StringComparison.OrdinalIgnoreCase)) is { } own
                    && own.Paint is { AnyOffcut: false, Knowledge: PaperKnowledge.Look } ? PaperCharacters.Of(own.Paint.Look) : null);

        bool Fills(Paint paint) => role.Equals(paint.Role, StringComparison.OrdinalIgnoreCase);
    }
}
