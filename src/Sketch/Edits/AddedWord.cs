using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>Puts words into a card where they belong: a clause into a line, a line among its like.</summary>
public static class AddedWord
{
    /// <summary>The words as one edit.</summary>
    /// <param name="text">The text of the card.</param>
    /// <param name="typed">The clause or line.</param>
    /// <param name="isClause">Whether it is a clause.</param>
    /// <param name="line">The line at which the caret is, from 1.</param>
    /// <returns>The edit; null for a clause if there is no line that takes one.</returns>
    public static AddedPiece? Put(SourceText text, string typed, bool isClause, int line)
    {
        var outline = CardOutline.Of(text);
        var here = outline.Lines.LastOrDefault(l => outline.NumberOf(l) <= line);
        if (isClause)
        {
            return here is null or TitleLine or WordsLine or UnitsLine or BadLine ? null
                : new(new(new(here.Span.End, here.Span.End), $", {typed}"), outline.NumberOf(here));
        }

        var word = typed.Split(' ', ':')[0];
        var faces = outline.Lines.Where(l => l is FaceLine).ToList();
        return (Vocabulary.Faces.Contains(word), PieceKinds.Find(word) is not null) switch
        {
            // A face is the last of the faces, a piece lies on the last of them, anything else comes before all.
            (true, _) => Below(outline, outline.Lines[^1], typed),
            (_, true) when faces.Count > 0 => Below(outline, outline.Lines[^1],
                InsertedLines.IndentBeneath(text, faces[^1], outline.Lines) + typed),
            _ when faces.Count > 0 && outline.Lines.TakeWhile(l => l is not FaceLine and not PartLine).LastOrDefault() is { } last =>
                Below(outline, last, typed),
            _ => Below(outline, outline.Lines[^1], typed),
        };
    }

    private static AddedPiece Below(CardOutline outline, LineSyntax line, string typed) =>
        new(InsertedLines.Below(outline.Text, line, [typed]), outline.Text.PositionOf(line.Span.End).Line + 1);
}
