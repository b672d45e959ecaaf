using CsCheck;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Language;

public class RobustnessTests
{
    private const int Texts = 400;

    private static readonly string[] Samples = [.. LanguageReference.Examples.Select(e => e.Source.Content)];

    private static readonly Gen<string> Scrap = Gen.OneOf(
        Gen.OneOf([.. Vocabulary.ClauseWords, .. Vocabulary.Kinds, .. Vocabulary.Openers, .. Vocabulary.Faces, "full", "share", "by", "as",
            "a", "sky", "lamp", "x"]),
        Gen.OneOf(",", ":", "/", "+", "\"", "#", "\n", "\n    ", "\t", "-", "⅝", " ", "\ud83d", "\0", "'"),
        Gen.Int[-9, 99].Select(i => i.ToString(System.Globalization.CultureInfo.InvariantCulture)),
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 99], Gen.OneOf("", " mm", " in", "\"", " m", " ft"), (a, b, unit) => $"{a}/{b}{unit}"),
        Gen.OneOf("999999999", "0", "1000000 m", "0.000000001 mm", "1e9", "1/64", "100000", "5000"),
        Gen.String[0, 6]);

    /// <summary>A sample with some of its lines and words removed, doubled, swapped or replaced.</summary>
    private static readonly Gen<string> Mutated =
        Gen.Select(Gen.OneOf(Samples), Gen.Select(Gen.Int[0, 5], Gen.Int[0, 10_000], Gen.Int[0, 10_000], Scrap).Array[1, 6])
            .Select((sample, changes) =>
                changes.Aggregate(sample, (text, change) => Mutate(text, change.Item1, change.Item2, change.Item3, change.Item4)));

    public static TheoryData<string> HostileNames => [.. HostileInputs.Names];

    [Fact]
    public void Any_text_can_be_read() => Gen.String.Sample(Check, iter: Texts);

    [Fact]
    public void Any_fragments_of_the_language_can_be_read() =>
        Scrap.Array[0, 60].Select(s => "card \"x\"\nbase A2\nfront\n  " + string.Join(' ', s)).Sample(Check, iter: Texts);

    [Fact]
    public void A_damaged_card_can_be_read() => Mutated.Sample(Check, iter: Texts);

    [Fact]
    public void Formatting_keeps_the_meaning() => Mutated.Sample(
        text =>
        {
            if (Formatter.Format(new("a.card", text), new()) is { } once)
            {
                Assert.Equal(once, Formatter.Format(new("a.card", once), new()));
                Assert.Equal(SyntaxDump.Of(text), SyntaxDump.Of(once));
            }
        },
        iter: Texts);

    [Fact]
    public void A_comment_after_a_comma_at_the_end_of_a_line_stays_on_that_line()
    {
        const string Text = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 1 x 1,  # one\n      # two\n";
        var once = Formatter.Format(new("a.card", Text), new())!;

        Assert.EndsWith("  panel 1 x 1  # one # two\n", once, StringComparison.Ordinal);
        Assert.Equal(once, Formatter.Format(new("a.card", once), new()));
    }

    /// <summary>Counts are divided by twenty here; the benchmark measures the texts at full size.</summary>
    [Theory]
    [MemberData(nameof(HostileNames))]
    public void A_hostile_text_is_reported_without_an_exception(string name) => Check(HostileInputs.Text(name, divisor: 20));

    [Fact]
    public void A_million_copies_are_reported_but_not_made() => Assert.Contains(
        Compiler.Compile(new("a.card", HostileInputs.Text("copies of copies of copies")), HostileInputs.World()).Findings, f =>
            f.Kind == FindingCatalogue.TooManyPieces);

    [Fact]
    public void Nesting_a_thousand_deep_is_reported_once() => Assert.Single(
        Compiler.Compile(new("a.card", HostileInputs.Text("nested a thousand deep")), HostileInputs.World()).Findings, f =>
            f.Kind == FindingCatalogue.TooDeep);

    private static void Check(string text)
    {
        var source = new SourceText("storm.card", text);
        var compilation = Compiler.Compile(source, HostileInputs.World());
        Formatter.Format(source, new());
        Assert.All(compilation.Findings.Where(f => f.Location.Source == source), f =>
        {
            Assert.InRange(f.Location.Span.Start, 0, text.Length);
            Assert.InRange(f.Location.Span.End, f.Location.Span.Start, text.Length);
            Assert.NotEqual("", f.Message);
            Assert.NotEqual("", f.Hint);
        });
    }

    private static string Mutate(string text, int how, int first, int second, string scrap)
    {
        var byLine = how % 2 == 0;
        var separator = byLine ? '\n' : ' ';
        var parts = text.Split(separator).ToList();
        var (a, b) = (first % parts.Count, second % parts.Count);
        switch (how / 2)
        {
            case 0:
                parts.RemoveAt(a);
                break;
            case 1:
                (parts[a], parts[b]) = (parts[b], parts[a]);
                parts.Insert(a, parts[b]);
                break;
            default:
                parts[a] = scrap;
                break;
        }

        return string.Join(separator, parts);
    }
}
