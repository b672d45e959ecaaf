using Sketch.Diagnostics;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Any layer of a stack can have the known size: the others follow, or the contradiction is reported.</summary>
public class StackRuleTests
{
    [Theory]
    [InlineData("front/pic", "3 7/8 x 5 1/8")]
    [InlineData("front/pic/mat", "4 x 5 1/4")]
    public void A_panel_follows_from_the_size_of_its_mat(string path, string size) =>
        Laid.OnA2("  pic: panel, of cream\n    mat 4 x 5 1/4, border 1/16, of navy").HasSize(path, size);

    [Theory]
    [InlineData("front/pic", "3 5/8 x 4 7/8")] // 3 3/4 - 1/8, 5 - 1/8
    [InlineData("front/pic/mat", "3 3/4 x 5")]
    [InlineData("front/pic/mat2", "4 x 5 1/4")] // written
    public void A_middle_layer_and_the_panel_follow_from_the_outer_mat(string path, string size) =>
        Laid.OnA2("  pic: panel, of cream\n    mat +1/8, of navy\n    mat 4 x 5 1/4, border 1/8, of white").HasSize(path, size);

    [Fact]
    public void A_single_unwritten_border_between_two_known_sizes_is_calculated()
    {
        var card = Laid.OnA2("  pic: panel 3 1/2 x 4 3/4, showing 1/8, of cream\n    mat, of navy\n    mat +1/8, of white");
        card.ShowsBorder("front/pic/mat", "3/16"); // 4 - 1/8 - 3 1/2 = 3/8 in total
        card.HasSize("front/pic/mat", "3 7/8 x 5 1/8");
    }

    [Fact]
    public void Each_axis_is_resolved_independently()
    {
        var card = Laid.OnA2("  pic: panel 3 x 5, showing 1/8, of cream\n    mat, of navy");
        card.ShowsBorder("front/pic/mat", "1/2", "1/8", "1/2", "1/8"); // (4 - 3)/2, (5 1/4 - 5)/2
    }

    [Fact]
    public void Known_sizes_that_agree_are_not_an_error() =>
        Laid.OnA2("  pic: panel 3 7/8 x 5 1/8, showing 1/8, of cream\n    mat +1/8, of navy").HasSize("front/pic/mat", "4 x 5 1/4");

    [Fact]
    public void Known_sizes_that_disagree_are_an_error_with_both_values()
    {
        var error = Assert.Single(Errors("  pic: panel 3 1/2 x 5 1/8, showing 1/8, of cream\n    mat +1/8, of navy"));
        Assert.Contains("3 1/2 in", error.Message);
        Assert.Contains("4 in", error.Message);
    }

    [Fact]
    public void A_mat_that_is_too_small_says_how_much_is_missing() => Assert.Equal(
        ["line 4 says 4 1/2 in and line 4 4 in, 1/2 in too little", "line 4 says 6 in and line 4 5 1/4 in, 3/4 in too little"],
        Errors("  pic: panel 4 1/2 x 6, showing 1/8, of cream\n    mat, of navy")
            .Select(e => e.Message[(e.Message.IndexOf(':', StringComparison.Ordinal) + 2)..^1]));

    [Fact]
    public void A_panel_smaller_than_nothing_is_reported_with_the_size_that_would_be_left()
    {
        var errors = Errors("  pic: panel, showing 1/8, of cream\n    mat, border 3, of navy").Select(e => e.Message).ToArray();
        Assert.Contains("Nothing is left of pic: its width would be -2 in.", errors); // 4 - 2 x 3
        Assert.Contains("Nothing is left of pic: its height would be -3/4 in.", errors);
    }

    [Theory]
    // Two unwritten borders lie between known sizes.
    [InlineData("  pic: panel 3 x 4, showing 1/8, of cream\n    mat, of navy\n    mat, of white")]
    [InlineData("  pic: panel 5 x 6, showing 1/8, of cream\n    mat, of navy")] // a border below zero
    [InlineData("  pic: panel, of cream")] // how large?
    [InlineData("  pic: panel full x full, of cream\n    mat +1/8, of navy")] // say showing
    [InlineData("  pic: panel 3, of cream")] // one number for a panel
    public void An_undetermined_size_is_an_error(string pieces) => Assert.NotEmpty(Errors(pieces));

    [Theory]
    [InlineData("panel 3, of cream", "Write panel 3 x 3, or square 3.")]
    [InlineData("window 3", "Write window 3 x 3, or a shape: window circle 3.")]
    [InlineData("strip 3, of cream", "Write strip full x 3, or strip 3 x full.")]
    public void One_number_is_answered_with_two(string piece, string hint) => Assert.Equal(hint, Errors($"  {piece}").First().Hint);

    [Fact]
    public void Sizes_that_need_each_other_are_reported_with_their_lines() => Assert.Contains(
        "The width of b depends on itself: line 5, which needs line 6, which needs line 5.",
        Errors("  a: panel, same size as b, of red\n  b: panel, same size as c, of red\n  c: panel, same size as b, of red")
            .Select(e => e.Message));

    [Fact]
    public void Full_is_the_parent_minus_the_written_distances() =>
        Laid.OnA2("  panel full x full, left 1/4, right 1/2, top 1/8, of blue").HasSizeAndPlace("front/panel", "3 1/2 x 5 3/8", "1/4, 1/8");

    [Fact]
    public void Showing_can_differ_on_one_side() =>
        Laid.OnA2("  panel, showing 1/8, showing bottom 1, of blue")
            .HasSizeAndPlace("front/panel", "4 x 4 3/8", "1/8, 1/8"); // 5 1/2 - 1/8 - 1

    [Fact]
    public void Same_size_refers_to_the_piece_without_its_mats() =>
        Laid.OnA2("  pic: panel 3 x 2, of cream\n  panel, same size as pic, top 0, of blue").HasSize("front/panel", "3 x 2");

    private static IEnumerable<Finding> Errors(string pieces) =>
        Compiler.Compile(new SourceText("card.card", $"card \"Test\"\nbase A2, fold left, of white\nfront\n{pieces}"),
            new TestWorld()).Findings
            .Where(f => f.Severity == Severity.Error);
}
