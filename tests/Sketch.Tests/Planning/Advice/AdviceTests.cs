using Sketch.Planning.Advice;
using Xunit;

namespace Sketch.Tests.Planning.Advice;

public class AdviceTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";
    private static readonly string OneSheet = PlanRun.Shelf.Replace("3 sheets", "1 sheet", StringComparison.Ordinal);

    // By hand: 12 x 12 holds four of 4 1/8 x 5 3/8 and six of 4 x 5 1/4.
    [Fact]
    public void Trimming_an_eighth_gives_six_instead_of_four_from_a_sheet()
    {
        var run = PlanRun.Of($"{Top}cut 6 of 4 1/8 x 5 3/8 from gulls\n", ("shelf.stash", OneSheet));
        Assert.Equal("Write 4 x 5 1/4 in line 3 (cut 4 x 5 1/4 instead of 4 1/8 x 5 3/8): 1 sheet of gulls instead of 2.",
            run.Plan!.Advice.Suggestions[0].Text);
    }

    // By hand: 12 x 12 holds four mats of 4 1/16 x 5 5/16 and six of 3 15/16 x 5 3/16. A border under 1/16 is hard to cut.
    [Theory]
    [InlineData("3 15/16 x 5 3/16", "1/16", null)]
    [InlineData("3 9/16 x 4 13/16", "1/4", "change sky/mat: border 3/16")]
    public void A_mat_is_trimmed_by_its_border_as_long_as_that_can_be_cut(string panel, string border, string? line)
    {
        var card = "card \"Gull\"\nbase 5 x 5 1/2, of white\nrole sky: gulls\nfront\n"
            + $"  sky: panel {panel}, of navy\n    mat border {border}, of sky\n";
        Assert.Equal(line is null ? null : $"Write {line} under Gull in line 3 (cut 3 15/16 x 5 3/16 instead of 4 1/16 x 5 5/16): "
            + "1 sheet of gulls instead of 2.",
            Proposed("make 6 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", OneSheet))
                .FirstOrDefault(t => t.Contains("(cut ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_panel_that_shows_what_it_lies_on_is_trimmed_by_showing_more() => Assert.Contains(
        "Write change sky: showing 3/16 under Gull in line 3 (cut 3 15/16 x 5 3/16 instead of 4 1/16 x 5 5/16): "
            + "1 sheet of gulls instead of 2.",
        Proposed("make 6 of \"gull.card\"\n", ("shelf.stash", OneSheet), ("gull.card", PlanRun.Card
            .Replace("base A2", "base 4 5/16 x 5 9/16", StringComparison.Ordinal)
            .Replace(", of sky\n    mat", ", of deep\n    mat", StringComparison.Ordinal)
            .Replace("mat +1/8, of deep", "mat +1/8, of sky", StringComparison.Ordinal))));

    [Fact]
    public void Typing_what_is_proposed_has_the_stated_effect()
    {
        var card = PlanRun.Card.Replace("base A2", "base 4 1/2 x 5 3/4", StringComparison.Ordinal);
        var proposed = PlanRun.Of($"{Top}make 14 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", OneSheet))
            .Plan!.Advice.Suggestions
            .First(s => s.Change.StartsWith("Write change ", StringComparison.Ordinal));
        var line = proposed.Change["Write ".Length..proposed.Change.IndexOf(" under ", StringComparison.Ordinal)];
        var typed = PlanRun.Of($"{Top}make 14 of \"gull.card\"\n  {line}\n", ("gull.card", card), ("shelf.stash", OneSheet));
        Assert.Equal(proposed.After, typed.Paper("gulls").Plan.Sheets);
    }

    [Fact]
    public void Words_are_not_trimmed()
    {
        const string card = "card \"Gull\"\nbase A2, of white\nrole sky: gulls\nfront\n  name: word 4 wide \"Ahoy\", of sky\n";
        Assert.DoesNotContain(Proposed("make 60 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", OneSheet)),
            t => t.Contains("change name", StringComparison.Ordinal));
    }

    [Fact]
    public void Changes_that_are_not_enough_alone_are_proposed_together()
    {
        var card = PlanRun.Card.Replace("base A2", "base 4 5/16 x 5 9/16", StringComparison.Ordinal)
            .Replace(", of sky\n", ", of deep\n", StringComparison.Ordinal)
            .Replace("+1/8, of deep", "+1/8, of sky", StringComparison.Ordinal);
        const string lines = "make 20 of \"gull.card\"\ncut 7 of 4 1/8 x 5 3/8 from gulls\n";
        var first = PlanRun.Of(Top + lines, ("gull.card", card), ("shelf.stash", OneSheet)).Plan!.Advice.Suggestions[0];
        Assert.Contains(", and ", first.Change, StringComparison.Ordinal);
        Assert.False(first.IsEnough);
    }

    // By hand: 8 1/4 x 8 1/4 holds one of 4 1/4 x 5 and two of 4 x 4 3/4, which would leave the edge of the front bare.
    [Fact]
    public void A_strip_from_edge_to_edge_is_not_trimmed()
    {
        const string card = "card \"Gull\"\nbase A2, fold left, of white\nrole sky: gulls\nfront\n"
            + "  band: strip full x 5, top 1/4, of sky\n";
        var shelf = OneSheet.Replace("12 x 12", "8 1/4 x 8 1/4", StringComparison.Ordinal);
        var advice = PlanRun.Of($"{Top}make 2 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", shelf)).Plan!.Advice;
        Assert.DoesNotContain(advice.Suggestions, s => s.Text.Contains("(cut ", StringComparison.Ordinal));
    }

    [Fact]
    public void At_least_three_changes_are_proposed_where_there_are_three()
    {
        var card = PlanRun.Card.Replace("base A2", "base 4 1/2 x 5 3/4", StringComparison.Ordinal)
            .Replace("mat +1/8", "mat +1/16", StringComparison.Ordinal);
        var run = PlanRun.Of($"{Top}make 6 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", OneSheet));
        Assert.True(run.Plan!.Advice.Suggestions.Length >= 3, string.Join('\n', run.Plan.Advice.Suggestions.Select(s => s.Text)));
    }

    [Fact]
    public void Applying_a_proposal_has_the_stated_effect()
    {
        var short1 = PlanRun.Of($"{Top}make 9 of \"gull.card\"\n", ("shelf.stash", OneSheet))
            .Plan!.Advice.Suggestions.Single(s => s.Text.StartsWith("Make ", StringComparison.Ordinal));
        Assert.StartsWith("Make 3 fewer of Gull", short1.Text, StringComparison.Ordinal);
        Assert.Equal(short1.After, PlanRun.Of($"{Top}make 6 of \"gull.card\"\n").Paper("gulls").Plan.Sheets);
    }

    [Fact]
    public void Another_paper_is_proposed_in_the_spelling_of_the_file()
    {
        var shelf = OneSheet + "paper rope: 12 x 12, 4 sheets\n";
        var texts = PlanRun.Of($"{Top}make 9 of \"gull.card\"\n", ("shelf.stash", shelf)).Plan!.Advice.Suggestions.Select(s => s.Text);
        Assert.Contains("Write role sky: rope under Gull in line 3; rope then takes 2 sheets: 0 sheets of gulls instead of 2.", texts);
    }

    [Fact]
    public void The_cards_that_the_stash_is_enough_for_are_counted()
    {
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\nmake 4 of \"plain.card\"\n", ("shelf.stash", OneSheet),
            ("plain.card", "card \"Plain\"\nbase A2, of white\n"));
        Assert.Equal([6, 4], run.Plan!.Advice.Makeable.Select(m => m.Count));
    }

    [Fact]
    public void A_shortage_for_loose_pieces_does_not_reduce_the_count_of_cards()
    {
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\ncut 3 of 4 x 5 from gull\n", ("shelf.stash", OneSheet));
        Assert.Equal(6, Assert.Single(run.Plan!.Advice.Makeable).Count);
    }

    [Fact]
    public void Nothing_is_proposed_when_nothing_is_short()
    {
        var advice = PlanRun.Of($"{Top}make 2 of \"gull.card\"\n").Plan!.Advice;
        Assert.Equal((0, 0), (advice.Makeable.Length, advice.Suggestions.Length));
    }

    [Fact]
    public void The_cost_of_a_card_includes_its_share_of_each_sheet()
    {
        // Six fronts take one sheet of gulls at 1.20, six bases three sheets of white at 0.10; navy has no price.
        var shelf = PlanRun.Shelf.Replace("3 sheets", "3 sheets, price 1.20", StringComparison.Ordinal)
            .Replace("any sheets", "any sheets, price 0.10", StringComparison.Ordinal);
        var (costs, unpriced) = CardCost.Of(PlanRun.Of($"{Top}make 6 of \"gull.card\"\n", ("shelf.stash", shelf)).Plan!);
        Assert.Equal((0.25m, "navy"), (Math.Round(costs[0].Amount, 4), unpriced[0]));
    }

    private static IEnumerable<string> Proposed(string lines, params (string, string)[] files) =>
        PlanRun.Of(Top + lines, files).Plan!.Advice.Suggestions.Select(s => s.Text);

    [Theory]
    [InlineData("line 1/16, along top, of light")]
    [InlineData("strip 1 x 1/16, of light")]
    public void Only_foil_replaces_foil(string piece)
    {
        var card = PlanRun.Card.Replace("role sky", "role light: glint\nrole sky", StringComparison.Ordinal) + $"    {piece}\n";
        var shelf = PlanRun.Shelf + "cardstock glint: letter, 0 sheets, front foil #cfa646\n";
        Assert.DoesNotContain(
            Proposed("make 9 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", shelf)), t =>
                t.Contains("role light", StringComparison.Ordinal));
    }

    [Fact]
    public void Foil_that_the_stash_lacks_is_not_replaced_by_cardstock()
    {
        var card = PlanRun.Card.Replace("role sky", "role light: foil gold\nrole sky", StringComparison.Ordinal)
            + "    strip 1 x 1/16, of light\n";
        Assert.Empty(Proposed("make 9 of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", PlanRun.Shelf)));
    }

    [Fact]
    public void No_piece_is_moved_to_the_paper_that_it_lies_on()
    {
        var shelf = PlanRun.Shelf.Replace("navy: letter, 25 sheets", "navy: letter, 0 sheets", StringComparison.Ordinal);
        Assert.DoesNotContain(
            Proposed("make 2 of \"gull.card\"\n", ("shelf.stash", shelf)), t => t.Contains("role deep: white", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(9, false)]
    [InlineData(12, false)]
    [InlineData(8, false)]
    [InlineData(6, true)]
    public void Fewer_cards_are_proposed_only_if_they_are_enough_for_the_recipients(int needed, bool proposed)
    {
        var texts = Proposed($"for \"Cliff ward\", {needed} cards\nmake 9 of \"gull.card\"\n", ("shelf.stash", OneSheet));
        Assert.Equal(proposed, texts.Any(t => t.StartsWith("Make ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(12, "Buy more.")]
    [InlineData(11, "Buy more, or make fewer of the cards that use it.")]
    public void Buying_supplies_is_proposed_if_every_card_is_needed(int needed, string hint)
    {
        var shelf = PlanRun.Shelf + "envelope plain: US A2, 5\n";
        var run = PlanRun.Of($"{Top}for \"Cliff ward\", {needed} cards\nmake 12 of \"gull.card\"\n", ("shelf.stash", shelf));
        Assert.Equal(hint, run.Single("SK713").Hint);
    }
}
