using Sketch.Planning.Post;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Planning.Post;

/// <summary>Thickness and weight of a card in its envelope, against rows worked out by hand.</summary>
public class PostalItemTests
{
    private const string Front = "front\n  sky: panel 4 x 5 1/4, of sky\n    mat 4 1/8 x 5 3/8, of deep\n"
        + "    words: panel 3 x 1, of label, raised ";

    private static (PostalItem Item, Spread Thickness, Spread Weight) Of(string card, string stash)
    {
        var world = new TestWorld();
        var shelf = Compiler.Compile(new SourceText("shelf.stash", "stash \"Shelf\"\n" + stash), world).Stash;
        var laid = Compiler.Compile(new SourceText("a.card", "card \"A\"\n" + card), world, new RoleFilling(shelf, [])).Card!;
        return (PostalItem.Of(laid, shelf)!, PostalItem.ThicknessOf(laid, shelf), PostalItem.PaperWeightOf(laid, shelf));
    }

    // Both halves 0.25, mat 0.20, panel 0.18, foam, sentiment 0.25 mm; with an envelope of 2 x 0.12 mm they are 3.37, 4.37 and 5.37 mm.
    [Theory]
    [InlineData("2 mm", 3.37)]
    [InlineData("3 mm", 4.37)]
    [InlineData("4 mm", 5.37)]
    public void Layers_foam_and_envelope_add_up(string foam, double thickness)
    {
        var (item, card, _) = Of(
            $"base A2, fold left, of white\n{Front}{foam}\n",
            "cardstock white: letter, 9 sheets, thick 0.25 mm\ncardstock deep: letter, 9 sheets, thick 0.2 mm\n"
                + "cardstock sky: letter, 9 sheets, thick 0.18 mm\ncardstock label: letter, 9 sheets, thick 0.25 mm\n");

        Assert.Equal((thickness - 0.24, thickness - 0.24), (Math.Round(card.Low, 6), Math.Round(card.High, 6)));
        Assert.InRange(thickness, item.Thickness.Low, item.Thickness.High);
    }

    // Two sheets of 0.25 mm, and a button of 2 mm.
    [Fact]
    public void What_is_ready_made_has_the_thickness_of_its_kind()
    {
        var (item, card, _) = Of("base A2, fold left, of white\nfront\n  button 1/2, of red\n",
            "cardstock white: letter, 9 sheets, thick 0.25 mm\n");
        Assert.Equal((2.5, true), (Math.Round(card.High, 6), item.HasBumps));
    }

    // A flat sheet of 12 3/4 x 5 1/2 in at 216.33 g/m2 weighs 9.787 g.
    [Fact]
    public void A_base_folded_like_a_z_counts_three_layers()
    {
        var (_, thickness, weight) = Of("base A2, fold z, of white\n",
            "cardstock white: letter, 9 sheets, thick 0.25 mm, weight 80 lb cover\n");
        Assert.Equal((0.75, 9.787), (Math.Round(thickness.Low, 6), Math.Round(weight.Low, 3)));
    }

    // 5.5 x 8.5 in at 216.33 g/m2 6.525 g; mat at 175.77 2.514 g; panel at 150 2.032 g; sentiment at 216.33 0.419 g: 11.490 g; with an A2
    // envelope of 2.3 times its front at 90.23 g/m2 14.858 g. The weights are those of 80 and 65 lb cover.
    [Fact]
    public void The_weights_of_all_papers_add_up()
    {
        var (item, _, card) = Of(
            $"base A2, fold left, of white\n{Front}2 mm\n",
            "cardstock white: letter, 9 sheets, weight 80 lb cover\ncardstock deep: letter, 9 sheets, weight 65 lb cover\n"
                + "cardstock sky: letter, 9 sheets, weight 150 gsm\ncardstock label: letter, 9 sheets, weight 80 lb cover\n");

        Assert.Equal((11.490, 11.490), (Math.Round(card.Low, 3), Math.Round(card.High, 3)));
        Assert.InRange(14.858, item.Weight.Low, item.Weight.High);
    }

    // The mat of 2.514 g with a hole of 3 1/2 x 4 3/4 in weighs 0.629 g; a base of white at 216.33 g/m2 weighs 6.525 g.
    [Fact]
    public void Only_the_paper_that_is_there_weighs()
    {
        var (_, _, card) = Of(
            "base A2, fold left, of white\nfront\n  deep: panel 4 1/8 x 5 3/8, of deep\n    window 3 1/2 x 4 3/4\n",
            "cardstock white: letter, 9 sheets, weight 80 lb cover\ncardstock deep: letter, 9 sheets, weight 65 lb cover\n");

        Assert.Equal(6.525 + 0.629, card.Low, 3);
    }

    [Fact]
    public void Papers_that_nobody_measured_give_a_range()
    {
        var (item, card, weight) = Of("base A2, fold left, of white\n", "cardstock navy: letter, 9 sheets\n");

        Assert.True(card.Low < card.High && weight.Low < weight.High);
        Assert.Equal("US A2", item.EnvelopeName);
    }

    [Fact]
    public void A_measured_thickness_is_exact_and_one_that_follows_from_the_weight_is_not()
    {
        Assert.Equal(new Spread(0.6, 0.6), Of("base A2, fold left, of white\n",
            "cardstock white: letter, 9 sheets, weight 200 gsm, thick 0.3 mm\n").Thickness);
        Assert.Equal(new Spread(0.4, 0.64), Of("base A2, fold left, of white\n", "cardstock white: letter, 9 sheets, weight 200 gsm\n")
            .Thickness);
    }

    private static Spread Trimmings(string front)
    {
        const string Bare = "base A2, fold left, of white\n";
        const string Stock = "cardstock white: letter, 9 sheets, thick 0.25 mm, weight 80 lb cover\n";
        var (with, without) = (Of($"{Bare}front\n  {front}\n", Stock).Item.Weight, Of(Bare, Stock).Item.Weight);
        return new(with.Low - without.Low, with.High - without.High);
    }

    // A button of 1/2 in and 2 mm has 253 mm3; a gem of 1/4 in and 3.175 mm has 101 mm3. Densities are common practice, no source.
    [Theory]
    [InlineData("button 1/2, of red", 253.4)]
    [InlineData("gem 1/4, of red", 100.5)]
    public void What_is_hard_weighs_between_half_and_two_point_six_grams_for_each_cubic_centimetre(string piece, double cubicMillimetres)
    {
        var weight = Trimmings(piece);
        Assert.Equal(cubicMillimetres * 0.0005, weight.Low, 2);
        Assert.Equal(cubicMillimetres * 0.0026, weight.High, 2);
    }

    [Fact]
    public void Foam_weighs_more_the_higher_it_is() =>
        Assert.True(Trimmings("star 1, of white, raised 4 mm").High > Trimmings("star 1, of white, raised 2 mm").High);

    // The strips of glue under a square inch are 1 in long or longer and 1/4 in wide; thick tape is 200 g/m2.
    [Fact]
    public void Glue_weighs_next_to_nothing_or_as_much_as_thick_tape()
    {
        var paper = 25.4 * 25.4 * 216.33e-6;
        var weight = Trimmings("square 1, of white");
        Assert.Equal(paper, weight.Low, 2);
        Assert.InRange(weight.High - weight.Low, 25.4 * 6.35 * 200e-6, 25.4 * 25.4 * 200e-6);
    }

    [Fact]
    public void A_card_that_is_too_thick_names_the_least_change_that_keeps_it_a_letter()
    {
        var (item, _, _) = Of(
            "base A2, fold left, of white\nfront\n  lamp: star 2, of white, raised 4 mm\n  knob: button 1/2, lower left 1/4, of red\n",
            "cardstock white: letter, 9 sheets, thick 0.25 mm, weight 80 lb cover\n");
        var reason = PostalVerdict.Of(item, LetterClass.Known).Single(v => v.Service == "Royal Mail").Reasons[0];
        Assert.Contains("or glue lamp flat, without foam: then it is at most", reason, StringComparison.Ordinal);
    }
}
