using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>The sentences above a size table.</summary>
internal static class SizeIntroduction
{
    /// <summary>What the base is, how to score it, and the unit of all sizes.</summary>
    public static string Of(LaidOutCard card, LengthFormat lengths)
    {
        var name = card.Base.SizeName is { } size ? $"{size}, " : "";
        var (side, score, from) = card.Base.Fold == Fold.Left
            ? ("on the left", card.Base.Closed.Width, "the left")
            : ("at the top", card.Base.Closed.Height, "the top");
        return $"Card {name}{lengths.Text(card.Base.Closed)}, folded {side}: cut {lengths.Text(card.Base.Flat)}, score "
            + $"{lengths.Text(score)} from {from}. "
            + $"Sizes are width x height in {lengths.UnitName}.";
    }

    /// <summary>The face's name, with the size for an envelope.</summary>
    public static string Of(LaidOutCard card, FaceKind kind, LengthFormat lengths)
    {
        var envelope = kind is FaceKind.Envelope or FaceKind.EnvelopeBack ? card.Find(kind) : null;
        return envelope is null
            ? Face.NameOf(kind)
            : $"{envelope.Name} ({(envelope.SizeName is { } size ? $"{size}, " : "")}{lengths.Text(envelope.Size)})";
    }
}
