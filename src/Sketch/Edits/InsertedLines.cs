using System.Collections.Immutable;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>Lines put into a text, indented as its others are.</summary>
internal static class InsertedLines
{
    private const string UsualStep = "  ";

    /// <summary>
    /// The indentation of the lines beneath a line, or of new ones: a file keeps its tabs, and otherwise the step of its first indented
    /// line.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="line">The line.</param>
    /// <param name="lines">All lines of the text.</param>
    public static string IndentBeneath(SourceText text, LineSyntax line, IEnumerable<LineSyntax> lines)
    {
        if (line.Children is [var child, ..])
        {
            return IndentOf(text, child);
        }

        var step = lines.Where(l => !l.Children.IsEmpty)
            .Select(l => (Outer: IndentOf(text, l), Inner: IndentOf(text, l.Children[0])))
            .Where(i => i.Inner.StartsWith(i.Outer, StringComparison.Ordinal) && i.Inner.Length > i.Outer.Length)
            .Select(i => i.Inner[i.Outer.Length..]).FirstOrDefault();
        return IndentOf(text, line) + (step ?? UsualStep);
    }

    /// <summary>Inserts lines below another, with the line ends of the file.</summary>
    public static TextEdit Below(SourceText text, LineSyntax line, ImmutableArray<string> texts)
    {
        var content = text.Content;
        var lineEnd = content.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var end = content.IndexOf('\n', line.Span.End);
        return end < 0
            ? new(new(content.Length, content.Length), string.Concat(texts.Select(t => lineEnd + t)))
            : new(new(end + 1, end + 1), string.Concat(texts.Select(t => t + lineEnd)));
    }

    /// <summary>The indentation of a line.</summary>
    public static string IndentOf(SourceText text, LineSyntax line)
    {
        var start = text.LineStart(text.PositionOf(line.Span.Start).Line - 1);
        return text.Content[start..line.Span.Start];
    }
}
