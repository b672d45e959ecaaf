using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>Lines typed beneath the line of a batch that makes a card, and the card that they give.</summary>
internal static class TypedChange
{
    // A narrower border is hard to cut and to glue evenly: common practice, no source.
    private static readonly Length NarrowestBorder = Length.Inch(0, 1, 16);

    /// <summary>
    /// The design with lines typed beneath its line; null if they cannot be read there, or if the card then is worse to make: the checks
    /// give a new warning, a border is narrower than 1/16 in, or a piece is larger or missing.
    /// </summary>
    public static Design? Made(BatchFiles files, Design design, IReadOnlyCollection<string> lines)
    {
        var (source, line) = (design.Order.Location.Source, design.Order.Location.Start.Line);
        var text = source.Content.Insert(EndOf(source, line), string.Concat(lines.Select(l => $"\n{Indent(source, line)}{l}")));
        var batch = Compiler.Compile(new(source.Path, text), files.World);
        if (batch.HasErrors || batch.Batch?.Makes.FirstOrDefault(m => m.Location.Start.Line == line) is not { Changed: { } changed } order)
        {
            return null;
        }

        var bent = Compiler.CompileLines(changed, files.World);
        if (bent.HasErrors || bent.Card is not { } card)
        {
            return null;
        }

        var filled = new BatchPapers(files.Stash, new()).Fill(order, card) with { Title = design.Card.Title };
        // Further lines are then typed beneath these.
        return IsNoWorse(design.Card, filled)
            ? design with { Card = filled, Order = design.Order with { Location = order.Location } } : null;
    }

    /// <summary>Which design of a batch is made by the same line as one of the batch before it was changed; -1 for none.</summary>
    public static int IndexOf(BatchFiles files, Design design) => files.Designs.ToList().FindIndex(d =>
        d.Order.Location.Source.Path == design.Order.Location.Source.Path
            && d.Order.Location.Start.Line == design.Order.Location.Start.Line);

    private static int EndOf(SourceText source, int line) => source.LineStart(line - 1) + source.Line(line - 1).Length;

    // As the lines beneath it are, if there are any.
    private static string Indent(SourceText source, int line)
    {
        var next = line < source.LineCount ? source.Line(line) : "";
        var indent = next[..^next.TrimStart().Length];
        return indent.Length == 0 || indent.Length == next.Length ? "  " : indent;
    }

    private static bool IsNoWorse(LaidOutCard before, LaidOutCard after) =>
        before.Pieces.Length == after.Pieces.Length
            && before.Pieces.Zip(after.Pieces).All(p => p.First.Path.Equals(p.Second.Path)
                && !IsLarger(p.First.Cut, p.Second.Cut) && !IsTooNarrow(p.First.Border, p.Second.Border))
            && !Warnings(after).Except(Warnings(before)).Any();

    private static bool IsLarger(Size? before, Size? after) =>
        before is { } old && after is { } now && (now.Width > old.Width || now.Height > old.Height);

    private static bool IsTooNarrow(Insets? before, Insets? after) =>
        before is { } old && after is { } now && Narrowest(now) < Length.Min(NarrowestBorder, Narrowest(old));

    private static Length Narrowest(Insets border) =>
        Length.Min(Length.Min(border.Left, border.Right), Length.Min(border.Top, border.Bottom));

    // Warnings that a card gives more often are new ones, wherever they stand.
    private static IEnumerable<(string Code, int Number)> Warnings(LaidOutCard card)
    {
        var findings = new FindingBag();
        FitChecks.Run(card, findings);
        return findings.ToImmutable().Where(f => f.Severity != Severity.Note).GroupBy(f => f.Code)
            .SelectMany(g => g.Select((f, i) => (f.Code, i)));
    }
}
