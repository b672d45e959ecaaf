using CsCheck;
using Sketch.Diagnostics;
using Sketch.Reports;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Binding;

/// <summary>Pieces on the same thing have different names and paths, however they got there.</summary>
public sealed class RepeatedNamesTests
{
    private const string Head = "card \"Test\"\nbase A2, of white\n";
    private const string Twice = "front\n  2 panel 1 x 1, of red\n    ";
    private const string Lamp = "lamp: star 1, of red\n";
    private const string Like = "card \"Test\"\nlike \"one.card\"\n";

    private static readonly TestWorld World = new TestWorld().WithText(
        "one.card", Head + "front\n  sky: panel 3 x 3, of blue\n    lamp: star 1, of gold\n  2 tag 1, in a row, of red\n");

    public static TheoryData<string, string, int> Repeated() => new()
    {
        { "lines below each other", Head + "front\n  lamp: star 1, of red\n  Lamp: heart 1, of red\n", 5 },
        { "add to a piece", Like + "add to sky\n  lamp: heart 1, of red\n", 4 },
        { "add to a face", Like + "add to front\n  sky: heart 1, of red\n", 4 },
        { "more pieces on a face", Like + "front\n  sky: heart 1, of red\n", 4 },
        { "lines beneath a change", Like + "change sky: showing 1/4\n  lamp: heart 1, of red\n", 4 },
        { "two changes", Like + "change sky: showing 1/4\n  sun: heart 1, of red\nchange sky: of red\n  sun: heart 1, of red\n", 6 },
        { "a part", Head + $"part light 1 x 1\n  {Lamp}  {Lamp}front\n  use light\n  use light, top 0\n", 5 },
        { "the use of a part", Head + "part light 1 x 1\n  lamp: star 1, of red\nfront\n  use light\n    lamp: star 1, of red\n", 7 },
        { "an item", Head + Twice + $"{Lamp}    item 2:\n      {Lamp}", 7 },
        { "two items of a copy", Head + Twice + $"item 1 and 2:\n      {Lamp}    item 2:\n      {Lamp}", 8 },
        { "the second mat", Head + "front\n  panel 2 x 2, of red\n    mat, of blue\n    mat, of white\n    mat2: star 1, of red\n", 7 },
    };

    [Theory]
    [MemberData(nameof(Repeated))]
    public void A_repeated_name_is_reported_once_at_the_later_line(string how, string text, int line)
    {
        var finding = Assert.Single(Compiled(text).Findings, f => f.Severity == Severity.Error);
        Assert.Equal((FindingCatalogue.NameTwice, line), (finding.Kind, finding.Location.Start.Line));
        Assert.NotEmpty(how);
    }

    [Fact]
    public void A_name_already_used_in_another_file_is_reported_with_that_file()
    {
        var findings = Compiled(Like + "add to sky\n  lamp: heart 1, of red\n").Findings;
        var finding = Assert.Single(findings, f => f.Kind == FindingCatalogue.NameTwice);
        Assert.Contains("line 5 of one.card", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Like + "front\n  sky: heart 1, of red\nleave out sky\n")]
    [InlineData(Like + "leave out sky/lamp\nadd to sky\n  lamp: heart 1, of red\n")]
    [InlineData(Head + Twice + $"item 1:\n      {Lamp}    item 2:\n      {Lamp}")]
    [InlineData(Head + "front\n  panel 1 x 1, of red\n    mat, of blue\n    mat2: star 1, of red\n")]
    [InlineData(Head + "part light 1 x 1\n  lamp: star 1, of red\nfront\n  use light\n  use light, top 0\n")]
    public void A_unique_name_is_not_reported(string text) =>
        Assert.DoesNotContain(Compiled(text).Findings, f => f.Severity == Severity.Error);

    [Theory]
    [MemberData(nameof(Repeated))]
    public void Paths_are_unique_even_with_repeated_names(string how, string text, int line)
    {
        Assert.True(HasUniquePaths(text), how);
        Assert.True(line > 0);
    }

    [Fact]
    public void No_two_paths_of_any_card_are_the_same()
    {
        string[] names =
        [
            "star2: star 1", "lamp: star 1", "Lamp: heart 1", "star22: star 1", "star 1", "2 star 1", "lamp2: star 1",
            "mat2: heart 1", "mat +1/8",
        ];
        Gen.Select(Gen.OneOf(names).Array[1, 8], Gen.OneOf(names).Array[1, 4], Gen.Bool).Sample((below, added, onFace) =>
        {
            var sky = "  sky: panel 3 x 3, of blue\n" + string.Concat(below.Select(b => $"    {b}, of red\n"));
            var more = onFace ? "add to front\n" : "add to sky\n";
            var world = new TestWorld().WithText("one.card", Head + "front\n" + sky);
            return HasUniquePaths(Like + more + string.Concat(added.Select(a => $"  {a}, of red\n")), world);
        });
    }

    private static bool HasUniquePaths(string text, TestWorld? world = null) =>
        Compiler.Compile(new SourceText("two.card", text), world ?? World).Card is not { } card
        || SizeList.Of(card).Entries.Select(e => e.Path).GroupBy(p => p).All(g => g.Count() == 1);

    private static Compilation Compiled(string text) => Compiler.Compile(new SourceText("two.card", text), World);
}
