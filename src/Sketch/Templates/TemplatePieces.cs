using System.Collections.Immutable;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Text;

namespace Sketch.Templates;

/// <summary>What to cut for cards: bases and pieces of paper, equal ones once.</summary>
internal static partial class TemplatePieces
{
    /// <summary>
    /// The pieces of all cards in drawing order, each card's base first. Pieces are equal if their outlines, folds, inner cuts and
    /// materials are: copies of one line, and the same line in several files.
    /// </summary>
    public static ImmutableArray<TemplatePiece> Of(IReadOnlyList<LaidOutCard> cards, GlueMargin? gluing, FindingBag findings)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        var pieces = new List<TemplatePiece>();
        foreach (var piece in Each(cards, gluing, withInk: false, findings))
        {
            var likeness = Likeness(piece);
            if (places.TryGetValue(likeness, out var place))
            {
                var known = pieces[place];
                pieces[place] = known with
                {
                    Count = known.Count + 1,
                    Names = known.Names.Contains(piece.Name) ? known.Names : known.Names.Add(piece.Name),
                };
            }
            else
            {
                places[likeness] = pieces.Count;
                pieces.Add(piece);
            }
        }

        return [.. pieces];
    }

    /// <summary>The pieces of all cards in drawing order, each card's base first, every copy by itself.</summary>
    /// <param name="cards">The cards.</param>
    /// <param name="gluing">The margin for glue where layers are cut hollow, else null.</param>
    /// <param name="withInk">Whether to find what is printed and drawn on each.</param>
    /// <param name="findings">Receives cards with too much on their layers to cut all of them hollow.</param>
    public static IEnumerable<TemplatePiece> Each(
        IReadOnlyList<LaidOutCard> cards, GlueMargin? gluing, bool withInk, FindingBag findings) =>
        cards.SelectMany(c => Of(c, cards.Count > 1 ? $" ({c.Title})" : "", gluing, withInk, findings));

    /// <summary>A piece's name without the numbers of copies.</summary>
    public static string NameOf(Piece piece) => PieceTitle.Name(piece with { Path = piece.Path.WithoutCopies });

    private static IEnumerable<TemplatePiece> Of(
        LaidOutCard card, string suffix, GlueMargin? gluing, bool withInk, FindingBag findings)
    {
        var isMetric = card.Units != UnitSystem.Inches;
        yield return new(
            ["base" + suffix], Material(card.Base.Paint), card.Base.Flat, card.Base.CutSheet, card.Base.Location)
        {
            Stock = Stock(card.Base.Paint),
            IsUpright = card.Base.Paint.IsUpright,
            Folds = card.Base.Sheet.Lines,
            Inked = withInk ? InkOnPieces.OfBase(card) : Outline.Empty,
            InkedBehind = withInk ? InkOnPieces.BehindBase(card) : Outline.Empty,
            Grain = FlatBaseTemplate.Grain(card.Base.Sheet),
            Fronts = [.. card.Base.Sheet.Outside.Where(p => p.Face == FaceKind.Front)
                .Select(p => Outline.Rectangle(p.Part).Transform(p.Place).Bounds)],
            IsScoredHere = card.Base.Fold != Fold.Z,
            IsMetric = isMetric,
        };
        var hollow = gluing is { } margin ? new HollowParts(card, margin.On(card.Units)) : null;
        for (var i = 0; i < card.Pieces.Length; i++)
        {
            var piece = card.Pieces[i];
            if (piece.Cut is not { } size || CutOutline.Of(piece) is not { IsEmpty: false } outline
                || !(outline.Bounds is { Width: > 0, Height: > 0 }))
            {
                continue;
            }

            var box = outline.Bounds;
            var toOrigin = Affine.Shift(-box.Left, -box.Top);
            ImmutableArray<FreedPart> freed = hollow is null ? [] : [.. hollow.Of(i).Select(f => f.Shift(-box.Left, -box.Top))];
            var wraps = CutOutline.Folds(piece);
            yield return new(
                [NameOf(piece) + suffix],
                Material(piece.Paint),
                size,
                outline.Transform(toOrigin),
                piece.Location)
            {
                Stock = Stock(piece.Paint),
                IsUpright = piece.Paint.IsUpright,
                Wraps = wraps.Length,
                Inked = withInk ? InkOnPieces.Of(card, i).Transform(toOrigin) : Outline.Empty,
                Folds = [.. wraps.Concat(piece.Scores).Select(f => (toOrigin.Apply(f.From), toOrigin.Apply(f.To)))],
                Stamped = piece is { Kind: PieceKind.Sentiment, Words: { } words } ? words.Ink.Transform(toOrigin) : Outline.Empty,
                Stitches = new Outline(piece.Stitches).Transform(toOrigin).Contours,
                Freed = freed,
                IsMetric = isMetric,
                IsReadyMade = piece.IsReadyMade,
                Parts = piece.CutParts,
            };
        }

        if (hollow is { LeftWhole: > 0 and var whole })
        {
            findings.Add(FindingCatalogue.NotHollow, card.Location,
                $"{Counted.Of(whole, "layer")} of \"{card.Title}\" {(whole == 1 ? "is" : "are")} not cut hollow: the pieces on all its "
                    + "layers have too many corners to be compared.",
                "Nothing needs to change: a layer that stays whole only takes more paper.");
        }
    }

    private static string Material(Paint paint) =>
        paint.Paper is { } paper && paint.Role is { } role && role != paper ? $"{role} ({paper}, {Side(paint)})"
        : paint.Paper is { } only ? $"{only}, {Side(paint)}"
        : paint.AnyOffcut ? $"{PieceTitle.Paint(paint)}, {paint.OffcutName}"
        : PieceTitle.Paint(paint);

    private static string Stock(Paint paint) => paint.Paper is { } paper ? $"{paper}, {Side(paint)}"
        : paint.AnyOffcut ? paint.OffcutName : PieceTitle.Paint(paint);

    private static string Side(Paint paint) => paint.Side == PaperSide.Front ? "front" : "back";

    /// <summary>
    /// Equal parts of a length may differ by a nanometre; no mark of an inch or metric ruler lies near the point where this rounds up.
    /// </summary>
    private static string Likeness(TemplatePiece piece)
    {
        var text = new StringBuilder(piece.Material);
        foreach (var contour in piece.Outline.Contours.Concat(piece.Hollow.Contours).Concat(piece.Stamped.Contours).Concat(piece.Stitches))
        {
            text.Append('M');
            Add(contour.Start);
            foreach (var segment in contour.Segments)
            {
                text.Append(segment.IsLine ? 'L' : 'C');
                Add(segment.Control1);
                Add(segment.Control2);
                Add(segment.End);
            }
        }

        foreach (var (from, to) in piece.Folds)
        {
            text.Append('F');
            Add(from);
            Add(to);
        }

        return text.ToString();

        void Add(Point point) => text.Append(Step(point.X)).Append(' ').Append(Step(point.Y)).Append(' ');

        static long Step(double millimetres) => (long)Math.Floor(millimetres * 200 + 0.3137);
    }
}
