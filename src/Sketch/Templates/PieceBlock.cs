using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// A piece with its label as placed on a page: upright or given a quarter turn, labelled inside if there is room, else beside.
/// </summary>
internal sealed class PieceBlock(TemplateLettering lettering)
{
    private const double LabelSquare = 0.75;

    /// <summary>The name of the arrow along the grain.</summary>
    public const string GrainArrow = "grain";

    private readonly PieceLabel _label = new(lettering);

    /// <summary>The possible arrangements of the piece; the first is upright.</summary>
    public ImmutableArray<TemplateBlock> Ways(TemplatePiece piece)
    {
        var forms = _label.Forms(piece);
        var (bare, turned) = (Bare(piece), Turned(piece));
        var hasRoom = HasRoom(bare, forms);

        var turn = QuarterTurn(bare.Height);
        if (!piece.Fronts.IsEmpty)
        {
            // The words in a base lie elsewhere when it is turned.
            return [.. Ways(bare, forms, InFronts(bare, Affine.Identity)), .. Ways(turned, forms, InFronts(turned, turn))];
        }

        var map = hasRoom ? Map(piece, bare, Affine.Identity) : null;
        return
        [
            .. Ways(bare, forms, f => map?.RoomFor(0, f.Box.Width + 2 * PieceLabel.Room, f.Box.Height + 2 * PieceLabel.Room)),
            .. Ways(
                turned, forms,
                f => map?.RoomFor(0, f.Box.Height + 2 * PieceLabel.Room, f.Box.Width + 2 * PieceLabel.Room) is { } centre
                    ? turn.Apply(centre) : null),
        ];

        Func<TemplateText, Point?> InFronts(TemplateBlock block, Affine placed)
        {
            var room = hasRoom ? Map(piece, block, placed) : null;
            return f => room?.RoomFor(0, f.Box.Width + 2 * PieceLabel.Room, f.Box.Height + 2 * PieceLabel.Room);
        }
    }

    /// <summary>The lines of a piece upright, with the words in a base.</summary>
    public TemplateBlock Bare(TemplatePiece piece) => Lines(piece, Affine.Identity);

    /// <summary>The same given a quarter turn; the words stay upright.</summary>
    public TemplateBlock Turned(TemplatePiece piece) => Lines(piece, QuarterTurn(piece.Outline.Bounds.Height));

    private static IEnumerable<TemplateBlock> Ways(TemplateBlock bare, ImmutableArray<TemplateText> forms, Func<TemplateText, Point?> room)
    {
        foreach (var form in forms)
        {
            if (room(form) is { } centre)
            {
                return [bare with { Texts = bare.Texts.Add(form.CentredAt(centre)) }];
            }
        }

        // A label beside narrows or flattens the block; which is better shows when the page is filled.
        return forms.SelectMany(f => new[] { Below(bare, f), Right(bare, f) }).OrderBy(b => b.Area).Take(3);
    }

    private static bool HasRoom(TemplateBlock bare, ImmutableArray<TemplateText> forms)
    {
        var (longer, shorter) = (Math.Max(bare.Width, bare.Height), Math.Min(bare.Width, bare.Height));
        return forms.Any(f => Math.Max(f.Box.Width, f.Box.Height) < longer && Math.Min(f.Box.Width, f.Box.Height) < shorter);
    }

    /// <summary>
    /// The area of the piece without lines; for a base only what follows its first score, since the grain arrow is in the other part.
    /// </summary>
    private static RoomMap Map(TemplatePiece piece, TemplateBlock block, Affine turn)
    {
        var lines = block.Lines.Where(l => l.Kind != LineKind.Mark || piece.Grain is null).Select(l => new Outline(l.Contours));
        var box = piece.Outline.Bounds;
        var area = piece.Grain is null ? piece.Outline
            : piece.Outline.Intersect(
                Outline.Rectangle(new Bounds(piece.Folds[0].From.X, piece.Folds[0].From.Y, box.Width, box.Height).ToRect()));
        return new([area.Transform(turn)], [.. lines, .. block.Texts.Select(t => Outline.Rectangle(t.Box.ToRect()))], LabelSquare);
    }

    /// <summary>
    /// In each part that becomes the front words that say so and, where it holds, that this is the side to score: near the top if there is
    /// room, clear of all lines; none where the part is too small.
    /// </summary>
    private IEnumerable<TemplateText> FrontWords(
        TemplatePiece piece, Affine turn, ImmutableArray<TemplateLine> lines, ImmutableArray<TemplateText> texts)
    {
        string[][] forms = piece.IsScoredHere
            ? [["front, score this side"], ["front,", "score this side"], ["front,", "score", "this side"]] : [["front"]];
        ImmutableArray<Outline> obstacles =
            [.. lines.Select(l => new Outline(l.Contours)), .. texts.Select(t => Outline.Rectangle(t.Box.ToRect()))];
        foreach (var front in piece.Fronts)
        {
            var part = piece.Outline.Intersect(Outline.Rectangle(front.ToRect())).Transform(turn);
            if (part.IsEmpty)
            {
                continue;
            }

            var box = part.Bounds;
            var top = part.Intersect(Outline.Rectangle((box with { Bottom = box.Top + box.Height / 4 }).ToRect()));
            RoomMap[] maps = [.. new[] { top, part }.Where(a => !a.IsEmpty).Select(a => new RoomMap([a], obstacles, LabelSquare))];
            var placed = maps.SelectMany(_ => forms, (map, form) => (Map: map, Words: lettering.Set(form)))
                .Select(f => (f.Words, Centre: f.Map.RoomFor(
                    0, f.Words.Box.Width + 2 * PieceLabel.Room, f.Words.Box.Height + 2 * PieceLabel.Room)))
                .Where(f => f.Centre is not null).Select(f => f.Words.CentredAt(f.Centre!.Value));
            if (placed.FirstOrDefault() is { } words)
            {
                yield return words;
            }
        }
    }

    private static Affine QuarterTurn(double height) => new(0, 1, -1, 0, height, 0);

    private static TemplateBlock Below(TemplateBlock bare, TemplateText label) => new(
        Math.Max(bare.Width, label.Box.Width), bare.Height + PieceLabel.Room + label.Box.Height, bare.Lines,
        bare.Texts.Add(label.Shift(0, bare.Height + PieceLabel.Room)));

    private static TemplateBlock Right(TemplateBlock bare, TemplateText label) => new(
        bare.Width + PieceLabel.Room + label.Box.Width, Math.Max(bare.Height, label.Box.Height), bare.Lines,
        bare.Texts.Add(label.Shift(bare.Width + PieceLabel.Room, Math.Max(0, (bare.Height - label.Box.Height) / 2))));

    private TemplateBlock Lines(TemplatePiece piece, Affine turn)
    {
        var box = piece.Outline.Transform(turn).Bounds;
        var lines = ImmutableArray.CreateBuilder<TemplateLine>();
        var texts = ImmutableArray<TemplateText>.Empty;
        lines.Add(TemplateLine.Around(LineKind.Cut, piece.Name, piece.Outline));
        if (!piece.Hollow.IsEmpty)
        {
            lines.Add(TemplateLine.Around(LineKind.Cut, $"{piece.Name} inner cut", piece.Hollow));
        }

        if (!piece.Stamped.IsEmpty)
        {
            lines.Add(TemplateLine.Around(LineKind.Mark, $"{piece.Name} words", piece.Stamped));
        }

        if (!piece.Stitches.IsEmpty)
        {
            lines.Add(new(LineKind.Mark, $"{piece.Name} stitches", piece.Stitches, false));
        }

        lines.AddRange(piece.Folds.Select(f => TemplateLine.Through(LineKind.Fold, $"{piece.Name} fold", f.From, f.To)));
        if (piece.Grain is { } grain)
        {
            lines.AddRange(Arrow(grain.Middle, grain.Half));
            texts = [GrainWord(turn.Apply(grain.Middle), turn.Apply(grain.Half), turn.Apply(new(0, 0)))];
        }

        ImmutableArray<TemplateLine> placed = [.. lines.Select(l => l.Transform(turn))];
        return new(box.Width, box.Height, placed, [.. texts, .. FrontWords(piece, turn, placed, texts)]);
    }

    private TemplateText GrainWord(Point middle, Point half, Point origin)
    {
        var isUpright = Math.Abs(half.Y - origin.Y) > Math.Abs(half.X - origin.X);
        var word = lettering.Set("grain");
        return word.CentredAt(isUpright
            ? new(middle.X + 2 * PieceLabel.Room + word.Box.Width / 2, middle.Y)
            : new(middle.X, middle.Y + PieceLabel.Room + word.Box.Height / 2));
    }

    private static IEnumerable<TemplateLine> Arrow(Point middle, Point half)
    {
        const double tip = 3;
        var length = Math.Sqrt(half.X * half.X + half.Y * half.Y);
        var (alongX, alongY) = (half.X / length * tip, half.Y / length * tip);
        Point end = new(middle.X + half.X, middle.Y + half.Y), start = new(middle.X - half.X, middle.Y - half.Y);
        yield return TemplateLine.Through(LineKind.Mark, GrainArrow, start, end);
        yield return Tip(end, -1);
        yield return Tip(start, 1);

        TemplateLine Tip(Point at, int towards) => TemplateLine.Through(
            LineKind.Mark, "grain tip",
            new(at.X + towards * alongX - alongY / 2, at.Y + towards * alongY - alongX / 2),
            at,
            new(at.X + towards * alongX + alongY / 2, at.Y + towards * alongY + alongX / 2));
    }
}
