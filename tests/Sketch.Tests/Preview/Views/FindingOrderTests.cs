using Xunit;

namespace Sketch.Tests.Preview.Views;

/// <summary>The page lists the most severe findings first.</summary>
public sealed class FindingOrderTests : OnOpenedPage
{
    private const string NoteThenWarningThenErrors = """
        card "Lamp"
        base A2, fold left, of white
        front
          low: panel 2 x 2, left 1/4, top 1/4, of navy
            star 1, right -1/2, of cream
          wide: panel 3 x 1, left 2, bottom 1/4, of navy
          lost: star 1 1/2, rigth 1, of cream
          gone: star 1 1/2, rigth 2, of cream

        """;

    [Fact]
    public async Task Errors_come_before_warnings_and_warnings_before_notes_each_by_line()
    {
        var (_, json) = await Page.Ask(Page.See(NoteThenWarningThenErrors));
        var found = json.GetProperty("findings").EnumerateArray()
            .Select(f => (Severity: f.GetProperty("severity").GetString(), Line: f.GetProperty("line").GetInt32())).ToList();
        Assert.Equal(["error", "warning", "note"], found.Select(f => f.Severity).Distinct());
        Assert.All(found.GroupBy(f => f.Severity), same => Assert.Equal(same.Select(f => f.Line).Order(), same.Select(f => f.Line)));
    }

    [Fact]
    public async Task Findings_in_the_text_itself_come_before_those_of_the_same_severity_in_other_files()
    {
        Page.Write("a.card", "card \"Broken\"\nbase A2, fold left, of white\nfront\n  star 1, rigth 1, of cream\n");
        const string Batch = "batch \"Run\"\nfor \"Cliff ward\", 2 cards\nmake 2 of \"a.card\"\nmake 2 of\n";
        var (_, json) = await Page.Ask(Page.See(Batch, "run.batch"));
        var errors = json.GetProperty("findings").EnumerateArray().Where(f => f.GetProperty("severity").GetString() == "error");
        Assert.Equal([true, false], errors.Select(f => f.GetProperty("here").GetBoolean()).Distinct());
    }
}
