using System.Collections.Immutable;
using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Rows;
using Sketch.Tests.Language;
using Sketch.Tests.Project;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Rows;

/// <summary>Every cell of all samples and of the examples of the reference is changed, and every row is deleted.</summary>
public class RowsOfSamplesTests
{
    private const string Reference = "LANGUAGE.md:";

    private static readonly FolderFiles Folder = new();
    private static readonly TestWorld Examples = LanguageReference.World();

    public static TheoryData<string> Samples() =>
        [.. Directory.GetFiles(Repository.PathTo("sketches")).Select(f => Path.GetFileName(f))
            .Where(f => f.EndsWith(".stash", StringComparison.Ordinal) || f.EndsWith(".batch", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
            .. LanguageReference.Examples.Where(e => e.Kind is "stash" or "batch" && e.Findings.Length == 0)
                .Select(e => $"{Reference}{e.Line}")];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_cell_changes_its_own_row_only_and_what_is_typed_back_restores_it(string sample)
    {
        var before = Read(sample);
        foreach (var (row, field, at) in Cells(before))
        {
            var value = Another(field, row.Cells[at]);
            var text = Applied(before, row, RowEditing.Change(before, row.Line, field.Name, value).Value);
            var there = Rows(text).Single(r => r.Line == row.Line);
            Assert.True(Alike(there.Cells[at], value), $"{row.Cells[0]}: {field.Name} is '{there.Cells[at]}' and not '{value}'");
            if (row.Cells[at].Length > 0)
            {
                var back = TextEdit.Apply(text.Content, RowEditing.Change(text, row.Line, field.Name, row.Cells[at]).Value);
                Assert.Equal(before.Content, back);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_cell_that_is_emptied_leaves_all_others(string sample)
    {
        var before = Read(sample);
        foreach (var (row, field, at) in Cells(before).Where(c => !c.Field.IsNeeded && c.Row.Cells[c.At].Length > 0))
        {
            var edits = RowEditing.Change(before, row.Line, field.Name, "").Value;
            var text = new SourceText(before.Path, TextEdit.Apply(before.Content, edits));
            var there = Rows(text).Single(r => r.Kind == row.Kind && r.Cells[0] == row.Cells[0] && r.Line == row.Line);
            Assert.Equal(row.Cells.SetItem(at, ""), there.Cells);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_row_that_is_deleted_and_added_again_reads_the_same(string sample)
    {
        var before = Read(sample);
        foreach (var table in RowEditing.Tables(before).Where(t => t.IsList))
        {
            foreach (var row in table.Rows)
            {
                var without = Applied(before, row, RowEditing.Delete(before, row.Line).Value);
                Assert.Equal(Rows(before).Count - 1, Rows(without).Count);
                var fields = table.Kinds.Single(s => s.Word == row.Kind).Fields;
                var values = fields.Zip(row.Cells).ToDictionary(c => c.First.Name, c => c.Second);
                var added = RowEditing.Add(without, row.Kind, values).Value;
                var after = new SourceText(before.Path, TextEdit.Apply(without.Content, [added.Edit]));
                Assert.Equal(row.Cells, Rows(after).Single(r => r.Line == added.Line).Cells);
            }
        }
    }

    private static SourceText Read(string sample)
    {
        if (sample.StartsWith(Reference, StringComparison.Ordinal))
        {
            return LanguageReference.At(int.Parse(sample[Reference.Length..], CultureInfo.InvariantCulture)).Source;
        }

        var path = Repository.PathTo("sketches", sample);
        return new(path, File.ReadAllText(path));
    }

    private static List<Row> Rows(SourceText text) => [.. RowEditing.Tables(text).SelectMany(t => t.Rows)];

    private static IEnumerable<(Row Row, RowField Field, int At)> Cells(SourceText text) =>
        from table in RowEditing.Tables(text)
        from row in table.Rows
        from cell in table.Kinds.Single(s => s.Word == row.Kind).Fields.Select((field, at) => (field, at))
        select (row, cell.field, cell.at);

    /// <summary>Another value that is valid in its place; what names something else stays what it is.</summary>
    private static string Another(RowField field, string value) => field switch
    {
        { Name: "name" or "whom" or "card" or "paper" or "stash" or "made-by" or "names" or "makers" } => value,
        { Choices: [.., var last] } => last,
        { Name: "stock" or "cards" or "spare" or "count" } => "7",
        _ => field.Example,
    };

    /// <summary>Whether a cell has a value, with the noun that a bare number gets.</summary>
    private static bool Alike(string written, string value) => written == value || written.Split(' ')[0] == value;

    /// <summary>The text after a change, which lies within the lines of the row and adds no error.</summary>
    private static SourceText Applied(SourceText before, Row row, ImmutableArray<TextEdit> edits)
    {
        var content = before.Content;
        var start = before.LineStart(row.Line - 1);
        var next = Rows(before).Select(r => r.Line).Where(l => l > row.Line).Order().FirstOrDefault();
        var end = next > 0 && row.Kind is not ("stash" or "batch") ? before.LineStart(next - 1) : content.Length;
        Assert.All(edits, e => Assert.True(e.Span.Start >= start - 1 && e.Span.End <= end, $"{row.Cells[0]}: {e} lies beyond its row"));
        var text = new SourceText(before.Path, TextEdit.Apply(content, edits));
        var known = Errors(before);
        Assert.Empty(Errors(text).Except(known));
        return text;
    }

    /// <summary>The errors, without those about a deleted recipient whom a design names.</summary>
    private static IEnumerable<string> Errors(SourceText text) =>
        Compiler.Compile(text, text.Path == "example.card" ? Examples : Folder).Findings
            .Where(f => f.Severity == Severity.Error && f.Kind != FindingCatalogue.NoSuchRecipient).Select(f => f.Message);
}
