using System.Collections.Immutable;
using Sketch.Shapes;
using Sketch.Templates;

namespace Sketch.CutFiles;

/// <summary>The lines of a piece, upright and, where its paper allows it, given a quarter turn.</summary>
internal static class PiecePaths
{
    /// <summary>The ways in which a piece may lie on a sheet: an empty block as large as the piece, and its lines from the block's top
    /// left corner; those on its other side as seen through the paper.</summary>
    public static ImmutableArray<(TemplateBlock Block, ImmutableArray<CutPath> Paths, ImmutableArray<CutPath> Behind)> Ways(
        TemplatePiece piece)
    {
        var (width, height) = (piece.Outline.Bounds.Width, piece.Outline.Bounds.Height);
        ImmutableArray<CutPath> upright = [.. Of(piece)], behind = [.. Words(piece, piece.InkedBehind)];
        var turn = new Affine(0, 1, -1, 0, height, 0);
        (TemplateBlock, ImmutableArray<CutPath>, ImmutableArray<CutPath>) way = (new(width, height, [], []), upright, behind);
        return piece.IsUpright ? [way]
            : [way, (new(height, width, [], []), Turned(upright), Turned(behind))];

        ImmutableArray<CutPath> Turned(ImmutableArray<CutPath> paths) => [.. paths.Select(p => p.Transform(turn))];
    }

    private static IEnumerable<CutPath> Words(TemplatePiece piece, Outline ink) =>
        ink.Contours.Select(letter => new CutPath(CutLayer.Draw, $"{piece.Name} words", letter, true));

    /// <summary>
    /// The lines of an upright piece. If one outline lies inside another, the inner one is cut first.
    /// </summary>
    private static IEnumerable<CutPath> Of(TemplatePiece piece)
    {
        foreach (var letter in Words(piece, piece.Inked))
        {
            yield return letter;
        }

        foreach (var stitch in piece.Stitches)
        {
            yield return new(CutLayer.Draw, $"{piece.Name} stitches", stitch, false);
        }

        for (var i = 0; i < piece.Folds.Length; i++)
        {
            var (from, to) = piece.Folds[i];
            var (layer, word) = i < piece.Wraps ? (CutLayer.Fold, "fold") : (CutLayer.Score, "score");
            yield return new(layer, $"{piece.Name} {word}", new(from, [Segment.Line(to)]), false);
        }

        var outer = piece.Outline.SignedArea >= 0;
        foreach (var (contour, isInner) in piece.Outline.Contours.Select(c => (Contour: c, IsInner: c.SignedArea >= 0 != outer))
            .Concat(piece.Hollow.Contours.Select(c => (Contour: c, IsInner: true)))
            .OrderBy(c => Math.Abs(c.Contour.SignedArea)))
        {
            yield return new(CutLayer.Cut, isInner ? $"{piece.Name} inside" : piece.Name, contour, true);
        }
    }
}
