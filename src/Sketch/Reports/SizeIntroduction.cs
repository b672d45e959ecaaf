using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>The sentences above a size table.</summary>
internal static class SizeIntroduction
{
    /// <summary>What the base is, how to score it, and the unit of all sizes.</summary>
    public static string Of(LaidOutCard card, LengthFormat lengths)
    {
        var name = card.Base.SizeName is { } size ? $"{size}, " : "";
        var folded = card.Base.Fold switch
        {
            Fold.Left => "on the left",
            Fold.Top => "at the top",
            Fold.Gate => "like a gate",
            _ => "like a z",
        };
        var sheet = card.Base.Sheet;
        return $"Card {name}{lengths.Text(card.Base.Closed)}, folded {folded}: cut {lengths.Text(sheet.Size)}, score "
            + $"{string.Join(" and ", sheet.Scores.Select(lengths.Text))} from the {(sheet.HasUprightScores ? "left" : "top")}. "
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
