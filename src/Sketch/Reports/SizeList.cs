using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>One physical piece of a card with the size to cut.</summary>
/// <param name="Path">Face and names, such as <c>front/sky/lamp</c>; <c>base</c> for the card itself.</param>
/// <param name="Face">The face it belongs to; the front for the base.</param>
/// <param name="Kind">The kind's word in the language; <c>base</c> for the card itself.</param>
/// <param name="Words">The words on it, or null.</param>
/// <param name="Paint">What it is made of.</param>
/// <param name="Cut">The box to cut, wraps included; null for what is not cut from paper.</param>
/// <param name="Finished">The visible box; for the base the flat sheet.</param>
/// <param name="Border">For a mat: what it shows beyond what lies directly on it.</param>
/// <param name="Place">Where its unturned box lies on the face.</param>
/// <param name="Turn">Its own turn only, in degrees clockwise.</param>
/// <param name="Raised">Height of its underside above the base by foam.</param>
public sealed record SizeEntry(
    string Path,
    FaceKind Face,
    string Kind,
    string? Words,
    Paint Paint,
    Size? Cut,
    Size Finished,
    Insets? Border,
    Place Place,
    double Turn,
    Length Raised)
{
    /// <summary>Whether it is bought by its thickness, which is then shown as written.</summary>
    public bool IsReadyMade { get; init; }

    /// <summary>How many parts its outline falls into when it is cut; 1 for what is not cut.</summary>
    public int Parts { get; init; } = 1;
}

/// <summary>The cut size of every piece of a card.</summary>
/// <param name="Card">The card.</param>
/// <param name="Entries">One entry for the base, then one for every piece in drawing order.</param>
public sealed record SizeList(LaidOutCard Card, ImmutableArray<SizeEntry> Entries)
{
    /// <summary>
    /// Lists a card's pieces. Groups and windows are listed without a cut size; an envelope's flap is part of the envelope and not listed.
    /// </summary>
    public static SizeList Of(LaidOutCard card)
    {
        var flat = card.Base.Flat;
        var sheet = new SizeEntry("base", FaceKind.Front, "base", null, card.Base.Paint, flat, flat, null, default, 0, Length.Zero);
        return new(card, [sheet, .. card.Pieces.Where(IsListed).Select(EntryOf)]);
    }

    private static bool IsListed(Piece piece) => piece.Matter != PieceMatter.Unseen || piece.Kind == "group";

    private static SizeEntry EntryOf(Piece piece) => new(
        piece.Path,
        piece.Face,
        piece.Kind,
        piece.Words?.Text,
        piece.Paint,
        piece.Cut,
        piece.Finished.Size,
        piece.Border,
        new(piece.Finished.Left, piece.Finished.Top),
        piece.Turn,
        piece.Raised)
    {
        IsReadyMade = piece.IsReadyMade,
        Parts = piece.CutParts,
    };
}
