using System.Collections.Immutable;
using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>A card with some of its pieces cut a little smaller about their centres, to see whether it still passes the checks.</summary>
internal static class Trimmed
{
    /// <summary>
    /// Whether the cards can also be made with these pieces smaller: nothing that runs from edge to edge of what it lies on gets
    /// shorter, and the checks of cards give no new warning. Loose pieces can always be smaller.
    /// </summary>
    /// <param name="pieces">The pieces, of any cards.</param>
    /// <param name="by">How much narrower and shorter each gets.</param>
    public static bool IsSound(IEnumerable<PieceOrder> pieces, Length by) => pieces.Where(p => p.Design is not null)
        .GroupBy(p => p.Design!.Card).All(card => IsSound(card.Key, card.Select(p => p.Path).OfType<PiecePath>().ToHashSet(), by));

    private static bool IsSound(LaidOutCard card, HashSet<PiecePath> paths, Length by) =>
        !card.Pieces.Any(p => paths.Contains(p.Path) && RunsFromEdgeToEdge(card, p))
            && Warnings(With(card, paths, by)).IsSubsetOf(Warnings(card));

    private static bool RunsFromEdgeToEdge(LaidOutCard card, Piece piece)
    {
        var face = card.SizeOf(piece.Face);
        var ground = piece.LiesOn >= 0 ? card.Pieces[piece.LiesOn].Box : new Rect(Length.Zero, Length.Zero, face.Width, face.Height);
        return (piece.Box.Left <= ground.Left && piece.Box.Right >= ground.Right)
            || (piece.Box.Top <= ground.Top && piece.Box.Bottom >= ground.Bottom);
    }

    private static LaidOutCard With(LaidOutCard card, HashSet<PiecePath> paths, Length by)
    {
        var pieces = card.Pieces.Select(p => paths.Contains(p.Path) ? Smaller(p, by) : p).ToArray();
        for (var i = 0; i < pieces.Length; i++)
        {
            if (paths.Contains(pieces[i].Path) && pieces[i].LiesOn is >= 0 and var mat)
            {
                pieces[mat] = pieces[mat] with { Border = Grown(pieces[mat].Border, by / 2) };
            }
        }

        return card with { Pieces = [.. pieces] };
    }

    private static Piece Smaller(Piece piece, Length by)
    {
        var box = new Rect(piece.Box.Left + by / 2, piece.Box.Top + by / 2, piece.Box.Width - by, piece.Box.Height - by);
        var (before, after) = (Bounds.Of(piece.Box), Bounds.Of(box));
        var shrunk = Affine.Shift(-before.Centre.X, -before.Centre.Y)
            .Then(Affine.Scale(after.Width / before.Width, after.Height / before.Height))
            .Then(Affine.Shift(after.Centre.X, after.Centre.Y));
        return piece with { Box = box, Outline = piece.Outline.Transform(shrunk), Border = Grown(piece.Border, -(by / 2)) };
    }

    private static Insets? Grown(Insets? border, Length by) =>
        border is { } shown ? new Insets(shown.Left + by, shown.Top + by, shown.Right + by, shown.Bottom + by) : null;

    private static ImmutableHashSet<(string Code, Text.Location Place)> Warnings(LaidOutCard card)
    {
        var findings = new FindingBag();
        FitChecks.Run(card, findings);
        return [.. findings.ToImmutable().Where(f => f.Severity != Severity.Note).Select(f => (f.Code, f.Location))];
    }
}
