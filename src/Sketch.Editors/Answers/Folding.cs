using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Syntax;

namespace Sketch.Editors.Answers;

/// <summary>What can be folded away: a line with what is indented below it or continues it.</summary>
internal static class Folding
{
    /// <summary>The foldable parts of a text, in its order.</summary>
    public static FoldingRange[] Of(OpenDocument document) => [.. Within(document.Syntax.Lines)
        .Select(l => new FoldingRange(document.Lines.PlaceOf(l.Span.Start).Line, document.Lines.PlaceOf(EndOf(l)).Line))
        .Where(f => f.EndLine > f.StartLine)];

    /// <summary>Where a line ends with all below it.</summary>
    public static int EndOf(LineSyntax line)
    {
        var last = line;
        while (last.Children is [.., var child])
        {
            last = child;
        }

        return last.Span.End;
    }

    private static IEnumerable<LineSyntax> Within(IEnumerable<LineSyntax> lines) =>
        lines.SelectMany(l => Within(l.Children).Prepend(l));
}
