using Sketch.Assembly;
using Sketch.Tests.Templates;
using Xunit;

namespace Sketch.Tests.Assembly;

public sealed class StepTextTests
{
    private static List<string> Sentences(string lines, string head = "card \"Harbour\"\nbase A2, fold left, of white\nfront\n")
    {
        var card = Printed.Lay(head + lines);
        return [.. AssemblyOrder.Of(card).Select(s => StepText.Of(card, s))];
    }

    /// <summary>The flat base of an A2 card is 8 1/2 x 5 1/2 in, scored at 4 1/4 (trade table of US card bases).</summary>
    [Fact]
    public void The_score_is_measured_from_the_edge_of_the_flat_base() =>
        Assert.Equal(
            "Score the base, 8 1/2 x 5 1/2 in, 4 1/4 in from the left edge. Fold it with the ridge of the score inside.",
            Sentences("")[0]);

    /// <summary>ISO 216: an A5 sheet of 148 x 210 mm folds to A6, scored at 105.</summary>
    [Fact]
    public void Metric_cards_are_measured_in_millimetres() =>
        Assert.Equal("Score the base, 148 x 210 mm, 105 mm from the top edge. Fold it with the ridge of the score inside.",
            Sentences("", "card \"Harbour\"\nunits mm\nbase 148 x 105, fold top, of white\n")[0]);

    [Theory]
    [InlineData("square 2, left 1/2, top 1/4", "1/2 in from the left edge and 1/4 in from the top edge")]
    [InlineData("square 2, right 1/2, bottom 1/4", "1/2 in from the right edge and 1/4 in from the bottom edge")]
    [InlineData("square 2, top 1/4", "centred from side to side and 1/4 in from the top edge")]
    [InlineData("square 2", "in the middle")]
    [InlineData("square 2, left 0, top 1/4", "flush with the left edge and 1/4 in from the top edge")]
    [InlineData("strip full x 1, top 1", "from side to side and 1 in from the top edge")]
    [InlineData("panel full x full", "edge on edge")]
    [InlineData("square 2, left 1/4, top 1/4, turn right 10",
        "1/4 in from the left edge and 1/4 in from the top edge, turned 10° to the right")]
    public void A_place_is_given_by_its_nearest_edges(string line, string place) =>
        Assert.EndsWith($"on the front, {place}.", Sentences($"  {line}, of red\n")[1], StringComparison.Ordinal);

    [Fact]
    public void A_layer_is_placed_on_its_mat() =>
        Assert.Equal("Glue sky (panel, blue) on the mat behind sky, 1/16 in from every edge.",
            Sentences("  sky: panel 3 x 4, of blue\n    mat +1/8, of navy\n")[1]);

    [Fact]
    public void Copies_in_a_row_share_their_height() =>
        Assert.Equal("Glue star (gold), 3 times, on the front, 1/2 in from the top edge: 3/4 in from the left edge, centred from side to "
                + "side and 3/4 in from the right edge.",
            Sentences("  3 star 1/2, in a row, gap 5/8, top 1/2, of gold\n")[1]);

    [Fact]
    public void An_edge_that_all_copies_are_measured_from_is_named_once() =>
        Assert.Contains("3/4 in, 1/2 in and 1/4 in from the right edge.",
            Sentences("  3 gem 1/8, in a row, gap 1/8, top 1/2, right 1/4, of red\n")[1], StringComparison.Ordinal);

    [Fact]
    public void Foam_is_given_by_height_pads_and_strip() =>
        Assert.StartsWith("Attach star (gold) on 2 mm foam (4 pads or 4 in of strip) on the front, ",
            Sentences("  star 2, raised 2 mm, top 1, of gold\n")[1], StringComparison.Ordinal);

    [Fact]
    public void Ends_that_wrap_are_folded_to_the_back() =>
        Assert.EndsWith(", and fold what is too long to the back.",
            Sentences("  sky: panel 3 x 4, of blue\n    strip full x 1/2, bottom 0, wrap 1/2, of cream\n")[1], StringComparison.Ordinal);
}
