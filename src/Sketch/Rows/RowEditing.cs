using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Edits;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Rows;

/// <summary>
/// Shows a stash or batch as tables, and writes what is changed in a row into its line, as a maker would type it: the clause that is there
/// gets another value, and all else stays as it is.
/// </summary>
public static class RowEditing
{
    /// <summary>The tables of a text; none where it is neither a stash nor a batch.</summary>
    public static ImmutableArray<RowTable> Tables(SourceText text)
    {
        var file = Parser.Parse(text, new FindingBag());
        return [.. TablesOf(file).Select(table => table with
        {
            Rows = [.. RowsOf(file).Where(r => table.Kinds.Contains(r.Kind)).Select(r => RowOf(file, r.Kind, r.Line))],
        })];
    }

    /// <summary>How many lines of a stash or batch cannot be read at all, so that no row shows them.</summary>
    public static int UnreadLines(SourceText text) => RowLines.Top(Parser.Parse(text, new FindingBag())).Count(l => l is BadLine);

    /// <summary>The changes that give a cell another value; an empty value takes it out of the line.</summary>
    /// <param name="text">The text.</param>
    /// <param name="line">The line of the row, from 1.</param>
    /// <param name="field">The name of the field.</param>
    /// <param name="value">The value as somebody types it.</param>
    /// <returns>Changes in the order of the text; a problem says, in sentences, why it cannot be done.</returns>
    public static Result<ImmutableArray<TextEdit>> Change(SourceText text, int line, string field, string value)
    {
        if (Find(text, line) is not var (row, kind) || kind.Find(field) is not { } of)
        {
            return new Failure("This row is no longer in the text.");
        }

        if (LockOf(row) is { } locked)
        {
            return new Failure(locked);
        }

        if (of.Part.RefusalIn(row) is { } refusal)
        {
            return new Failure(refusal);
        }

        var typed = value.Trim();
        if (typed.Length == 0 && of.IsNeeded)
        {
            return new Failure(Missing(of));
        }

        if (typed == of.Part.Read(row))
        {
            return Result.Of(ImmutableArray<TextEdit>.Empty);
        }

        ImmutableArray<TextEdit> edits = [.. of.Part.Write(row, typed, kind.Fields.TakeWhile(f => f != of))];
        var after = new SourceText(text.Path, TextEdit.Apply(text.Content, edits));
        return StaysApart(text, after, line, kind.Fields.IndexOf(of)) ? Result.Of(edits)
            : new Failure(MistakeIn(after, text) ?? $"That would change more than this cell. Enter a value such as {of.Example}.");
    }

    /// <summary>The change that adds a row below the last of its table, or at the end.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kind">The word of its kind.</param>
    /// <param name="values">The values of its fields; what is missing or empty is not written.</param>
    /// <returns>The change and the number of the new line; a problem says, in sentences, why it cannot be done.</returns>
    public static Result<AddedPiece> Add(SourceText text, string kind, IReadOnlyDictionary<string, string> values)
    {
        var file = Parser.Parse(text, new FindingBag());
        if (RowKinds.Find(kind) is not { } of || TablesOf(file).FirstOrDefault(t => t.Kinds.Contains(of)) is not { } table)
        {
            return new Failure("That cannot be added here. Choose again.");
        }

        if (of.Fields.FirstOrDefault(f => f.IsNeeded && ValueOf(values, f.Name).Length == 0) is { } missing)
        {
            return new Failure(Missing(missing));
        }

        var like = RowsOf(file).LastOrDefault(r => table.Kinds.Contains(r.Kind)).Line;
        var after = like ?? RowLines.Top(file).LastOrDefault() ?? file.Lines[0];
        var indent = after == file.Lines[0] ? "" : InsertedLines.IndentOf(text, after);
        var beneath = InsertedLines.IndentBeneath(text, after, CardOutline.Within(file.Lines))[indent.Length..];
        string[] lines =
        [
            indent + LineOf(of, values),
            .. of.Fields.Where(f => f.Part is LinePart && ValueOf(values, f.Name).Length > 0)
                .Select(f => indent + (beneath.Length > 0 ? beneath : "  ") + ((LinePart)f.Part).Line(ValueOf(values, f.Name))),
        ];
        var last = RowLines.Last(after);
        return Result.Of(new AddedPiece(InsertedLines.Below(text, last, [.. lines]), text.PositionOf(last.Span.End).Line + 1));
    }

    /// <summary>The change that takes a row away with what is indented beneath it; comments above it stay.</summary>
    /// <param name="text">The text.</param>
    /// <param name="line">The line of the row, from 1.</param>
    public static Result<ImmutableArray<TextEdit>> Delete(SourceText text, int line) =>
        Find(text, line) is var (row, kind) && row.Line != row.Syntax.Lines[0] && kind.Fields.Length > 0
            ? Result.Of<ImmutableArray<TextEdit>>([RowLines.Deletion(text, row.Line)])
            : new Failure("This row is no longer in the text.");

    private static string LineOf(RowKind kind, IReadOnlyDictionary<string, string> values)
    {
        var head = kind.HeadOf(name => ((HeadPart)kind.Find(name)!.Part).Written(ValueOf(values, name)));
        var clauses = kind.Fields.Select(f => (f.Part as ClausePart, Value: ValueOf(values, f.Name)))
            .Where(c => c.Item1 is not null && c.Value.Length > 0).Select(c => ", " + c.Item1!.Clause(c.Value, null));
        return head + string.Concat(clauses);
    }

    private static string ValueOf(IReadOnlyDictionary<string, string> values, string field) => values.GetValueOrDefault(field, "").Trim();

    private static string Missing(RowField field) => $"\"{field.Title}\" is empty. Enter a value such as {field.Example}.";

    /// <summary>Whether no other cell changes: what is typed may hold a comma, a quotation mark or a comment.</summary>
    private static bool StaysApart(SourceText before, SourceText after, int line, int field)
    {
        var (were, are) = (Rows(before), Rows(after));
        return were.Count == are.Count && were.Zip(are).All(pair => pair.First.Kind == pair.Second.Kind
            && pair.First.Cells.Zip(pair.Second.Cells).Select((c, i) => (c, i))
                .All(c => c.c.First == c.c.Second || (pair.First.Line == line && c.i == field)));

        static List<Row> Rows(SourceText text) => [.. Tables(text).SelectMany(t => t.Rows)];
    }

    /// <summary>The first thing that cannot be read in a text and could be in another, in sentences; null for nothing.</summary>
    private static string? MistakeIn(SourceText after, SourceText before)
    {
        var known = Mistakes(before).Select(f => f.Message).ToHashSet();
        return Mistakes(after).FirstOrDefault(f => !known.Contains(f.Message)) is { } mistake ? $"{mistake.Message} {mistake.Hint}" : null;

        static ImmutableArray<Finding> Mistakes(SourceText text)
        {
            var findings = new FindingBag();
            Parser.Parse(text, findings);
            return findings.ToImmutable();
        }
    }

    private static (RowLine Row, RowKind Kind)? Find(SourceText text, int line)
    {
        var file = Parser.Parse(text, new FindingBag());
        return RowsOf(file).Where(r => text.PositionOf(r.Line.Span.Start).Line == line)
            .Select(r => ((RowLine, RowKind)?)(new(file, r.Line), r.Kind)).FirstOrDefault();
    }

    private static ImmutableArray<RowTable> TablesOf(FileSyntax file) => file.Lines switch
    {
        [TitleLine { Word: "stash" }, ..] => RowKinds.OfStash,
        [TitleLine { Word: "batch" }, ..] => RowKinds.OfBatch,
        _ => [],
    };

    /// <summary>The lines that are rows, with their kinds.</summary>
    private static IEnumerable<(LineSyntax Line, RowKind Kind)> RowsOf(FileSyntax file) => TablesOf(file) is [var title, ..]
        ? RowLines.Top(file).Select(l => (Line: l, Kind: KindOf(l))).Where(r => r.Kind is not null).Select(r => (r.Line, r.Kind!))
            .Prepend((file.Lines[0], title.Kinds[0]))
        : [];

    private static RowKind? KindOf(LineSyntax line) => line switch
    {
        StockLine stock => RowKinds.Find(stock.Stock),
        MakeLine => RowKinds.Find("make"),
        ForLine => RowKinds.Find("for"),
        UseOnHandLine => RowKinds.Find("use"),
        CutLine => RowKinds.Find("cut"),
        _ => null,
    };

    private static Row RowOf(FileSyntax file, RowKind kind, LineSyntax line)
    {
        var row = new RowLine(file, line);
        return new(kind.Word, file.Source.PositionOf(line.Span.Start).Line, [.. kind.Fields.Select(f => f.Part.Read(row))])
        {
            Locked = LockOf(row),
        };
    }

    private static string? LockOf(RowLine row) => row.Line.IsDamaged || row.Line is StockLine { Measure: null }
        ? "This line has a mistake. Fix it in the text first." : null;
}
