using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>A piece with its label as it can stand on a page: upright or turned a quarter, labelled inside where there is room, else beside.</summary>
internal sealed class PieceBlock(TemplateLettering lettering)
{
    private const double LabelTolerance = 0.1;

    private readonly PieceLabel _label = new(lettering);

    /// <summary>The ways in which the piece can stand; the first is upright.</summary>
    public ImmutableArray<Block> Ways(TemplatePiece piece)
    {
        var forms = _label.Forms(piece);
        var box = piece.Outline.Bounds;
        var least = forms.Min(f => Math.Max(f.Box.Width, f.Box.Height));
        var room = Math.Max(box.Width, box.Height) < least ? null : LabelRoom(piece);
        return [.. Ways(piece, forms, room, isTurned: false), .. Ways(piece, forms, room, isTurned: true)];
    }

    /// <summary>The lines of a piece upright, with the word for its grain.</summary>
    public Block Bare(TemplatePiece piece) => Lines(piece, Affine.Identity);

    private IEnumerable<Block> Ways(TemplatePiece piece, ImmutableArray<TemplateText> forms, Bounds? room, bool isTurned)
    {
        var height = piece.Outline.Bounds.Height;
        var turn = isTurned ? QuarterTurn(height) : Affine.Identity;
        var bare = Lines(piece, turn);
        var free = isTurned && room is { } upright ? new(height - upright.Bottom, upright.Left, height - upright.Top, upright.Right) : room;
        if (free is { } place && PieceLabel.Inside(forms, place) is { } inside)
        {
            return [bare with { Texts = bare.Texts.Add(inside) }];
        }

        // A label beside narrows or flattens the block; which is better is seen when the page is filled.
        return forms.SelectMany(f => new[] { Below(bare, f), Right(bare, f) }).OrderBy(b => b.Area).Take(3);
    }

    private static Affine QuarterTurn(double height) => new(0, 1, -1, 0, height, 0);

    private static Block Below(Block bare, TemplateText label) => new(
        Math.Max(bare.Width, label.Box.Width), bare.Height + PieceLabel.Room + label.Box.Height, bare.Lines,
        bare.Texts.Add(label.Shift(0, bare.Height + PieceLabel.Room)));

    private static Block Right(Block bare, TemplateText label) => new(
        bare.Width + PieceLabel.Room + label.Box.Width, Math.Max(bare.Height, label.Box.Height), bare.Lines,
        bare.Texts.Add(label.Shift(bare.Width + PieceLabel.Room, Math.Max(0, (bare.Height - label.Box.Height) / 2))));

    /// <summary>The largest rectangle that no line crosses: beside the score line of a base, within or around an inner cut.</summary>
    private static Bounds? LabelRoom(TemplatePiece piece)
    {
        var area = piece.Outline;
        var box = area.Bounds;
        if (piece.Grain is not null)
        {
            // The front half: the arrow for the grain is in the other.
            var (from, _) = piece.Folds[0];
            area = area.Intersect(Outline.Rectangle(new Bounds(from.X, from.Y, box.Right, box.Bottom).ToRect()));
        }
        else if (piece.Folds.Length > 0)
        {
            var (left, top) = (piece.Folds.Min(f => f.From.X), piece.Folds.Min(f => f.From.Y));
            var (right, bottom) = (piece.Folds.Max(f => f.To.X), piece.Folds.Max(f => f.To.Y));
            area = area.Intersect(Outline.Rectangle(new Bounds(left, top, right, bottom).ToRect()));
        }

        var rooms = piece.Freed.Select(f => f.Reusable).ToList();
        if (Coarse(area.Subtract(piece.Hollow)).LargestRectangleInside() is { } around)
        {
            rooms.Add(around);
        }

        return rooms.Count == 0 ? null : rooms.MaxBy(r => r.Width * r.Height);
    }

    /// <summary>Straight lines that stray by far less than the room that a label keeps; they are searched many times faster than curves.</summary>
    private static Outline Coarse(Outline outline) => new([.. outline.Contours.Select(c => c.Flatten(LabelTolerance)).Select(p => new Contour(p[0], [.. p.Skip(1).Select(Segment.Line)]))]);

    private Block Lines(TemplatePiece piece, Affine turn)
    {
        var box = piece.Outline.Transform(turn).Bounds;
        var lines = ImmutableArray.CreateBuilder<TemplateLine>();
        var texts = ImmutableArray<TemplateText>.Empty;
        lines.Add(TemplateLine.Around(LineKind.Cut, piece.Name, piece.Outline));
        if (!piece.Hollow.IsEmpty)
        {
            lines.Add(TemplateLine.Around(LineKind.Cut, $"{piece.Name} inner cut", piece.Hollow));
        }

        lines.AddRange(piece.Folds.Select(f => TemplateLine.Through(LineKind.Fold, $"{piece.Name} fold", f.From, f.To)));
        if (piece.Grain is { } grain)
        {
            lines.AddRange(Arrow(grain.Middle, grain.Half));
            texts = [GrainWord(turn.Apply(grain.Middle), turn.Apply(grain.Half), turn.Apply(new(0, 0)))];
        }

        return new(box.Width, box.Height, [.. lines.Select(l => l.Transform(turn))], texts);
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
        yield return TemplateLine.Through(LineKind.Mark, "grain", start, end);
        yield return Tip(end, -1);
        yield return Tip(start, 1);

        TemplateLine Tip(Point at, int towards) => TemplateLine.Through(
            LineKind.Mark, "grain tip",
            new(at.X + towards * alongX - alongY / 2, at.Y + towards * alongY - alongX / 2),
            at,
            new(at.X + towards * alongX + alongY / 2, at.Y + towards * alongY + alongX / 2));
    }
}
