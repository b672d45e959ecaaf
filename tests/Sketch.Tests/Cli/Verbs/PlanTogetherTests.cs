using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

/// <summary>Several batches planned together.</summary>
public sealed class PlanTogetherTests : IDisposable
{
    private readonly CommandLineRun _line = new();
    private readonly string _spring;
    private readonly string _summer;

    public PlanTogetherTests()
    {
        _line.File("shelf.stash", PlanRun.Shelf);
        _line.File("gull.card", PlanRun.Card);
        _spring = Batch("spring", "make 3 of \"gull.card\"\nfor \"Ward\", 3 cards\n");
        _summer = Batch("summer", "make 2 of \"gull.card\"\nfor \"Ward\", 3 cards\n");
    }

    public void Dispose() => _line.Dispose();

    private string Batch(string name, string text) => _line.File($"{name}.batch", $"batch \"{name}\"\nstash \"shelf.stash\"\n{text}");

    private int Plan(params string[] arguments) => _line.Run(TestContext.Current.CancellationToken, ["plan", .. arguments]);

    private int Sheets(params string[] batches)
    {
        Plan([.. batches, "--json"]);
        return _line.Json.GetProperty("papers").EnumerateArray().Sum(p => p.GetProperty("sheets").GetInt32());
    }

    [Fact]
    public void They_take_no_more_sheets_than_apart()
    {
        Assert.True(Sheets(_spring, _summer) < Sheets(_spring) + Sheets(_summer));
        Plan(_spring, _summer, "--json");
        Assert.Equal(("spring and summer", 5), (_line.Json.GetProperty("batch").GetString(), _line.Json.GetProperty("cards").GetInt32()));
    }

    [Fact]
    public void Each_is_checked_for_its_own_recipients()
    {
        Plan(_spring, _summer);
        Assert.Contains("summer.batch:3:1: warning SK721", _line.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("spring.batch:3:1: warning", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_in_a_card_of_both_is_reported_once()
    {
        _line.File("gull.card", PlanRun.Card + "  panel 9 x 9, of navy\n");
        Plan(_spring, _summer);
        Assert.Single(_line.Error.Split('\n'), l => l.Contains("gull.card:8:3: warning SK401", StringComparison.Ordinal));
    }

    [Fact]
    public void The_files_have_both_names()
    {
        Plan(_spring, _summer, "--out", _line.InFolder("plan"));
        Assert.True(File.Exists(_line.InFolder(Path.Combine("plan", "spring-summer.pdf"))));
    }

    [Theory]
    [InlineData("units mm\nmake 1 of \"gull.card\"\n", "units")]
    [InlineData("make 1 of \"gull.card\"\n", "stashes")]
    public void Batches_that_cannot_be_cut_together_are_wrong_usage(string text, string what)
    {
        var other = what == "units" ? Batch("other", text) : _line.File("other.batch", "batch \"other\"\n" + text);
        Assert.Equal(2, Plan(_spring, other));
        Assert.Contains($"have different {what}", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_batch_is_an_error_and_the_others_are_planned()
    {
        Assert.Equal(1, Plan(_spring, _line.InFolder("gull.card")));
        Assert.Contains("spring", _line.Output, StringComparison.Ordinal);
    }
}
