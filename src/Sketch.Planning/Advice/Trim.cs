using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>All pieces of one size and paper cut a little smaller, by lines that the maker types.</summary>
/// <param name="Text">What to type and what becomes of the pieces, as the beginning of a sentence.</param>
/// <param name="Made">The batch with these lines; null if they do not work there.</param>
internal sealed record Trim(string Text, Func<BatchFiles, BatchFiles?> Made)
{
    /// <summary>A trim; null if the pieces cannot be trimmed by lines that leave the cards sound.</summary>
    /// <param name="files">The batch.</param>
    /// <param name="order">What is cut from the paper.</param>
    /// <param name="size">The size of the pieces.</param>
    /// <param name="by">How much narrower and shorter each gets.</param>
    /// <param name="lengths">How lengths are written.</param>
    public static Trim? Of(BatchFiles files, PaperOrder order, Size size, Length by, LengthFormat lengths)
    {
        var less = new Size(size.Width - by, size.Height - by);
        var pieces = order.Pieces.Where(p => p.Size == size && p.Path != PiecePath.Base).ToList();
        var loose = pieces.Where(p => p.Design is null).Select(p => p.Location).ToHashSet();
        var lines = new List<(Design Design, List<string> Lines)>();
        foreach (var design in pieces.Select(p => p.Design).OfType<Design>().Distinct())
        {
            var own = pieces.Where(p => p.Design == design).Select(p => p.Path!).ToHashSet();
            var found = design.Card.Pieces.Where(p => own.Contains(p.Path))
                .Select(p => LineFor(files, design, p, less, by, lengths)).ToList();
            var typed = found.OfType<string>().Distinct().ToList();
            if (found.Contains(null) || TypedChange.Made(files, design, typed) is not { } made || !own.All(p => CutOf(made, p) == less))
            {
                return null;
            }

            lines.Add((design, typed));
        }

        return new(TextOf(lines, loose, size, less, lengths), changed => Apply(changed, lines, loose, less));
    }

    private static Size? CutOf(Design design, PiecePath path) => design.Card.Pieces.FirstOrDefault(p => p.Path.Equals(path))?.Cut;

    // The line that gives the piece its new size. Words are as large as they are; what runs from edge to edge would no longer.
    private static string? LineFor(BatchFiles files, Design design, Piece piece, Size less, Length by, LengthFormat lengths) =>
        piece.Kind is PieceKind.Word or PieceKind.Sentiment || RunsFromEdgeToEdge(design.Card, piece) ? null
        : Candidates(design.Card, piece, less, by, lengths)
            .FirstOrDefault(l => TypedChange.Made(files, design, [l]) is { } made && CutOf(made, piece.Path) == less);

    // Which of them works depends on what settles the size: a number, a border, or how much of what is beneath shows. A line changes all
    // copies alike.
    private static IEnumerable<string> Candidates(LaidOutCard card, Piece piece, Size less, Length by, LengthFormat lengths)
    {
        var name = string.Join('/', piece.Path.Names);
        if (piece.Kind != PieceKind.Mat)
        {
            yield return $"change {name}: {lengths.Text(less)}";
        }
        else if (piece.Border is { } border && border.Left == border.Right && border.Left == border.Top && border.Left == border.Bottom)
        {
            yield return $"change {name}: border {lengths.Text(border.Left - by / 2)}";
        }

        var ground = piece.LiesOn >= 0 ? card.Pieces[piece.LiesOn].Box.Size : card.SizeOf(piece.Face);
        var owner = piece.Kind == PieceKind.Mat && piece.Path.Parent is { } of ? string.Join('/', of.Names) : name;
        if (ground.Width - piece.Box.Width is var shown && shown == ground.Height - piece.Box.Height && shown > Length.Zero)
        {
            yield return $"change {owner}: showing {lengths.Text((shown + by) / 2)}";
        }
    }

    private static bool RunsFromEdgeToEdge(LaidOutCard card, Piece piece)
    {
        var face = card.SizeOf(piece.Face);
        var ground = piece.LiesOn >= 0 ? card.Pieces[piece.LiesOn].Box : new Rect(Length.Zero, Length.Zero, face.Width, face.Height);
        return (piece.Box.Left <= ground.Left && piece.Box.Right >= ground.Right)
            || (piece.Box.Top <= ground.Top && piece.Box.Bottom >= ground.Bottom);
    }

    private static string TextOf(
        List<(Design Design, List<string> Lines)> lines, HashSet<Location> loose, Size size, Size less, LengthFormat lengths) =>
        "Write " + string.Join(", and ",
        [
            .. lines.Select(l =>
                $"{string.Join(" and ", l.Lines)} under {l.Design.Card.Title} in line {l.Design.Order.Location.Start.Line}"),
            .. loose.OrderBy(l => l.Start.Line).Select(l => $"{lengths.Text(less)} in line {l.Start.Line}"),
        ]) + $" (cut {lengths.Text(less)} instead of {lengths.Text(size)})";

    private static BatchFiles? Apply(BatchFiles files, List<(Design Design, List<string> Lines)> lines, HashSet<Location> loose, Size less)
    {
        var designs = files.Designs.ToBuilder();
        foreach (var (design, typed) in lines)
        {
            var at = TypedChange.IndexOf(files, design);
            if (at < 0 || TypedChange.Made(files, designs[at], typed) is not { } made)
            {
                return null;
            }

            designs[at] = made;
        }

        return files with
        {
            Designs = designs.ToImmutable(),
            Batch = files.Batch with { Cuts = [.. files.Batch.Cuts.Select(c => loose.Contains(c.Location) ? c with { Size = less } : c)] },
        };
    }
}
