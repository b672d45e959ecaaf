using Sketch.Batches;
using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Batches;

/// <summary>Who of several makers makes what.</summary>
public sealed class NamedMakersTests
{
    private const string Two = """
        batch "Day"
        stash "shelf.stash"
        makers "Ann" "Beth"
        for "Cliff ward", 90 cards
        for "Reading room", 6 cards, made by "Ann"
        make 45 of "gull.card"
        make 6 of "gull.card", made by "Ann"
          role sky: navy

        """;

    private static Batch Read(string batch) => PlanRun.Of(batch).Files!.Batch;

    [Fact]
    public void A_recipient_may_be_one_makers_alone() =>
        Assert.Equal([("Ann", 51), ("Beth", 45)], NamedMakers.Each(Read(Two)).Select(m => (m.Name, m.Own.Needed!.Value)));

    [Fact]
    public void The_batch_is_that_of_all_makers_together()
    {
        var batch = Read(Two);
        Assert.Equal([90, 6], batch.Makes.Select(m => m.Count));
        Assert.Equal(96, batch.Needed);
    }

    [Fact]
    public void The_part_of_a_maker_has_her_lines_alone()
    {
        var beth = NamedMakers.Of(Read(Two), "Beth");
        Assert.Equal([45], beth.Makes.Select(m => m.Count));
        Assert.Equal(["Cliff ward"], beth.For.Select(f => f.Whom));
    }

    [Fact]
    public void Spare_cards_of_a_recipient_are_made_by_its_makers()
    {
        var batch = Read(Two.Replace("made by \"Ann\"\nmake", "made by \"Ann\", spare 2\nmake", StringComparison.Ordinal) + "spare 1\n");
        Assert.Equal([54, 46], NamedMakers.Each(batch).Select(m => m.Own.Needed!.Value));
    }

    [Fact]
    public void Two_of_three_may_share_a_recipient()
    {
        var batch = Read(Two.Replace("\"Beth\"\n", "\"Beth\" \"Cy\"\n", StringComparison.Ordinal)
            .Replace("6 cards, made by \"Ann\"", "7 cards, made by \"Ann\" and \"Cy\"", StringComparison.Ordinal));
        Assert.Equal([34, 30, 34], NamedMakers.Each(batch).Select(m => m.Own.Needed!.Value));
    }

    [Fact]
    public void The_plan_says_what_each_makes()
    {
        var run = PlanRun.Of(Two);
        Assert.Contains("Ann needs 51 and makes 51, Beth needs 45 and makes 45", run.Single("SK730").Message, StringComparison.Ordinal);
        var table = run.Summary.Sections.Single(s => s.Heading == "Who makes what").Table!;
        Assert.Equal(["Ann", "51", "51", "51 Gull", "Cliff ward, Reading room"], table.Rows[0]);
        Assert.Equal(["Ann 51", "Beth 45"], run.Json.GetProperty("makers").EnumerateArray()
            .Select(m => $"{m.GetProperty("name").GetString()} {m.GetProperty("needed").GetInt32()}"));
    }

    [Fact]
    public void A_maker_with_too_few_cards_is_reported_by_name()
    {
        var found = PlanRun.Of(Two.Replace("make 6", "make 5", StringComparison.Ordinal)).Single("SK721");
        Assert.StartsWith("Ann needs 51 cards", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_the_batch_does_not_know_is_reported_at_its_place()
    {
        var batch = Two.Replace("6 cards, made by \"Ann\"", "6 cards, made by \"An\"", StringComparison.Ordinal);
        var found = PlanRun.Of(batch).Single("SK716");
        Assert.Equal((5, "\"Ann\""), (found.Location.Start.Line, found.Replacement));
    }

    [Fact]
    public void Loose_pieces_are_cut_by_each() =>
        Assert.Equal(8, Read(Two + "cut 4 of 1 x 1 from navy\n").Cuts[0].Count);
}
