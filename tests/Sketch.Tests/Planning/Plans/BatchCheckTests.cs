using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Planning.Plans;
using Sketch.Tests.Cli;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Planning.Plans;

/// <summary>Checking a batch reports all that planning it reports, except what depends on the layout of sheets.</summary>
public sealed class BatchCheckTests : IDisposable
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";
    private const string BadCard = "card \"Bad\"\nbase A2, of white\nfront\n  panel, of blue\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    private static ImmutableArray<Finding> Check(string batch, string shelf = PlanRun.Shelf)
    {
        var world = new TestWorld().WithText("gull.card", PlanRun.Card).WithText("shelf.stash", shelf).WithText("bad.card", BadCard);
        return BatchCheck.Of(Compiler.Compile(new SourceText("day.batch", batch), world), world).Findings;
    }

    [Theory]
    [InlineData("make 2 of \"gone.card\"\n", "day.batch", 3, "SK206")]
    [InlineData("make 2 of \"bad.card\"\n", "day.batch", 3, "SK703")]
    [InlineData("make 2 of \"bad.card\"\n", "bad.card", 4, "SK301")]
    [InlineData("make 2 of \"gull.card\"\n  role skyy: gulls\n", "day.batch", 4, "SK704")]
    [InlineData("make 2 of \"gull.card\"\n  role sky: gul\n", "day.batch", 3, "SK710")]
    [InlineData("cut 2 of 1 x 1 from rope\n", "day.batch", 3, "SK710")]
    [InlineData("cut 2 of 13 x 1 from gulls\n", "day.batch", 3, "SK711")]
    [InlineData("", "day.batch", 1, "SK702")]
    public void An_error_in_a_file_that_the_batch_names_is_an_error_of_the_check(string lines, string file, int line, string code) =>
        Assert.Contains(
        Check(Top + lines), f => (f.Location.Source.Path, f.Location.Start.Line, f.Code, f.Severity) == (file, line, code, Severity.Error));

    [Fact]
    public void An_error_in_the_stash_is_an_error_of_the_check() => Assert.Contains(
        Check(Top + "cut 1 of 1 x 1 from gulls\n", PlanRun.Shelf + "paper rope: 12 x 12, 3 sheeets\n"),
        f => (f.Location.Source.Path, f.Location.Start.Line, f.Severity) == ("shelf.stash", 5, Severity.Error));

    [Fact]
    public void Supplies_that_run_short_are_reported() => Assert.Contains(
        Check(Top + "make 3 of \"gull.card\"\n", PlanRun.Shelf + "envelope plain: US A2, 2\n"), f => f.Code == "SK713");

    [Fact]
    public void Too_few_cards_are_reported() =>
        Assert.Contains(Check(Top + "for \"Cliff ward\", 3 cards\nmake 2 of \"gull.card\"\n"), f => f.Code == "SK721");

    [Fact]
    public void A_misspelt_paper_gets_the_nearest_one_of_the_stash() =>
        Assert.Equal("Did you mean gulls?", Assert.Single(Check(Top + "make 2 of \"gull.card\"\n  role sky: guls\n")).Hint);

    [Theory]
    [InlineData("make 2 of \"gul.card\"\n", "Did you mean \"gull.card\"?")]
    [InlineData("make 2 of \"gull\"\n", "Did you mean \"gull.card\"?")]
    [InlineData("make 2 of \"lighthouse.card\"\n",
        "Write the name of a card file in the same folder, such as \"bad.card\" or \"gull.card\".")]
    public void A_missing_card_file_gets_names_in_the_folder(string make, string hint) =>
        Assert.Equal(hint, Assert.Single(Check(Top + make)).Hint);

    [Fact]
    public void A_batch_of_valid_files_has_no_findings() => Assert.Empty(Check(Top + "make 2 of \"gull.card\"\n"));

    [Theory]
    [InlineData("stash shelf.stash")]
    [InlineData("stash: \"shelf.stash\"")]
    [InlineData("Stash shelf")]
    [InlineData("stahs \"shelf.stash\"")]
    public void A_mistake_in_the_line_of_the_stash_is_one_finding(string line) =>
        Assert.Equal(2, Assert.Single(Check($"batch \"Lamp day\"\n{line}\nmake 2 of \"gull.card\"\n")).Location.Start.Line);

    [Fact]
    public void Without_a_stash_the_papers_are_missing() => Assert.Equal(
        "The batch names no stash, so there is no paper called rope.",
        Assert.Single(Check("batch \"Lamp day\"\ncut 2 of 1 x 1 from rope\n")).Message);

    [Fact]
    public void A_missing_stash_is_one_finding() =>
        Assert.Single(Check("batch \"Lamp day\"\nstash \"gone.stash\"\nmake 2 of \"gull.card\"\n"));

    [Theory]
    [InlineData("make 2 of \"gone.card\"\nmake 1 of \"bad.card\"\n")]
    [InlineData("make 2 of \"gull.card\"\n  role skyy: gulls\ncut 2 of 13 x 1 from gulls\n")]
    [InlineData("for \"Cliff ward\", 3 cards\nmake 2 of \"gull.card\"\n")]
    public void Check_and_plan_report_the_same_when_there_is_enough_paper(string lines)
    {
        var planned = PlanRun.Of(Top + lines, ("bad.card", BadCard));
        Assert.Equal(planned.Findings.Select(f => (f.Code, f.Message)), Check(Top + lines).Select(f => (f.Code, f.Message)));
    }

    [Fact]
    public void The_verb_check_reports_the_findings_and_fails()
    {
        _line.File("shelf.stash", PlanRun.Shelf);
        Assert.Equal(1, _line.Run("check", _line.File("day.batch", Top + "make 2 of \"gone.card\"\n"), "--json"));
        var file = Assert.Single(_line.Json.GetProperty("files").EnumerateArray());
        Assert.Equal("SK206", Assert.Single(file.GetProperty("findings").EnumerateArray()).GetProperty("code").GetString());
    }
}
