using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Tests.Layout;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Binding;

/// <summary>
/// A card that starts from another: its own lines replace those of the other, and <c>change</c>, <c>leave out</c> and <c>add to</c> apply
/// to the pieces of the other. Values follow from the language reference by hand.
/// </summary>
public sealed class LikeTests
{
    private const string Other = """
        card "Harbour"
        base A2, fold top, landscape, of kraft
        role sky: blue
        front
          pic: panel 3 x 3, upper left 1/2, of sky
            mat, border 1/8, of white
            mat, border 1/8, of navy
            lamp: star 1, top 1/2, of gold
          post: strip 1/4 x 1 1/2, bottom 0, of red
        """;

    [Theory]
    [InlineData("left 1/4", "1/2, 3/4")] // the distances are those of the outer mat; of a corner, only the direction named changes
    [InlineData("right 1/4", "2, 3/4")]
    [InlineData("lower right 1/8", "2 1/8, 7/8")]
    [InlineData("centre", "1 1/4, 5/8")]
    public void A_new_place_replaces_the_old_one_in_its_direction(string place, string at) =>
        Like($"change pic: {place}").HasPlace("front/pic", at);

    [Theory]
    [InlineData("2 x 1", "2 x 1")]
    [InlineData("full x 1", "5 1/2 x 1")]
    public void A_new_size_replaces_the_old_one(string size, string expected) =>
        Like($"change post: {size}").HasSize("front/post", expected);

    [Fact]
    public void What_shows_replaces_a_size_and_all_distances() =>
        Like("change sea: showing 1", Other + "\n  sea: panel 1 x 1, upper left 1/4, of blue")
            .HasSizeAndPlace("front/sea", "3 1/2 x 2 1/4", "1, 1");

    [Fact]
    public void A_size_replaces_what_shows() =>
        Like("change sea: 2 x 2", Other + "\n  sea: panel, showing 1/8, of blue")
            .HasSizeAndPlace("front/sea", "2 x 2", "1 3/4, 1 1/8");

    [Fact]
    public void A_new_kind_keeps_what_the_line_does_not_name()
    {
        var lamp = Like("change pic/lamp: heart").Piece("front/pic/lamp");
        Assert.Equal((PieceKind.Heart, "gold"), (lamp.Kind, lamp.Paint.Role));
    }

    [Theory]
    [InlineData("pic/mat", "front/pic/mat")]
    [InlineData("pic/mat2", "front/pic/mat2")]
    public void A_mat_is_named_by_its_number_from_the_inside(string name, string path) =>
        Assert.Equal("silver", Like($"change {name}: of silver").Piece(path).Paint.Role);

    [Fact]
    public void Lines_indented_under_a_change_are_added_to_what_lies_there() =>
        Assert.Equal(
            ["front/pic/mat2", "front/pic/mat", "front/pic/lamp", "front/pic/heart"],
            Order(Like("change pic: left 0\n  heart 1, of red"), "front/pic/"));

    [Fact]
    public void A_piece_is_left_out_with_its_mats_and_all_that_lies_on_it() =>
        Assert.Equal(["front/post"], Like("leave out pic").Order());

    [Fact]
    public void One_mat_can_be_left_out() =>
        Assert.Equal(["front/pic/mat", "front/pic/lamp"], Order(Like("leave out pic/mat2"), "front/pic/"));

    [Fact]
    public void A_piece_is_added_above_those_that_are_there() =>
        Assert.Equal(
            ["front/pic/mat2", "front/pic/mat", "front/pic/lamp", "front/pic/heart"],
            Order(Like("add to pic\n  heart 1, of red"), "front/pic/"));

    [Theory]
    [InlineData("front", "front/text")]
    [InlineData("inside top", "inside-top/text")]
    [InlineData("inside-top", "inside-top/text")]
    [InlineData("envelope back", "envelope-back/text")]
    public void A_piece_can_be_added_to_any_face(string face, string path) => Like($"add to {face}\n  text \"ahoy\"").Piece(path);

    [Fact]
    public void Changes_apply_in_their_order() =>
        Assert.Equal(["front/post", "front/pic"], Like("leave out pic\nadd to front\n  pic: star 1, of red").Order());

    [Fact]
    public void A_base_line_replaces_only_what_it_gives()
    {
        var own = Like("base US A7").Base;
        Assert.Equal((Measure.Size("7 x 5"), Fold.Top, "kraft"), (own.Closed, own.Fold, own.Paint.Role));
    }

    [Fact]
    public void A_role_line_replaces_the_role_of_the_other_card() =>
        Assert.Equal("cream", Like("role sky: cream").Piece("front/pic").Paint.Paper);

    [Fact]
    public void A_part_of_the_same_name_takes_its_place_where_this_card_uses_it() =>
        Like(
            "part light 1 x 1\n  heart 1, of red\ninside\n  use light",
            "card \"Harbour\"\nbase A2, of white\npart light 1 x 1\n  star 1, of gold\nfront\n  use light\n")
            .Piece("inside/group/heart");

    [Fact]
    public void Cards_can_form_a_chain()
    {
        var world = new TestWorld()
            .WithText("one.card", Other)
            .WithText("two.card", "card \"Two\"\nlike \"one.card\"\nchange pic: 2 x 2\n");
        Laid.Out("card \"Three\"\nlike \"two.card\"\nchange pic: left 1\n", world).HasSizeAndPlace("front/pic", "2 x 2", "1 1/4, 3/4");
    }

    [Fact]
    public void A_card_cannot_start_from_itself()
    {
        const string Text = "card \"Ring\"\nlike \"ring.card\"";
        var compilation = Compiler.Compile(new SourceText("ring.card", Text), new TestWorld().WithText("ring.card", Text));
        Assert.Contains(compilation.Findings, f => f.Severity == Severity.Error);
    }

    [Theory]
    [InlineData("stash\npaper white: 10 sheets 12 x 12", "\"harbour.card\" is no card that can be read.")]
    [InlineData("card \"Harbour\"\nbase -4 x 5, of white\n", "\"harbour.card\" has mistakes of its own.")]
    public void What_is_wrong_with_the_other_file_is_said_at_the_like_line(string other, string message)
    {
        var world = new TestWorld().WithText("harbour.card", other);
        var finding = Assert.Single(Found.In("card \"New\"\nlike \"harbour.card\"\n", world));
        Assert.Equal((2, message), (finding.Location.Start.Line, finding.Message));
    }

    [Fact]
    public void A_name_that_the_other_card_does_not_have_is_reported_with_the_nearest()
    {
        var finding = Assert.Single(Errors("change pick: left 1"));
        Assert.Equal((FindingCatalogue.UnknownPiece, 3, "pic"), (finding.Kind, finding.Location.Start.Line, finding.Replacement));
    }

    [Fact]
    public void A_name_on_two_faces_needs_its_face()
    {
        const string Twice = "inside\n  pic: star 1, of red\n";
        var finding = Assert.Single(Errors(Twice + "change pic: of blue"));
        Assert.Equal(FindingCatalogue.AmbiguousName, finding.Kind);
        Assert.Empty(Errors(Twice + "change inside/pic: of blue"));
    }

    [Fact]
    public void A_refit_without_another_card_is_reported() => Assert.Equal(
        ["SK115"], Found.In("card \"Alone\"\nbase A2, of white\nrefit sizes\nfront\n  star 1, of red\n").Select(f => f.Code));

    private static LaidOutCard Like(string lines, string other = Other) =>
        Laid.Out($"card \"New\"\nlike \"harbour.card\"\n{lines}\n", new TestWorld().WithText("harbour.card", other));

    private static IEnumerable<Finding> Errors(string lines) =>
        Found.In($"card \"New\"\nlike \"harbour.card\"\n{lines}\n", new TestWorld().WithText("harbour.card", Other))
            .Where(f => f.Severity == Severity.Error);

    private static string[] Order(LaidOutCard card, string below) =>
        [.. card.Order().Where(path => path.StartsWith(below, StringComparison.Ordinal))];
}
