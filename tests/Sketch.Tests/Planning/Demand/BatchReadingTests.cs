using Xunit;

namespace Sketch.Tests.Planning.Demand;

public class BatchReadingTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";

    [Theory]
    [InlineData("make 2 of \"gull.card\"\n  role skyy: gulls\n", "SK704", 4, 8, "Did you mean sky?")]
    [InlineData("make 2 of \"gull.card\"\nrole sky: gulls\n", "SK115", 4, 1, "Indent it under its make line.")]
    [InlineData("make two of \"gull.card\"\n", "SK112", 3, 6, "Write 2, in digits.")]
    [InlineData("make 2 of \"gone.card\"\n", "SK206", 3, 11, "Write the name of a card file in the same folder, "
        + "such as \"bad.card\" or \"crowd.card\" or \"gull.card\".")]
    [InlineData("make 2 of \"gul.card\"\n", "SK206", 3, 11, "Did you mean \"gull.card\"?")]
    [InlineData("cut 3 of 2 x 2 from any offcut\n", "SK115", 3, 21,
        "Name their paper, as in from gulls; its offcuts are cut before a new sheet.")]
    [InlineData("make 2 of \"shelf.stash\"\n", "SK206", 3, 11, "Write the name of a card file; it begins with card \"…\".")]
    [InlineData("make 2 of \"day.batch\"\n", "SK207", 3, 11, "Write the name of a card file.")]
    [InlineData("make 2 of \"bad.card\"\n", "SK703", 3, 11, "Fix the errors in that file first.")]
    [InlineData("make 0 of \"gull.card\"\n", "SK119", 3, 6, "Write make 12 of \"fair-winds.card\".")]
    [InlineData("make 99999999 of \"gull.card\"\n", "SK119", 3, 6, "Write make 12 of \"fair-winds.card\".")]
    [InlineData("cut 3 of 4 x full from gulls\n", "SK118", 3, 10, "Write cut 12 of 4 x 5 1/4 from gulls.")]
    [InlineData("for \"Cliff ward\"\ncut 1 of 1 x 1 from gulls\n", "SK112", 3, 1, "Write for \"Cliff ward\", 24 cards.")]
    [InlineData("base A2\ncut 1 of 1 x 1 from gulls\n", "SK115", 3, 1,
        "A batch has lines such as stash \"museum.stash\", for \"Cliff ward\", 24 cards, make 12 of \"fair-winds.card\" and cut 12 of "
            + "4 x 5 1/4 from gulls.")]
    [InlineData("makers 2\nmakers 3\ncut 1 of 1 x 1 from gulls\n", "SK117", 4, 1, "Remove one of the two lines.")]
    [InlineData("cut 20001 of 1 x 1 from gulls\n", "SK714", 3, 1,
        "Write cut 20000 in place of cut 20001, and put the rest into another batch.")]
    [InlineData("cut 20000 of 1 x 1 from gulls\ncut 1 of 1 x 1 from gulls\n", "SK714", 4, 1, "Put this line into another batch.")]
    [InlineData("make 10000 of \"gull.card\"\n", "SK714", 3, 1, "Write make 6666 of \"gull.card\", and put the rest into another batch.")]
    [InlineData("make 50000 of \"crowd.card\"\n", "SK703", 3, 15, "Make the piece larger in that file.")]
    [InlineData("cut 100000 of 0.001 mm x 0.001 mm from gulls\n", "SK715", 3, 1, "Make each side at least 1/32.")]
    [InlineData("", "SK702", 1, 1, "Add a line make 12 of \"fair-winds.card\", or cut 12 of 4 x 5 1/4 from gulls.")]
    public void A_mistake_is_reported_at_its_position(string lines, string code, int line, int column, string hint)
    {
        var finding = PlanRun.Of(Top + lines, ("bad.card", "card \"Bad\"\nbase A2, of white\nfront\n  panel, of blue\n"),
            ("crowd.card", "card \"Crowd\"\nbase A2, of white\nfront\n  9 panel 1/64 x 1/64, in a grid 3 across, gap 1/16, of blue\n"))
                .Single(code);
        Assert.Equal(("day.batch", line, column, hint),
            (finding.Location.Source.Path, finding.Location.Start.Line, finding.Location.Start.Column, finding.Hint));
    }

    [Theory]
    [InlineData(200, 0)]
    [InlineData(201, 1)]
    public void The_two_hundred_and_first_size_of_loose_pieces_is_reported(int sizes, int reported)
    {
        // No piece fits its sheet, so planning takes no time; the last line repeats a size.
        var lines = string.Concat(Enumerable.Range(0, sizes).Append(0).Select(i => $"cut 1 of {20 + i} x 20 from gulls\n"));
        var found = PlanRun.Of(Top + lines).Findings.Where(f => f.Code == "SK714").ToList();
        Assert.Equal(reported, found.Count);
        Assert.All(found, f => Assert.Equal((203, "Put this line into another batch."), (f.Location.Start.Line, f.Hint)));
    }

    [Fact]
    public void The_fix_for_a_misspelt_file_is_the_nearest_name_in_the_folder() =>
        Assert.Equal("\"gull.card\"", PlanRun.Of($"{Top}make 2 of \"gul.card\"\n").Single("SK206").Replacement);

    [Fact]
    public void Any_offcut_for_loose_pieces_is_one_finding() =>
        Assert.Single(PlanRun.Of($"{Top}cut 3 of 2 x 2 from any offcut\n").Findings);

    [Theory]
    [InlineData("make 0 of \"gull.card\"\n")]
    [InlineData("make 9999999 of \"gull.card\"\n")]
    [InlineData("cut 0 of 4 x 4 from gulls\n")]
    public void An_invalid_count_is_not_planned(string line)
    {
        var plan = PlanRun.Of($"{Top}{line}make 2 of \"gull.card\"\n").Plan!;
        Assert.Equal((3, 2L), (plan.Papers.Length, plan.Cards));
    }

    [Fact]
    public void Cards_left_out_for_errors_do_not_count()
    {
        var run = PlanRun.Of($"{Top}make 3 of \"gone.card\"\nmake 5 of \"bad.card\"\nmake 2 of \"gull.card\"\n",
            ("bad.card", "card \"Bad\"\nbase A2, of white\nfront\n  panel, of blue\n"));
        var cards = run.Summary.Sections.Single(s => s.Heading == "Cards");
        Assert.Equal(("The designs make 2.", 1), (cards.Sentences[^1], cards.Table!.Rows.Length));
    }

    [Fact]
    public void Cards_left_out_for_errors_are_not_also_reported_as_missing() =>
        Assert.DoesNotContain(PlanRun.Of($"{Top}for \"Cliff ward\", 5 cards\nmake 5 of \"gone.card\"\n")
            .Findings, f => f.Code is "SK721" or "SK730");

    [Fact]
    public void A_plan_reports_cards_left_out_for_errors_first()
    {
        var sections = PlanRun.Of($"{Top}make 4 of \"gone.card\"\nmake 2 of \"gull.card\"\n").Summary.Sections;
        Assert.Equal("Left out because the card or its line has errors: gone.card (4 cards). Fix it and plan again.",
            Assert.Single(sections[0].Sentences));
    }

    [Fact]
    public void With_cards_left_out_the_paper_is_reported_as_enough_for_the_others()
    {
        var sections = PlanRun.Of($"{Top}make 4 of \"gone.card\"\nmake 2 of \"gull.card\"\n").Summary.Sections;
        Assert.Equal("The paper is enough for what is in this plan.", sections.Single(s => s.Heading == "Paper").Sentences[0]);
    }

    [Theory]
    [InlineData("make 4 of \"gone.card\"\n")]
    [InlineData("make 0 of \"gull.card\"\n")]
    [InlineData("")]
    public void There_is_no_plan_when_nothing_can_be_made(string lines)
    {
        var run = PlanRun.Of(Top + lines);
        Assert.Equal((null, "Lamp day"), (run.Plan, run.Json.GetProperty("batch").GetString()));
    }

    [Fact]
    public void Loose_pieces_are_planned_even_when_every_card_is_left_out() =>
        Assert.Single(PlanRun.Of($"{Top}make 4 of \"gone.card\"\ncut 1 of 1 x 1 from gulls\n").Plan!.Papers);

    [Fact]
    public void The_findings_of_a_card_are_reported_in_its_own_file()
    {
        var run = PlanRun.Of($"{Top}make 2 of \"bad.card\"\n", ("bad.card", "card \"Bad\"\nbase A2, of white\nfront\n  panel, of blue\n"));
        Assert.Contains(run.Findings, f => f.Location.Source.Path == "bad.card" && f.Location.Start.Line == 4);
    }

    [Fact]
    public void The_findings_of_a_card_made_twice_are_reported_once()
    {
        var card = PlanRun.Card.Replace("of deep", "of depe", StringComparison.Ordinal);
        var run = PlanRun.Of($"{Top}make 2 of \"gull.card\"\nmake 3 of \"gull.card\"\n", ("gull.card", card));
        Assert.Single(run.Findings, f => f.Code == "SK210");
    }

    [Fact]
    public void An_unknown_word_for_a_paper_is_an_error_in_a_plan()
    {
        var card = PlanRun.Card.Replace("of deep", "of depe", StringComparison.Ordinal);
        Assert.Contains("depe", PlanRun.Of($"{Top}make 2 of \"gull.card\"\n", ("gull.card", card)).Single("SK705")
            .Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_too_small_to_cut_is_reported_in_its_card()
    {
        var finding = PlanRun.Of(
            $"{Top}make 2 of \"dot.card\"\n", ("dot.card", "card \"Dot\"\nbase A2, of white\nfront\n  panel 1/64 x 1/64, of blue\n"))
                .Single("SK715");
        Assert.Equal(("dot.card", 4), (finding.Location.Source.Path, finding.Location.Start.Line));
    }
}
