using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Units;

namespace Sketch.Planning.Post;

/// <summary>
/// A card in its envelope, as a postal service measures it. The thickness adds all layers of the base, the highest stack of each face
/// and two layers of envelope; the least thickness has no stack under another. The weight is that of the envelope and of all paper, from
/// grammage and the area that is really there, and of foam, glue and what is ready-made by common practice; ink is not weighed.
/// </summary>
/// <param name="EnvelopeName">The name of the envelope's size; null where it has none.</param>
/// <param name="Envelope">The size of the envelope.</param>
/// <param name="Thickness">In millimetres.</param>
/// <param name="Weight">In grams.</param>
/// <param name="HasBumps">Whether foam or what is ready-made makes it uneven.</param>
public sealed record PostalItem(string? EnvelopeName, Size Envelope, Spread Thickness, Spread Weight, bool HasBumps)
{
    private const double SquareMillimetresPerSquareMetre = 1e6;

    /// <summary>What is ready-made and at least as thick is felt through the envelope (common practice, no source).</summary>
    private static readonly Length LeastBump = Length.Millimetre(0.5m);

    // The paper of an envelope with its flaps, in areas of its front (assumption).
    private const double EnvelopeSheet = 2.3;

    private const int MostRemedies = 20;

    private static readonly Spread Tape = new(0.05, 0.15);

    /// <summary>The usual thickness of what is ready-made and flat, in millimetres.</summary>
    internal static double TapeThickness => (Tape.Low + Tape.High) / 2;

    /// <summary>What would make it flatter, the least change first, each with the greatest thickness that it leaves.</summary>
    public ImmutableArray<(string How, double Thickness)> Remedies { get; init; } = [];

    /// <summary>The card in the envelope that its file names, else in the usual one; null if no envelope of that size is known.</summary>
    /// <param name="card">The card in the papers of the batch.</param>
    /// <param name="stash">The stash, or null.</param>
    public static PostalItem? Of(LaidOutCard card, Stash? stash)
    {
        var face = card.Find(FaceKind.Envelope) ?? card.Find(FaceKind.EnvelopeBack);
        var usual = NamedSizes.UsualEnvelope(card.Base.Closed);
        if ((face?.Size ?? usual?.Size) is not { } size)
        {
            return null;
        }

        var sheet = EnvelopeSheet * size.Width.Millimetres * size.Height.Millimetres / SquareMillimetresPerSquareMetre;
        return new(
            face is null ? usual!.Name : face.SizeName, size,
            ThicknessOf(card, stash) + (SheetMeasures.Envelope.Thickness * 2),
            PaperWeightOf(card, stash) + TrimmingWeight.Of(card) + (SheetMeasures.Envelope.Grammage * sheet),
            card.Pieces.Any(IsBump))
        {
            Remedies = [.. RemediesOf(card).Take(MostRemedies)
                .Select(r => (r.How, (ThicknessOf(r.Card, stash) + (SheetMeasures.Envelope.Thickness * 2)).High))],
        };
    }

    // First each line with foam or a thick thing, then all foam, then all of both.
    private static IEnumerable<(string How, LaidOutCard Card)> RemediesOf(LaidOutCard card)
    {
        foreach (var line in card.Pieces.Where(IsBump).GroupBy(p => p.Location).Take(MostRemedies - 2))
        {
            var piece = line.First();
            yield return (piece.Foam > Length.Zero ? $"glue {piece.Path.Name} flat, without foam" : $"leave out {piece.Path.Name}",
                Without(card, p => p.Location == line.Key));
        }

        yield return ("glue all pieces flat, without foam", Without(card, p => p.Foam > Length.Zero));
        yield return ("glue all pieces flat and leave out what is thick", Without(card, IsBump));
    }

    private static LaidOutCard Without(LaidOutCard card, Func<Piece, bool> which) => card with
    {
        Pieces = [.. card.Pieces.Select(p => !which(p) ? p
            : p.Foam > Length.Zero ? p with { Foam = Length.Zero } : p with { Kind = PieceKind.Group })],
    };

    private static bool IsBump(Piece piece) =>
        IsOfCard(piece) && (piece.Foam > Length.Zero || ReadyMadeThickness(piece) >= LeastBump);

    /// <summary>The thickness of the closed card in millimetres, without its envelope.</summary>
    internal static Spread ThicknessOf(LaidOutCard card, Stash? stash)
    {
        var tops = new Spread[card.Pieces.Length];
        for (var i = 0; i < tops.Length; i++)
        {
            var piece = card.Pieces[i];
            tops[i] = (piece.LiesOn >= 0 ? tops[piece.LiesOn] : default) + Spread.Exactly(piece.Foam.Millimetres) + Layer(piece, stash);
        }

        var stacks = card.Pieces.Select((p, i) => (Piece: p, Top: tops[i])).Where(s => IsOfCard(s.Piece)).GroupBy(s => s.Piece.Face)
            .Select(g => new Spread(g.Max(s => s.Top.Low), g.Max(s => s.Top.High))).ToList();
        return (SheetMeasures.Of(card.Base.Paint, stash).Thickness * card.Base.Layers)
            + new Spread(stacks.Select(s => s.Low).DefaultIfEmpty().Max(), stacks.Sum(s => s.High));
    }

    /// <summary>The weight of the card's paper in grams, without its envelope.</summary>
    internal static Spread PaperWeightOf(LaidOutCard card, Stash? stash)
    {
        var holes = Area(card.Base.Closed) - card.Base.Outline.Area;
        var weight = SheetMeasures.Of(card.Base.Paint, stash).Grammage * (Area(card.Base.Flat) - holes);
        foreach (var piece in card.Pieces.Where(p => IsOfCard(p) && p.Matter == PieceMatter.Paper))
        {
            var wraps = Area(piece.Cut!.Value) - Area(piece.Finished.Size);
            weight += SheetMeasures.Of(piece.Paint, stash).Grammage * (piece.Outline.Area + wraps);
        }

        return weight * (1 / SquareMillimetresPerSquareMetre);
    }

    private static Spread Layer(Piece piece, Stash? stash) => piece.Matter switch
    {
        PieceMatter.Paper => SheetMeasures.Of(piece.Paint, stash).Thickness,
        PieceMatter.Ready => ReadyMadeThickness(piece) is var own && own > Length.Zero ? Spread.Exactly(own.Millimetres) : Tape,
        _ => default,
    };

    private static Length ReadyMadeThickness(Piece piece) =>
        piece.Matter == PieceMatter.Ready ? piece.Kind.Traits.ThicknessAt(piece.Box.Size) : Length.Zero;

    internal static bool IsOfCard(Piece piece) =>
        piece.Matter != PieceMatter.Unseen && piece.Face is not (FaceKind.Envelope or FaceKind.EnvelopeBack);

    private static double Area(Size size) => size.Width.Millimetres * size.Height.Millimetres;
}
