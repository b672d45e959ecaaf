using Xunit;

namespace Sketch.Tests.Planning.Rules;

/// <summary>The rules of those who receive cards: homes and charities publish such lists, and none of them is universal.</summary>
public class RecipientRuleTests
{
    private const string Card = "card \"Gull\"\nbase A2, fold left, of white\nfront\n  sky: panel, showing 1/8, of gulls\n";

    private static PlanRun Plan(string rule, string front = "", string message = "") => PlanRun.Of(
        $"batch \"Lamp day\"\nstash \"shelf.stash\"\nrules \"Care home\"\n  rule \"{rule}\"\nfor \"Cliff ward\", 6 cards, spare 1\n"
            + $"  rules \"Care home\"\nmake 7 of \"gull.card\"\n{(message.Length == 0 ? "" : $"  message \"{message}\"\n")}",
        ("gull.card", Card + front));

    [Theory]
    [InlineData("no glitter", "    star 1, of glitter\n", "glitter")]
    [InlineData("no foil", "    star 1, of gold\n", "gold")]
    [InlineData("no foil", "    line 1/16, along top, of gold\n", "a foil line")]
    [InlineData("no small parts", "    gem 1/8, of red\n", "a gem")]
    [InlineData("no small parts", "    dot 1/8, of red\n", "a dot")]
    [InlineData("no small parts", "    brad 1/4, of red\n", "a brad")]
    [InlineData("no small parts", "    button 1/2, of red\n", "a button")]
    [InlineData("no pins or staples", "    brad 1/4, of red\n", "a brad")]
    [InlineData("no pins", "    brooch-pin: star 1, of navy\n", "brooch-pin")]
    [InlineData("no staples", "    strip 1 x 1/2, of staple-tape\n", "staple-tape")]
    [InlineData("no scent", "    panel 1 x 1, of scented-paper\n", "scented-paper")]
    [InlineData("no date", "    text \"June 2026\"\n", "the words \"June 2026\"")]
    [InlineData("avoid bless, prayer", "    text \"Bless you\"\n", "the words \"Bless you\"")]
    [InlineData("at most 2 mm thick", "    star 1, of navy, raised 2 mm\n", "a thickness")]
    public void A_piece_that_breaks_a_rule_is_a_warning_that_names_card_and_rule(string rule, string piece, string what)
    {
        var finding = Plan(rule, piece).Single("SK725");
        Assert.StartsWith($"\"Gull\" has {what}", finding.Message, StringComparison.Ordinal);
        Assert.EndsWith($"and \"Cliff ward\" asks for: {rule}.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(rule.StartsWith("at most", StringComparison.Ordinal) ? ("day.batch", 7) : ("gull.card", 5),
            (finding.Location.Source.Path, finding.Location.Start.Line));
    }

    [Theory]
    [InlineData("no date", "See you on 3/12/26")]
    [InlineData("no date", "A bright Winter")]
    [InlineData("no address", "Write to 12 Harbour Road")]
    [InlineData("no web address", "See www.example.org")]
    [InlineData("no web address", "keeper@example.org")]
    [InlineData("no telephone number", "Call 01632 960 123")]
    public void A_message_that_breaks_a_rule_is_a_warning_at_its_line(string rule, string message)
    {
        var finding = Plan(rule, message: message).Single("SK725");
        Assert.Equal(("day.batch", 7), (finding.Location.Source.Path, finding.Location.Start.Line));
    }

    [Theory]
    [InlineData("no pins", "    pinstripe: star 1, of navy\n")]
    [InlineData("no staples", "    brad 1/4, of red\n")]
    public void Other_things_keep_the_rule(string rule, string piece) =>
        Assert.DoesNotContain(Plan(rule, piece).Findings, f => f.Code == "SK725");

    private static PlanRun Named(string rule, string message = "Ahoy") => PlanRun.Of(
        "batch \"Day\"\nstash \"shelf.stash\"\nmakers \"Ann Lee\"\nrules \"Home\"\n"
            + $"  rule \"{rule}\"\nfor \"Ward\", 2 cards\n  rules \"Home\"\n  names \"names.csv\"\n"
            + $"make 2 of \"gull.card\"\n  message \"{message}\"\n",
        ("names.csv", "Dora\nEve Hill\n"));

    [Theory]
    [InlineData("first names only")]
    [InlineData("no surname")]
    public void A_surname_in_the_list_of_names_is_reported_at_its_line(string rule)
    {
        var finding = Named(rule).Single("SK725");
        Assert.Equal(("names.csv", 2, 1), (finding.Location.Source.Path, finding.Location.Start.Line, finding.Location.Start.Column));
    }

    [Fact]
    public void A_makers_surname_in_a_message_is_reported() => Assert.Contains(Named("no surname", "With love, Ann Lee").Findings,
        f => f.Message == "\"Gull\" is signed \"Ann Lee\", and \"Ward\" asks for: no surname.");

    [Fact]
    public void A_rule_about_names_is_also_printed_to_tick() => Assert.Contains("[  ] Ward: first names only",
        Named("first names only").Summary.Sections.Single(s => s.Heading == "Rules of those who receive").Sentences);

    [Theory]
    [InlineData("no date", "You may march with 12 keepers")]
    [InlineData("no address", "A good light for 12 ships")]
    [InlineData("no telephone number", "120 steps to the lamp")]
    [InlineData("no web address", "Keep a good light. Always.")]
    [InlineData("avoid lamp", "Lampreys")]
    public void Other_words_keep_the_rule(string rule, string message) =>
        Assert.DoesNotContain(Plan(rule, message: message).Findings, f => f.Code == "SK725");

    [Theory]
    [InlineData("at most 4.25 x 5.5 in", 0)]
    [InlineData("at most 5.5 x 4.25 in", 0)]
    [InlineData("at most 105 x 148 mm", 1)]
    public void The_largest_size_holds_either_way_up(string rule, int broken) =>
        Assert.Equal(broken, Plan(rule).Findings.Count(f => f.Code == "SK725"));

    [Fact]
    public void A_design_for_other_recipients_need_not_keep_the_rule() => Assert.DoesNotContain(PlanRun.Of(
        "batch \"Lamp day\"\nstash \"shelf.stash\"\nrules \"Care home\"\n  rule \"no small parts\"\nfor \"Cliff ward\", 6 cards\n"
            + "  rules \"Care home\"\nfor \"Reading room\", 6 cards\nmake 6 of \"gull.card\"\n  for \"Reading room\"\n",
        ("gull.card", Card + "    gem 1/8, of red\n")).Findings, f => f.Code == "SK725");

    [Fact]
    public void A_rule_that_no_computer_can_check_is_printed_to_tick()
    {
        var section = Plan("flap not glued").Summary.Sections.Single(s => s.Heading == "Rules of those who receive");
        Assert.Contains("what the recipient says takes precedence", section.Sentences[0], StringComparison.Ordinal);
        Assert.Equal("[  ] Cliff ward: flap not glued", section.Sentences[1]);
    }

    [Fact]
    public void A_misspelt_rule_is_a_warning() => Assert.Equal("Did you mean \"no glitter\"?", Plan("no gliter").Single("SK724").Hint);
}
