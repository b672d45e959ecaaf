using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>One physical piece of a card with the size to cut.</summary>
/// <param name="Path">Its path.</param>
/// <param name="Kind">Its kind; null for the card itself.</param>
/// <param name="Paint">What it is made of.</param>
/// <param name="Cut">The box to cut, wraps included; null for what is not cut from paper.</param>
/// <param name="Finished">The visible box; for the base the flat sheet.</param>
public sealed record SizeEntry(PiecePath Path, PieceKind? Kind, Paint Paint, Size? Cut, Size Finished)
{
    /// <summary>The face it belongs to; the front for the base.</summary>
    public FaceKind Face => Path.Face;

    /// <summary>The kind's word in the language; <c>base</c> for the card itself.</summary>
    public string KindWord => Kind is { } kind ? kind.Name : "base";

    /// <summary>The words on it, or null.</summary>
    public string? Words { get; init; }

    /// <summary>For a mat: what it shows beyond what lies directly on it.</summary>
    public Insets? Border { get; init; }

    /// <summary>Where its unturned box lies on the face.</summary>
    public Place Place { get; init; }

    /// <summary>Its own turn only, in degrees clockwise.</summary>
    public double Turn { get; init; }

    /// <summary>Height of its underside above the base by foam.</summary>
    public Length Raised { get; init; }

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
    /// Lists a card's pieces. Groups and windows are listed without a cut size.
    /// </summary>
    public static SizeList Of(LaidOutCard card)
    {
        var flat = card.Base.Flat;
        var sheet = new SizeEntry(PiecePath.Base, null, card.Base.Paint, flat, flat);
        return new(card, [sheet, .. card.Pieces.Select(EntryOf)]);
    }

    private static SizeEntry EntryOf(Piece piece) => new(piece.Path, piece.Kind, piece.Paint, piece.Cut, piece.Finished.Size)
    {
        Words = piece.Words?.Text,
        Border = piece.Border,
        Place = new(piece.Finished.Left, piece.Finished.Top),
        Turn = piece.Turn,
        Raised = piece.Raised,
        IsReadyMade = piece.IsReadyMade,
        Parts = piece.CutParts,
    };
}
