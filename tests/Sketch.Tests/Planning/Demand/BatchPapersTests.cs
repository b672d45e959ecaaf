using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Planning.Plans;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Planning.Demand;

/// <summary>The cards of a batch are checked in the papers that the batch and its stash give them.</summary>
public class BatchPapersTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";

    private const string Words =
        "card \"Ahoy\"\nbase A2, fold left, of white\nrole sky: cream\nfront\n  strip 3 x 1 \"Ahoy\", of sky\n";

    private const string Shelf =
        "stash \"Shelf\"\npaper night: 12 x 12, 3 sheets, front navy, back cream\ncardstock cream: letter, 9 sheets\n"
        + "cardstock white: letter, 9 sheets\n";

    private static ImmutableArray<Finding> Check(string lines, string card = Words, string shelf = Shelf)
    {
        var world = new TestWorld().WithText("ahoy.card", card).WithText("shelf.stash", shelf);
        return BatchCheck.Of(Compiler.Compile(new SourceText("day.batch", Top + lines), world), world).Findings;
    }

    private static (string, int, string) Place(Finding finding) =>
        (finding.Location.Source.Path, finding.Location.Start.Line, finding.Code);

    [Fact]
    public void Words_too_faint_on_a_paper_of_the_batch_are_reported_at_its_role_line()
    {
        var finding = Assert.Single(Check("make 2 of \"ahoy.card\"\n  role sky: night\n"));
        Assert.Equal(("day.batch", 4, "SK442"), Place(finding));
        Assert.StartsWith("\"Ahoy\" in these papers: “Ahoy” in black", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("Choose another paper for sky, or edit line 5 of \"ahoy.card\".", finding.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_reports_faint_words_too()
    {
        var planned = PlanRun.Of(Top + "make 2 of \"ahoy.card\"\n  role sky: night\n", ("ahoy.card", Words), ("shelf.stash", Shelf));
        Assert.Equal(("day.batch", 4, "SK442"), Place(planned.Single("SK442")));
    }

    [Fact]
    public void Words_too_faint_on_a_paper_of_the_stash_are_reported_at_the_make_line() => Assert.Equal(
        ("day.batch", 3, "SK442"),
        Place(Assert.Single(Check("make 2 of \"ahoy.card\"\n", Words.Replace("sky: cream", "sky: night", StringComparison.Ordinal)))));

    [Fact]
    public void An_ink_of_the_batch_is_checked_as_well() => Assert.Equal(
        ("day.batch", 4, "SK442"),
        Place(Assert.Single(Check(
            "make 2 of \"ahoy.card\"\n  role letters: white\n",
            Words.Replace("front", "role letters: navy\nfront", StringComparison.Ordinal)
                .Replace("\", of sky", "\", of sky, ink letters", StringComparison.Ordinal)))));

    [Fact]
    public void Words_made_legible_by_the_papers_of_the_batch_are_not_reported() => Assert.Empty(Check(
        "make 2 of \"ahoy.card\"\n  role sky: cream\n", Words.Replace("sky: cream", "sky: navy", StringComparison.Ordinal)));

    [Fact]
    public void Words_too_faint_in_the_papers_of_the_card_are_reported_once_and_in_the_card() => Assert.Equal(
        ("ahoy.card", 5, "SK442"),
        Place(Assert.Single(Check(
            "make 2 of \"ahoy.card\"\nmake 1 of \"ahoy.card\"\n",
            Words.Replace("sky: cream", "sky: navy", StringComparison.Ordinal),
            Shelf + "cardstock navy: letter, 9 sheets\n"))));

    [Fact]
    public void Words_on_an_unknown_paper_are_not_checked() => Assert.Equal(
        ["SK710"], Check("make 2 of \"ahoy.card\"\n  role sky: fog\n").Select(f => f.Code));

    [Fact]
    public void The_same_colours_in_a_card_and_a_batch_are_one_paper()
    {
        var card = Words.Replace("sky: cream", "sky: dots navy cream", StringComparison.Ordinal)
            .Replace("\"Ahoy\", of", "of", StringComparison.Ordinal).Replace("1 of", "1, of", StringComparison.Ordinal);
        var planned = PlanRun.Of(
            Top + "make 2 of \"ahoy.card\"\nmake 2 of \"ahoy.card\"\n  role sky: dots navy cream\n",
            ("ahoy.card", card), ("shelf.stash", Shelf));
        Assert.Equal(4, Assert.Single(planned.Paper("dots").Order.Pieces.GroupBy(p => p.Role)).Sum(p => p.Count));
    }

    [Theory]
    [InlineData("make 0 of \"ahoy.card\"\ncut 1 of 1 x 1 from night\n")]
    [InlineData("make 0 of \"ahoy.card\"\n  role sky: fog\ncut 1 of 1 x 1 from night\n")]
    public void A_line_with_an_invalid_count_is_not_planned(string lines)
    {
        var planned = PlanRun.Of(Top + lines, ("ahoy.card", Words), ("shelf.stash", Shelf));
        Assert.Equal("SK119", Assert.Single(planned.Findings).Code);
        Assert.Equal("night", Assert.Single(planned.Plan!.Papers).Order.Paper);
    }
}
