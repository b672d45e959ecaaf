using Sketch.Edits;
using Xunit;

namespace Sketch.Tests.Edits;

/// <summary>A piece moves in the stack, is copied and taken away with all its lines.</summary>
public class PieceLinesTests
{
    private const string Two = "  # the sea\n  sea: panel 3 x 3, top 1, of blue # deep\n    mat +1/8, of navy\n\n  star 1, of gold\n";

    [Fact]
    public void A_piece_goes_over_the_next_one_with_its_lines() => Assert.Equal(
        "  star 1, of gold\n\n  # the sea\n  sea: panel 3 x 3, top 1, of blue # deep\n    mat +1/8, of navy\n",
        Hands.On(Two, "front/sea", new OrderChange(true)));

    [Fact]
    public void What_lies_on_top_stays() =>
        Assert.Equal("It lies on top already.", Hands.Refused(Two, "front/star", new OrderChange(true))!.Reason);

    [Fact]
    public void A_copy_has_a_name_of_its_own_and_lies_beside() => Assert.Equal(
        Two.Replace("\n\n", "\n  # the sea\n  sea2: panel 3 x 3, top 1 1/4, right 5/16, of blue # deep\n    mat +1/8, of navy\n\n",
            System.StringComparison.Ordinal),
        Hands.On(Two, "front/sea", new CopyChange()));

    [Fact]
    public void A_piece_is_taken_away_with_its_lines() =>
        Assert.Equal("\n  star 1, of gold\n", Hands.On(Two, "front/sea", new DeleteChange()));
}
