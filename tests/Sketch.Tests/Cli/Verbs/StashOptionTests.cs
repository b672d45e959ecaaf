using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class StashOptionTests : IDisposable
{
    private const string Card = "card \"Card\"\nbase A2, fold left, of white\nrole sky: gulls, front\nfront\n  panel 2 x 2, of sky\n";
    private const string Stash = "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front #123456, back #654321\n";

    private readonly CommandLineRun _run = new();

    private string Draw(params string[] more)
    {
        _run.Run(["draw", _run.File("a.card", Card), "--out", _run.InFolder("out"), "--stash", _run.File("a.stash", Stash), .. more]);
        return File.ReadAllText(_run.InFolder("out/a-front.svg"));
    }

    [Fact]
    public void A_card_is_drawn_in_the_papers_of_the_shelf() => Assert.Contains("#123456", Draw(), StringComparison.Ordinal);

    [Fact]
    public void A_choice_puts_the_back_of_a_paper_into_a_role() =>
        Assert.Contains("#654321", Draw("--paper", "sky=gulls/back"), StringComparison.Ordinal);

    [Theory]
    [InlineData("sky=guls", "Did you mean \"gulls\"?")]
    [InlineData("skye=gulls", "Did you mean \"sky\"?")]
    [InlineData("sky:gulls", "ROLE=PAPER")]
    public void A_choice_that_means_nothing_is_wrong_usage_and_gets_a_hint(string choice, string hint)
    {
        var status = _run.Run("draw", _run.File("a.card", Card), "--out", _run.InFolder("out"), "--stash", _run.File("a.stash", Stash),
            "--paper", choice);

        Assert.Equal((2, true), (status, _run.Error.Contains(hint, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_stash_with_errors_draws_nothing()
    {
        var status = _run.Run("draw", _run.File("a.card", Card), "--out", _run.InFolder("out"), "--stash",
            _run.File("a.stash", Stash + "paper gulls: 12 x 12, 3 sheets\n"));

        Assert.Equal((1, false), (status, Directory.Exists(_run.InFolder("out"))));
    }

    [Fact]
    public void Check_reports_the_findings_of_a_stash()
    {
        var status = _run.Run("check", "--json", _run.File("a.stash", Stash + "paper terns: 12 x 12\n"));

        Assert.Equal(
            (1, "SK112"),
            (status, _run.Json.GetProperty("files")[0].GetProperty("findings")[0].GetProperty("code").GetString()));
    }

    [Fact]
    public void A_card_is_no_shelf() =>
        Assert.Equal(2, _run.Run("draw", _run.File("a.card", Card), "--out", _run.InFolder("out"), "--stash", _run.InFolder("a.card")));

    public void Dispose() => _run.Dispose();
}
