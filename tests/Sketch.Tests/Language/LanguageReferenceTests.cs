using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Language;

public class LanguageReferenceTests
{
    public static TheoryData<int> Examples => [.. LanguageReference.Examples.Select(e => e.Line)];

    public static TheoryData<int> Sound => [.. LanguageReference.Examples.Where(e => !IsMisspelt(e)).Select(e => e.Line)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_has_exactly_the_findings_written_below_it(int line)
    {
        var example = LanguageReference.At(line);
        var found = FindingsOf(example)
            .Select(f => (f.Code, Place: example.AsPrinted(f.Location.Start), f.Message, f.Hint))
            .Select(f => ($"{f.Code} {f.Place.Line}:{f.Place.Column}", $"{f.Message} {f.Hint}"))
            .ToList();
        var reported = string.Join('\n', found);
        Assert.True(example.Findings.Length == found.Count, $"{LanguageReference.FilePath()}:{line}\n{reported}");
        foreach (var ((place, message), written) in found.Zip(example.Findings))
        {
            Assert.True(written.StartsWith(place + " ", StringComparison.Ordinal)
                && message.Contains(written[(place.Length + 1)..], StringComparison.Ordinal), $"{written}\n{reported}");
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_sizes_below_an_example_are_those_of_its_layout(int line)
    {
        var example = LanguageReference.At(line);
        if (example.Sizes.Length == 0)
        {
            return;
        }

        var card = Compiler.Compile(example.Source, LanguageReference.World()).Card!;
        foreach (var written in example.Sizes)
        {
            var path = written.Split("  ")[0];
            var piece = card.Pieces.Single(p => p.Path.ToString() == path);
            Assert.Equal(written, $"{path}  {Text(piece.Finished.Width, card)} x {Text(piece.Finished.Height, card)}"
                + (written.Contains(" at ", StringComparison.Ordinal)
                ? $" at {Text(piece.Finished.Left, card)}, {Text(piece.Finished.Top, card)}" : ""));
        }
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void Formatting_an_example_is_idempotent(int line)
    {
        var once = Format(LanguageReference.At(line).Source.Content);
        Assert.Equal(once, Format(once));
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_formatted_example_has_the_same_meaning(int line)
    {
        var content = LanguageReference.At(line).Source.Content;
        Assert.Equal(SyntaxDump.Of(content), SyntaxDump.Of(Format(content)));
    }

    [Fact]
    public void Every_clause_has_an_example()
    {
        var shown = LanguageReference.Examples.SelectMany(e => SyntaxDump.Clauses(e.Source)).Select(c => c.GetType()).ToHashSet();
        Assert.Empty(Leaves<Clause>().Where(t => !shown.Contains(t)).Select(t => t.Name));
    }

    [Fact]
    public void Every_kind_of_line_has_an_example()
    {
        var shown = LanguageReference.Examples.SelectMany(e => SyntaxDump.Lines(e.Source)).Select(l => l.GetType()).ToHashSet();
        Assert.Empty(Leaves<LineSyntax>().Where(t => !shown.Contains(t)).Select(t => t.Name));
    }

    [Fact]
    public void Every_kind_of_piece_has_an_example() => Assert.Empty(PieceKinds.All.Where(k => k.Traits.HasLine).Except(
        LanguageReference.Examples.SelectMany(e => SyntaxDump.Lines(e.Source)).OfType<PieceLine>().Select(p => p.Head.Kind)));

    [Fact]
    public void The_reference_contains_every_word_that_starts_a_clause()
    {
        var reference = File.ReadAllText(LanguageReference.FilePath());
        Assert.All(Vocabulary.ClauseWords, w => Assert.Contains($"\"{w}\"", reference, StringComparison.Ordinal));
    }

    [Fact]
    public void The_tables_contain_every_named_size()
    {
        var reference = File.ReadAllText(LanguageReference.FilePath());
        var names = NamedSizes.Cards.Concat(NamedSizes.Envelopes).Concat(NamedSizes.Sheets).Select(s => s.Name);
        Assert.All(names, n => Assert.Contains($"| {n} |", reference, StringComparison.Ordinal));
    }

    [Fact]
    public void The_tables_contain_every_colour_word() => Assert.Empty(Missing(ColourWords.All));

    [Fact]
    public void The_tables_contain_every_pattern_word() => Assert.Empty(Missing(BuiltIn.PatternWords));

    private static IEnumerable<string> Missing(IEnumerable<string> words)
    {
        var reference = File.ReadAllText(LanguageReference.FilePath());
        return words.Where(w => !reference.Contains($"`{w}`", StringComparison.Ordinal));
    }

    private static bool IsMisspelt(LanguageReference.Example example)
    {
        var findings = new FindingBag();
        return Formatter.Format(example.Source, findings) is null;
    }

    /// <summary>The findings of reading and layout, without those of the fit checks, which have their own tests.</summary>
    private static IEnumerable<Finding> FindingsOf(LanguageReference.Example example) =>
        Compiler.Compile(example.Source, LanguageReference.World()).Findings.Where(f => string.CompareOrdinal(f.Code, "SK4") < 0);

    private static IEnumerable<Type> Leaves<T>() =>
        typeof(T).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(T)) && !t.IsAbstract);

    private static string Format(string content) => Formatter.Format(new SourceText("example.card", content), new FindingBag())!;

    private static string Text(Length length, LaidOutCard card) =>
        card.Units == UnitSystem.Inches ? LengthFormat.Ruler(length, 64) : LengthFormat.Millimetres(length);
}
