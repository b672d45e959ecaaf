using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Syntax;
using Xunit;

namespace Sketch.Tests.Stashes;

public class RoleFillingTests
{
    private static readonly Stash Shelf = Stashed.Stash(
        "paper gulls: 12 x 12, 3 sheets, upright, front dots #9fc9e8, back stripes #e8dcc0\ncardstock deep: letter, 3 sheets, front "
            + "#16324f\npaper bare: 12 x 12, 1 sheet");

    private static PaperLook Front => Shelf.Papers[0].Front.Look;

    [Fact]
    public void A_role_is_drawn_in_its_paper_of_the_stash() =>
        Assert.Equal(Front, Sky("role sky: gulls #ffffff", Shelf).Look);

    [Fact]
    public void A_role_can_show_the_back() => Assert.Equal(Shelf.Papers[0].Back.Look, Sky("role sky: gulls, back", Shelf).Look);

    [Fact]
    public void Without_a_stash_a_role_is_drawn_in_its_colour() =>
        Assert.Equal(new(0x9f, 0xc9, 0xe8), Sky("role sky: gulls #9fc9e8", null).Look.Ground);

    [Fact]
    public void A_choice_overrides_the_card() =>
        Assert.Equal(("gulls", PaperSide.Back), PaperOf(Sky("role sky: deep", Shelf, "sky=gulls/back")));

    [Fact]
    public void The_last_of_two_choices_for_a_role_counts() =>
        Assert.Equal(("gulls", PaperSide.Front), PaperOf(Sky("role sky: deep", Shelf, "sky=deep", "sky=gulls")));

    [Fact]
    public void A_choice_can_be_a_colour_word_without_a_stash() =>
        Assert.Equal(BuiltIn.Find("navy", [])!, Sky("role sky: gulls #ffffff", null, "sky=navy").Look);

    [Fact]
    public void A_choice_can_be_hex_digits() =>
        Assert.Equal(new(0x16, 0x32, 0x4f), Sky("role sky: gulls", Shelf, "sky=#16324f").Look.Ground);

    [Fact]
    public void A_paper_without_a_print_in_the_stash_takes_the_colour_of_the_card() =>
        Assert.Equal(new(0x9f, 0xc9, 0xe8), Sky("role sky: bare #9fc9e8", Shelf).Look.Ground);

    [Fact]
    public void A_paper_that_is_not_in_the_stash_gets_the_nearest_name()
    {
        var finding = Assert.Single(Card("role sky: guls", Shelf).Findings);

        Assert.Equal(("SK601", "Did you mean gulls?"), (finding.Code, finding.Hint));
    }

    [Theory]
    [InlineData("role sky: terns #9fc9e8")]
    [InlineData("role sky: stripes")]
    [InlineData("role sky: navy")]
    public void A_role_with_a_colour_or_a_built_in_paper_needs_no_stash(string role) => Assert.Empty(Card(role, Shelf).Findings);

    [Fact]
    public void A_name_that_is_not_a_role_can_be_a_paper_of_the_stash() =>
        Assert.Equal("deep", Stashed.Card("front\n  sky: panel 2 x 2, of deep", Shelf).Card!.Pieces[0].Paint.Paper);

    [Fact]
    public void In_a_batch_a_role_with_only_a_colour_is_looked_up_by_its_name() =>
        Assert.Equal("deep", (new RoleFilling(Shelf, []) { Batch = [] }).Resolve(Red("deep")).Paper);

    [Fact]
    public void Outside_a_batch_a_role_with_a_colour_is_that_colour() =>
        Assert.Equal(Red("deep"), new RoleFilling(Shelf, []).Resolve(Red("deep")));

    [Fact]
    public void The_batch_overrides_the_card() =>
        Assert.Equal("deep", (new RoleFilling(Shelf, []) { Batch = [Named("deep")] }).Resolve(Named("gulls")).Paper);

    [Fact]
    public void A_choice_overrides_the_batch() => Assert.Equal(
        "bare", (new RoleFilling(Shelf, [new("SKY", "bare", PaperSide.Front)]) { Batch = [Named("deep")] }).Resolve(Named("gulls")).Paper);

    [Fact]
    public void Resolving_twice_changes_nothing()
    {
        var filling = new RoleFilling(Shelf, [new("ink", "#ff0000", PaperSide.Front)]) { Batch = [Named("fog")] };
        Assert.All(
            new[] { Named("gulls"), Named("bare") with { Role = "mat" }, Named("fog") with { Role = "mat" } },
            paint => Assert.Equal(filling.Resolve(paint), filling.Resolve(filling.Resolve(paint))));
    }

    [Theory]
    [InlineData("gulls", PaperKnowledge.Look)]
    [InlineData("navy", PaperKnowledge.Look)]
    [InlineData("bare", PaperKnowledge.Name)]
    [InlineData("fog", PaperKnowledge.Nothing)]
    public void A_paper_records_how_it_was_found(string paper, PaperKnowledge known) =>
        Assert.Equal(known, new RoleFilling(Shelf, []).Resolve(Named(paper)).Knowledge);

    [Fact]
    public void Without_a_stash_only_the_name_of_a_paper_is_known() =>
        Assert.Equal(PaperKnowledge.Name, RoleFilling.None.Resolve(Named("fog")).Knowledge);

    [Theory]
    [InlineData("sky", false)]
    [InlineData("sky=", false)]
    [InlineData("=gulls", false)]
    [InlineData("sky=gulls/edge", false)]
    [InlineData("sky=gulls/BACK", true)]
    [InlineData("sky = gulls", true)]
    public void A_choice_is_a_role_and_a_paper_with_or_without_a_side(string text, bool isChoice) =>
        Assert.Equal(isChoice, PaperChoice.TryParse(text, out _));

    private static Compilation Card(string role, Stash? stash, params string[] choices) =>
        Stashed.Card(role + "\nfront\n  panel 2 x 2, of sky", stash, choices);

    private static Paint Sky(string role, Stash? stash, params string[] choices) => Card(role, stash, choices).Card!.Pieces.Single().Paint;

    private static Paint Named(string paper) => RolePaper.Of("sky", paper, [], PaperSide.Front, anyOffcut: false);

    private static Paint Red(string role) =>
        RolePaper.Of(role, null, [new PaintSyntax("ff0000", true, default)], PaperSide.Front, anyOffcut: false);

    private static (string?, PaperSide) PaperOf(Paint paint) => (paint.Paper, paint.Side);
}
