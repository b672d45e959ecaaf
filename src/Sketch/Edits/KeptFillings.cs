using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>Writes chosen papers under a line of a batch, so that this run of cards is made from them.</summary>
public static class KeptFillings
{
    private const string UsualStep = "  ";

    /// <summary>
    /// The changes that make the <c>role</c> lines beneath a <c>make</c> line name these papers, with the side if it is the back: lines
    /// that exist are changed, missing ones are inserted after them. Comments stay. Names that cannot be written as one word are left
    /// out.
    /// </summary>
    /// <param name="batch">The batch's text.</param>
    /// <param name="makeLine">The number of the <c>make</c> line, from 1.</param>
    /// <param name="choices">The papers; of two for one role the last counts.</param>
    /// <returns>Changes in the order of the text; none for what is already there, and none if there is no such line.</returns>
    public static ImmutableArray<TextEdit> InBatch(SourceText batch, int makeLine, IEnumerable<PaperChoice> choices)
    {
        var file = Parser.Parse(batch, new FindingBag());
        var lines = file.Lines.SelectMany(l => l.Children.Prepend(l)).ToList();
        if (file.Lines is not [TitleLine { Word: "batch" }, ..]
            || lines.OfType<MakeLine>().FirstOrDefault(l => batch.PositionOf(l.Span.Start).Line == makeLine) is not { } make)
        {
            return [];
        }

        var filling = new RoleFilling(null, [.. choices]);
        var roles = make.Children.OfType<RoleLine>().ToList();
        var edits = roles
            .SelectMany(l => filling.ChoiceFor(l.Name.Text) is { } choice ? KeptPapers.InLine(batch, l, choice.Paper, choice.Side) : [])
            .ToList();
        var missing = filling.Choices
            .Where(c => ReferenceEquals(filling.ChoiceFor(c.Role), c)
            && !roles.Any(l => l.Name.Text.Equals(c.Role, StringComparison.OrdinalIgnoreCase)))
            .Where(c => KeptPapers.CanBeWritten(c.Role, c.Paper)).ToList();
        if (missing.Count > 0)
        {
            var indent = IndentBeneath(batch, make, lines);
            edits.Add(Below(batch, roles is [.., var last] ? last : make, [.. missing.Select(c => indent + Line(c))]));
        }

        return [.. edits];
    }

    private static string Line(PaperChoice choice) =>
        $"role {choice.Role}: {choice.Paper}{(choice.Side == Panels.PaperSide.Back && !choice.Paper.StartsWith('#') ? ", back" : "")}";

    /// <summary>The indentation of the lines beneath, or of new ones: a file that indents with tabs keeps tabs.</summary>
    private static string IndentBeneath(SourceText batch, MakeLine make, List<LineSyntax> lines)
    {
        if (make.Children is [var child, ..])
        {
            return IndentOf(child);
        }

        var usesTabs = lines.SelectMany(l => l.Children).Select(IndentOf).FirstOrDefault(i => i.Length > 0)?[0] == '\t';
        return IndentOf(make) + (usesTabs ? "\t" : UsualStep);

        string IndentOf(LineSyntax line)
        {
            var start = batch.LineStart(batch.PositionOf(line.Span.Start).Line - 1);
            return batch.Content[start..line.Span.Start];
        }
    }

    /// <summary>Inserts lines below another, with the line ends of the file.</summary>
    private static TextEdit Below(SourceText batch, LineSyntax line, ImmutableArray<string> texts)
    {
        var content = batch.Content;
        var lineEnd = content.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var end = content.IndexOf('\n', line.Span.End);
        return end < 0
            ? new(new(content.Length, content.Length), string.Concat(texts.Select(t => lineEnd + t)))
            : new(new(end + 1, end + 1), string.Concat(texts.Select(t => t + lineEnd)));
    }
}
