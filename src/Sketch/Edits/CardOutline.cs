using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>The lines of a text, to be found by their numbers.</summary>
/// <param name="Text">The text.</param>
/// <param name="Lines">All lines, in the order of the text.</param>
internal sealed record CardOutline(SourceText Text, ImmutableArray<LineSyntax> Lines)
{
    /// <summary>Reads a text.</summary>
    public static CardOutline Of(SourceText text) => new(text, [.. Within(Parser.Parse(text, new FindingBag()).Lines)]);

    /// <summary>The line that begins at a line number, from 1; null if none does.</summary>
    public LineSyntax? At(int number) => Lines.FirstOrDefault(l => NumberOf(l) == number);

    /// <summary>The number of a line, from 1.</summary>
    public int NumberOf(LineSyntax line) => Text.PositionOf(line.Span.Start).Line;

    /// <summary>The line under which a line is indented; null if it is not indented.</summary>
    public LineSyntax? Above(LineSyntax line) => Lines.FirstOrDefault(l => l.Children.Contains(line));

    /// <summary>Lines, each followed by those beneath it.</summary>
    public static IEnumerable<LineSyntax> Within(IEnumerable<LineSyntax> lines) => lines.SelectMany(l => Within(l.Children).Prepend(l));
}
