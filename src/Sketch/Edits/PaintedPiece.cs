using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>Gives one piece another paper, and leaves the roles of the card as they are.</summary>
public static class PaintedPiece
{
    /// <summary>
    /// The change that makes a line name a paper: what comes after <c>of</c> is replaced, or added at the end of the line. Comments stay.
    /// </summary>
    /// <param name="text">The text of the card.</param>
    /// <param name="line">The number of the line, from 1.</param>
    /// <param name="paper">The paper: a role, a paper of the stash or a colour.</param>
    /// <returns>The edit; null if no piece is on the line, or the name cannot be written as one word.</returns>
    public static TextEdit? Of(SourceText text, int line, string paper) =>
        !KeptPapers.CanBeWritten("paper", paper) || CardOutline.Of(text).At(line) is not PieceLine piece ? null
        : piece.Clauses.OfType<OfClause>().FirstOrDefault() is { } written ? new(written.Span, $"of {paper}")
        : new(new(piece.Span.End, piece.Span.End), $", of {paper}");
}
