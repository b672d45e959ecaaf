using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Stashes;

public sealed class StashSupplyTests
{
    private static Supply Supply(string line) => Stashed.Stash(line).Supplies.Single();

    public static TheoryData<SupplyKind> Kinds => [.. SupplyKinds.Lines];

    private static string ExampleOf(SupplyKind kind) =>
        Stashed.OnlyFinding($"{kind.Traits.Word} thing: 60 pieces").Hint!["Write ".Length..^1];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_example_of_each_kind_reads_as_that_kind(SupplyKind kind)
    {
        var supply = Supply(ExampleOf(kind));
        Assert.Equal((kind, true), (supply.Kind, supply.Pieces is not null || supply.Long is not null));
    }

    [Fact]
    public void Every_word_of_a_stash_line_is_a_paper_an_offcut_or_a_kind_of_supply() =>
        Assert.Equal(
            Vocabulary.Stock.Order(StringComparer.Ordinal),
            SupplyKinds.Lines.Select(k => k.Traits.Word).Concat(["paper", "cardstock", "offcut"]).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("line silver: 1/16, 12 strips, 9 in long", false)]
    [InlineData("ribbon navy: 3/8, 12 rolls, 9 in long", true)]
    public void Strips_and_rolls_have_a_number_and_a_length(string line, bool isOnRolls)
    {
        var supply = Supply(line);
        Assert.Equal((12, Length.Inch(9), Length.Inch(108), isOnRolls),
            (supply.Strips, supply.StripLength, supply.Long, supply.IsOnRolls));
    }

    [Fact]
    public void Strips_without_a_length_are_a_mistake()
    {
        var finding = Stashed.OnlyFinding("line silver: 1/16, 12 strips");
        Assert.Equal(("The length of each strip of silver is missing.", "Write 12 strips, 12 in long."), (finding.Message, finding.Hint));
    }

    [Theory]
    [InlineData("gem red: 1/8", "The number of red is missing.")]
    [InlineData("twine red: 1/8", "The length of red is missing.")]
    public void What_is_on_hand_must_be_written(string line, string message) =>
        Assert.Equal(message, Stashed.OnlyFinding(line).Message);

    [Fact]
    public void A_die_is_there_once_unless_its_line_counts_it() => Assert.Equal(1, Supply("die small-tag: 1 x 2").Pieces);

    [Fact]
    public void The_front_of_a_tape_is_its_pattern() =>
        Assert.Equal(PaperPattern.Stripes, Supply("tape sail: 1/2, 10 m long, front stripes cream red").Face!.Look.Pattern);

    [Theory]
    [InlineData("foam white: 2 mm, 10 pieces, front red")]
    [InlineData("die small-tag: 1 x 2, front red")]
    public void What_no_card_shows_has_no_front(string line) => Assert.Equal("SK116", Stashed.OnlyFinding(line).Code);

    [Fact]
    public void Red_paper_does_not_look_like_gems_called_red()
    {
        var stash = Stashed.Stash("gem red: 1/8, 20 pieces, front #00ff00");
        var card = Stashed.Card("front\n  panel 2 x 2, of red\n", stash).Card!;
        Assert.NotEqual("#00ff00", card.Pieces.Single().Paint.Look.Ground.Hex);
    }

    [Fact]
    public void A_thing_named_in_the_stash_alone_is_known()
    {
        var stash = Stashed.Stash("button seaside: 1/2, 20 pieces, front #2c7a7b");
        var card = Stashed.Card("front\n  button 1/2, of seaside\n", stash);
        Assert.Empty(card.Findings);
        Assert.Equal(("seaside", "#2c7a7b"), (card.Card!.Pieces.Single().Paint.Paper, card.Card.Pieces.Single().Paint.Look.Ground.Hex));
    }
}
