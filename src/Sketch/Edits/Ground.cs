using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>What a new piece is put on.</summary>
/// <param name="Line">Its line, under which the new one is indented.</param>
/// <param name="Box">Its box on the face.</param>
/// <param name="Paint">What it is made of.</param>
/// <param name="Turning">How it is turned.</param>
internal sealed record Ground(LineSyntax Line, Rect Box, Paint Paint, Affine Turning)
{
    /// <summary>Whether the new piece is a mat of it.</summary>
    private bool IsForMat { get; init; }

    /// <summary>
    /// The piece that was clicked, or what carries it: nothing lies on ink or in a hole. Null if the text has no line for it.
    /// </summary>
    public static Ground? Find(CardOutline outline, LaidOutCard card, PieceKind kind, PieceSpot spot)
    {
        var line = outline.At(spot.Line);
        while (line is not null)
        {
            var number = outline.NumberOf(line);
            var copies = card.On(spot.Face).Where(p => p.Location.Start.Line == number && p.Location.Source == card.Location.Source
                && p.Kind != PieceKind.Shadow);
            var piece = copies.MinBy(p => spot.At is { } at ? Away(p, at) : 0);
            if (line is PieceLine { Head.Kind: not PieceKind.Mat } && piece is not null && (kind == PieceKind.Mat
                ? piece.Kind.Traits.TakesMats : !piece.Kind.Traits.IsInkOrHole))
            {
                return new(line, piece.Box, piece.Paint, piece.Turning) { IsForMat = kind == PieceKind.Mat };
            }

            line = outline.Above(line);
        }

        return kind != PieceKind.Mat && card.Find(spot.Face) is { } face && face.Location.Source == card.Location.Source
            && outline.At(face.Location.Start.Line) is { } opened
            ? new(opened, new(Length.Zero, Length.Zero, face.Size.Width, face.Size.Height), face.Paint ?? card.Base.Paint, Affine.Identity)
            : null;
    }

    /// <summary>The new line: a mat after the other mats, anything else as the last, on top of all others.</summary>
    public AddedPiece Insert(CardOutline outline, string line)
    {
        var mats = Line.Children.TakeWhile(c => c is PieceLine { Head.Kind: PieceKind.Mat }).ToList();
        var after = IsForMat ? (mats is [.., var mat] ? Last(mat) : Line) : Last(Line);
        var edit = InsertedLines.Below(outline.Text, after, [InsertedLines.IndentBeneath(outline.Text, Line, outline.Lines) + line]);
        var end = outline.Text.PositionOf(after.Span.End).Line;
        return new(edit, end + 1);
    }

    /// <summary>The last line of what is indented below a line, or itself.</summary>
    private static LineSyntax Last(LineSyntax line) => line.Children is [.., var child] ? Last(child) : line;

    private static double Away(Piece piece, Point at)
    {
        var there = piece.Turning.Inverse().Apply(at);
        return Math.Pow(there.X - (piece.Box.Left + piece.Box.Right).Millimetres / 2, 2)
            + Math.Pow(there.Y - (piece.Box.Top + piece.Box.Bottom).Millimetres / 2, 2);
    }
}
