using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>Writes chosen papers under a line of a batch, so that this run of cards is made from them.</summary>
public static class KeptFillings
{
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
            var indent = InsertedLines.IndentBeneath(batch, make, lines);
            edits.Add(InsertedLines.Below(batch, roles is [.., var last] ? last : make, [.. missing.Select(c => indent + Line(c))]));
        }

        return [.. edits];
    }

    private static string Line(PaperChoice choice) =>
        $"role {choice.Role}: {choice.Paper}{(choice.Side == Panels.PaperSide.Back && !choice.Paper.StartsWith('#') ? ", back" : "")}";
}
