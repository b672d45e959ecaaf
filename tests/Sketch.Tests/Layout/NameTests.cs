using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>What a name or a path means; every place is worked out by hand.</summary>
public class NameTests
{
    private const string Pieces = """
          port: panel 2 x 1, top 1/2, of red
            lamp: circle 1/2, left 1/4, top 1/4, of white
        """;

    [Theory]
    [InlineData("port/lamp")]
    [InlineData("front/port/lamp")]
    [InlineData("FRONT/Port/LAMP")]
    public void A_path_leads_to_a_piece_on_another_one(string path) =>
        // The lamp begins 3/4 from the top of the card; the middle of the circle lies there.
        Laid.OnA2($"{Pieces}\n  circle 1/4, over top of {path}, of blue").HasPlace("front/circle", "2, 5/8");

    [Theory]
    [InlineData("port/lmp", "There is no lmp in port/lmp.", "Did you mean lamp?")]
    [InlineData("port/wheel", "There is no wheel in port/wheel.", "Names here are lamp.")]
    [InlineData("front/wheel", "There is no wheel in front/wheel.", "Names here are port.")]
    public void A_path_that_leads_nowhere_is_answered_with_the_names_there(string path, string message, string hint) =>
        Assert.Contains(Found.On($"{Pieces[2..].Replace("\n  ", "\n", StringComparison.Ordinal)}\ncircle 1/4, over top of {path}, of blue"),
            f => f.Message == message && f.Hint == hint);

    [Fact]
    public void A_sibling_goes_before_a_piece_further_out() =>
        Laid.OnA2("  lamp: circle 1, top 0, of red\n  panel 3 x 3, top 1 1/2, of white\n    lamp: circle 1/2, top 1, of red\n"
            + "    strip 1 x 1/4, below lamp by 1/4, of blue").HasPlace("front/panel/strip", "1 5/8, 3 1/4");

    [Fact]
    public void A_name_that_occurs_twice_elsewhere_is_answered_with_a_path() => Assert.Contains(
        Compiler.Compile(new SourceText("a.card", "card \"x\"\nbase A2, fold left, of white\nfront\n"
            + "  port: panel 1 x 1, top 0, of red\n    lamp: circle 1/2, of white\n"
            + "  starboard: panel 1 x 1, bottom 0, of red\n    lamp: circle 1/2, of white\n  strip 1 x 1/4, below lamp, of blue\n"),
            new TestWorld()).Findings,
        f => f.Message == "2 pieces of this face are called lamp." && f.Hint == "Write a path, such as front/port/lamp.");

    [Fact]
    public void A_piece_on_another_face_is_answered_with_its_path() => Assert.Contains(
        Compiler.Compile(new SourceText("a.card", "card \"x\"\nbase A2, fold left, of white\nfront\n  strip 1 x 1/4, below lamp, of blue\n"
            + "inside\n  lamp: circle 1/2, of white\n"), new TestWorld()).Findings,
        f => f.Message == "There is no piece called lamp on this face." && f.Replacement == "inside/lamp");

    [Theory]
    [InlineData("  2 panel 1 x 1, in a row, of white\n    lamp: circle 1/2, of white\n")]
    [InlineData("  panel 1 x 1, of white\n    lamp: circle 1/2, of white\n")]
    [InlineData("  lamp: 2 circle 1/2, in a row, of white\n")]
    public void A_piece_on_another_face_without_a_path_of_names_is_answered_without_a_replacement(string inside) => Assert.Contains(
        Compiler.Compile(new SourceText("a.card", "card \"x\"\nbase A2, fold left, of white\nfront\n  strip 1 x 1/4, below lamp, of blue\n"
            + $"inside\n{inside}"), new TestWorld()).Findings,
        f => f.Message == "There is no piece called lamp on this face." && f.Replacement is null);

    [Fact]
    public void A_piece_does_not_find_itself() => Assert.Contains(
        Found.On("lamp: circle 1/2, below lamp, of blue"), f => f.Message == "There is no piece called lamp on this face.");
}
