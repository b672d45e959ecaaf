using Sketch.Planning.Demand;
using Xunit;

namespace Sketch.Tests.Planning.Demand;

/// <summary>Which message goes into which card, and what is reported of it.</summary>
public sealed class MessageListTests
{
    private const string Head = "batch \"Day\"\nstash \"shelf.stash\"\n";
    private const string Lamp = "card \"Lamp\"\nbase A2, of white\nmessage \"The lamp is lit\"\n";

    private static PlanRun Run(string batch, string names = "Ann\nBen\n") =>
        PlanRun.Of(Head + batch, ("lamp.card", Lamp), ("names.csv", names));

    private static List<string> Messages(PlanRun run) => [.. MessageList.Of(run.Files!).Select(w =>
        $"{w.Cards} {w.Design.Card.Title} {w.Person ?? w.For?.Whom ?? "-"}: {w.Message}")];

    [Fact]
    public void The_card_gives_the_message() => Assert.Equal(["3 Lamp -: The lamp is lit"], Messages(Run("make 3 of \"lamp.card\"\n")));

    [Fact]
    public void The_make_line_gives_another_one() =>
        Assert.Equal(["3 Lamp -: Ahoy"], Messages(Run("make 3 of \"lamp.card\"\n  message \"Ahoy\"\n")));

    [Fact]
    public void A_recipient_may_have_its_own() => Assert.Equal(
        ["2 Lamp Cliff ward: Keep watch", "1 Lamp Reading room: Ahoy", "1 Lamp -: Ahoy"],
        Messages(Run("for \"Cliff ward\", 2 cards\n  message \"Keep watch\"\nfor \"Reading room\", 1 card\nspare 1\n"
            + "make 4 of \"lamp.card\"\n  message \"Ahoy\"\n")));

    [Fact]
    public void Each_person_of_a_list_gets_a_card_with_the_name() => Assert.Equal(
        ["1 Lamp Ann: Dear Ann", "1 Lamp Ben: Fair winds, Ben"],
        Messages(Run("for \"Cliff ward\", 2 cards\n  names \"names.csv\"\n  message \"Dear {name}\"\nmake 2 of \"lamp.card\"\n",
            "name,message\nAnn\nBen,\"Fair winds, {name}\"\n")));

    [Fact]
    public void Designs_for_one_recipient_alone_are_not_given_to_others() => Assert.Equal(
        ["2 Gull Cliff ward: B", "2 Lamp Reading room: A"],
        Messages(Run("for \"Cliff ward\", 2 cards\nfor \"Reading room\", 2 cards\nmake 2 of \"gull.card\"\n  message \"B\"\n"
            + "make 2 of \"lamp.card\"\n  message \"A\"\n  for \"Reading room\"\n")));

    [Fact]
    public void Each_of_two_makers_writes_her_share() => Assert.Equal(["2 Lamp Cliff ward: The lamp is lit"],
        Messages(Run("for \"Cliff ward\", 4 cards\nmakers 2\nmake 2 of \"lamp.card\"\n")));

    [Fact]
    public void A_person_keeps_the_strip_even_if_there_are_too_few_cards() =>
        Assert.Equal(2, Messages(Run("for \"Cliff ward\", 2 cards\n  names \"names.csv\"\nmake 1 of \"lamp.card\"\n")).Count);

    [Fact]
    public void Lettering_of_the_card_holds_for_the_message_of_a_recipient()
    {
        var run = PlanRun.Of(Head + "for \"Cliff ward\", 1 card\n  message \"Ahoy\"\nmake 1 of \"lamp.card\"\n",
            ("lamp.card", Lamp.Replace("lit\"", "lit\", letters 1/4, by hand", StringComparison.Ordinal)));
        var message = Assert.Single(MessageList.Of(run.Files!)).Message;
        Assert.Equal((true, 6.35), (message.IsByHand, message.Letters!.Value.Millimetres));
    }

    [Fact]
    public void More_names_than_cards_are_reported()
    {
        var found = Run("for \"Cliff ward\", 1 card\n  names \"names.csv\"\nmake 1 of \"lamp.card\"\n").Single("SK726");
        Assert.Contains("2 names", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_list_is_reported_at_its_name() => Assert.Equal(4,
        Run("for \"Cliff ward\", 1 card\n  names \"lost.csv\"\nmake 1 of \"lamp.card\"\n").Single("SK206").Location.Start.Line);

    [Fact]
    public void A_place_for_a_name_without_names_is_reported() => Assert.Equal(4,
        Run("for \"Cliff ward\", 1 card\n  message \"Dear {name}\"\nmake 1 of \"lamp.card\"\n").Single("SK727").Location.Start.Line);

    [Fact]
    public void A_message_that_does_not_fit_is_reported_once_for_all_people()
    {
        var words = string.Join(' ', Enumerable.Repeat("calm seas and a good light", 90));
        var run = Run("for \"Cliff ward\", 2 cards\n  names \"names.csv\"\n"
            + $"  message \"Dear {{name}} {words}\"\nmake 2 of \"lamp.card\"\n");
        Assert.Equal(5, run.Single("SK446").Location.Start.Line);
    }
}
