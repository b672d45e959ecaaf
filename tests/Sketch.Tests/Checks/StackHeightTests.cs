using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>Usual papers: cardstock 0.25 mm, patterned paper 0.15 mm; a gem adds half its width (common practice, no source).</summary>
public sealed class StackHeightTests
{
    private static LaidOutCard Card(string pieces) => Compiler.Compile(
        new SourceText("card.card", $"card \"Lamp day\"\nbase A2, fold left, of white\nrole sky: dots navy cream\nfront\n{pieces}"),
            new TestWorld()).Card!;

    [Theory]
    [InlineData("  square 1, of gold", 0.75)]
    [InlineData("  square 1, of sky", 0.65)]
    [InlineData("  square 1, of gold\n    mat +1/8, of sky", 0.9)]
    [InlineData("  square 1, on foam, of gold\n    gem 4 mm, of red", 4.75)]
    [InlineData("  gem heart 4 x 4 mm, of red", 2.5)]
    [InlineData("  dot 6 mm, of red", 2.5)]
    [InlineData("  brad 8 mm, of red", 2.5)]
    [InlineData("  button 10 mm, of red", 2.5)]
    [InlineData("  bow 30 mm, of red", 3.5)]
    [InlineData("  sticker 1 x 1, of red", 0.6)]
    [InlineData("  tape full x 1/2, of red", 0.6)]
    [InlineData("  ribbon full x 3/8, of red", 0.9)]
    [InlineData("  twine full x 2 mm, of red", 2.5)]
    [InlineData("  text \"Fair\", of black", 0.5)]
    [InlineData("  square 1, raised 1 mm, of gold\n    circle 1/2, raised 2 mm, of red", 4)]
    public void Papers_foam_and_gems_add_up_with_both_halves_of_the_base(string pieces, double millimetres) =>
        Assert.Equal(Fit.Mm(millimetres), StackHeight.Of(Card(pieces)).Front);

    [Fact]
    public void Siblings_lie_side_by_side_and_do_not_add_up() =>
        Assert.Equal(Fit.Mm(0.75), StackHeight.Of(Card("  square 1, left 0, of gold\n  square 1, right 0, of gold")).Front);

    [Fact]
    public void A_bare_card_is_its_two_halves() => Assert.Equal(new StackHeight(Fit.Mm(0.5), null), StackHeight.Of(Card("")));

    [Fact]
    public void The_highest_piece_is_named() =>
        Assert.Equal("front/lamp/lens",
            StackHeight.Of(Card("  lamp: square 1, on foam, of gold\n    lens: circle 1/2, of red\n  square 1, left 0, of gold"))
                .Highest!.Path.ToString());

    [Fact]
    public void More_than_five_millimetres_are_too_thick_for_a_letter()
    {
        var finding = Fit.OnA2("  lamp: square 1, on foam, of gold\n    lens: circle 1/2, raised 3 mm, of red")
            .The(FindingCatalogue.TooThick);
        Assert.Equal(
            "The card is about 6 mm thick at lamp/lens; a letter may be 5 mm for Royal Mail and 1/4 in for the US Postal Service.",
            finding.Message);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(5, finding.Line());
    }

    [Fact]
    public void Five_millimetres_are_not_too_thick() =>
        Assert.Empty(Fit.OnA2("  square 1, on foam, of gold\n    circle 1/2, raised 2 mm, of red").Of(FindingCatalogue.TooThick));
}
