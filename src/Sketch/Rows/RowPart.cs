using Sketch.Edits;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Rows;

/// <summary>A line that is a row, in its file.</summary>
/// <param name="Syntax">The file.</param>
/// <param name="Line">The line.</param>
internal sealed record RowLine(FileSyntax Syntax, LineSyntax Line)
{
    /// <summary>The text.</summary>
    public SourceText Source => Syntax.Source;

    /// <summary>The words at a place.</summary>
    public string At(TextSpan span) => Source.Content[span.Start..span.End];

    /// <summary>The number within a place, with its unit; empty where there is none.</summary>
    public string NumberIn(TextSpan span) => Line.Tokens.Tokens.FirstOrDefault(
        t => t.Kind == TokenKind.Number && t.Span.Start >= span.Start && t.Span.End <= span.End) is { } number ? At(number.Span) : "";
}

/// <summary>A part of a line that holds a value of its row.</summary>
internal abstract record RowPart
{
    /// <summary>The value as it is written; empty where it is not.</summary>
    public abstract string Read(RowLine row);

    /// <summary>The changes that make it another value; an empty one takes the part away.</summary>
    /// <param name="row">The row, in which the part can be read.</param>
    /// <param name="value">The value, without spaces around it.</param>
    /// <param name="before">The fields that a line gives before this one.</param>
    public abstract IEnumerable<TextEdit> Write(RowLine row, string value, IEnumerable<RowField> before);

    /// <summary>Why it cannot be changed in this row; null where it can.</summary>
    public virtual string? RefusalIn(RowLine row) => null;
}

/// <summary>A part that every such line has, before its clauses.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="IsQuoted">Whether it stands in quotes.</param>
internal sealed record HeadPart(Func<LineSyntax, TextSpan?> Place, bool IsQuoted = false) : RowPart
{
    /// <inheritdoc/>
    public override string Read(RowLine row) => Place(row.Line) is not { } span ? ""
        : IsQuoted ? row.Line.Tokens.Tokens.First(t => t.Span == span).Text : row.At(span);

    /// <inheritdoc/>
    public override IEnumerable<TextEdit> Write(RowLine row, string value, IEnumerable<RowField> before) =>
        [new(Place(row.Line)!.Value, Written(value))];

    /// <inheritdoc/>
    public override string? RefusalIn(RowLine row) => Place(row.Line) is null ? "It is not in the text yet. Add it there." : null;

    /// <summary>The value as it stands in the line.</summary>
    public string Written(string value) => IsQuoted ? StartingText.Quoted(value) : value;
}

/// <summary>A clause.</summary>
/// <param name="Is">Whether a clause is the one.</param>
/// <param name="Value">The value in its clause.</param>
/// <param name="Clause">The clause with a value; the clause as written, or null for a new one, says how it was put.</param>
internal sealed record ClausePart(Func<Clause, bool> Is, Func<RowLine, Clause, string> Value, Func<string, Clause?, string> Clause)
    : RowPart
{
    /// <summary>The clause of a line; null where it has none.</summary>
    public Clause? Find(RowLine row) => row.Line.Clauses.FirstOrDefault(Is);

    /// <inheritdoc/>
    public override string Read(RowLine row) => Find(row) is { } clause ? Value(row, clause) : "";

    /// <inheritdoc/>
    public override IEnumerable<TextEdit> Write(RowLine row, string value, IEnumerable<RowField> before)
    {
        var line = new LineEditing(row.Source, row.Line, UnitSystem.Inches);
        switch (Find(row))
        {
            case { } clause when value.Length == 0:
                line.Remove(clause);
                break;
            case { } clause:
                line.Replace(clause.Span, Clause(value, clause));
                break;
            case null when value.Length > 0:
                line.AddClause(LastOf(row, before), Clause(value, null));
                break;
        }

        return line.ToEdits();
    }

    /// <summary>The last place of what a line gives before this clause.</summary>
    private static TextSpan LastOf(RowLine row, IEnumerable<RowField> before) => before.Select(f => f.Part switch
    {
        HeadPart head => head.Place(row.Line),
        ClausePart clause => clause.Find(row)?.Span,
        _ => null,
    }).OfType<TextSpan>().MaxBy(s => s.End);
}

/// <summary>A line of its own: beneath the row, or in the file where the row is its title.</summary>
/// <param name="Word">The word that begins it.</param>
/// <param name="Value">What follows the word: its values, and where they are.</param>
/// <param name="Line">The line with a value.</param>
internal sealed record LinePart(
    string Word, Func<LineSyntax, (IReadOnlyList<string> Values, TextSpan Place)?> Value, Func<string, string> Line) : RowPart
{
    /// <summary>Whether its line may hold several values.</summary>
    public bool IsList { get; init; }

    /// <inheritdoc/>
    public override string Read(RowLine row) => string.Join(", ", LinesOf(row).SelectMany(l => Value(l)!.Value.Values));

    /// <inheritdoc/>
    public override IEnumerable<TextEdit> Write(RowLine row, string value, IEnumerable<RowField> before)
    {
        var written = LinesOf(row).FirstOrDefault();
        if (written is null)
        {
            return value.Length == 0 ? [] : [Insertion(row, value)];
        }

        return [value.Length == 0 ? RowLines.Deletion(row.Source, written)
            : new(Value(written)!.Value.Place, Line(value)[(Word.Length + 1)..])];
    }

    /// <inheritdoc/>
    public override string? RefusalIn(RowLine row) => LinesOf(row).Sum(l => IsList ? 1 : Value(l)!.Value.Values.Count) > 1
        ? $"The text has several values after {Word}. Change them in the text." : null;

    private TextEdit Insertion(RowLine row, string value)
    {
        var isTitle = row.Line == row.Syntax.Lines[0];
        var indent = isTitle && row.Line.Children.IsEmpty ? ""
            : InsertedLines.IndentBeneath(row.Source, row.Line, CardOutline.Within(row.Syntax.Lines));
        return InsertedLines.Below(row.Source, row.Line, [indent + Line(value)]);
    }

    private IEnumerable<LineSyntax> LinesOf(RowLine row) =>
        (row.Line == row.Syntax.Lines[0] ? RowLines.Top(row.Syntax) : row.Line.Children).Where(l => Value(l) is not null);
}
