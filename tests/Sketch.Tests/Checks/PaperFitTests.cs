using Sketch.Tests.Stashes;
using Xunit;

namespace Sketch.Tests.Checks;

public class PaperFitTests
{
    [Theory]
    [InlineData("4 x 3", "4 x 3", false)]
    [InlineData("4 x 3", "3 x 4", false)]
    [InlineData("4 x 3, upright", "3 x 4", true)]
    [InlineData("4 x 3, upright", "4 x 3", false)]
    [InlineData("4 x 3", "4 x 3 1/64", true)]
    public void A_piece_must_fit_on_a_sheet_turned_only_if_the_print_may_be(string sheet, string piece, bool isReported)
    {
        var (size, upright) = sheet.EndsWith("upright", StringComparison.Ordinal) ? (sheet[..^9], ", upright") : (sheet, "");
        Assert.Equal(isReported, Codes($"paper sky: {size}, 1 sheet{upright}, front dots", $"front\n  panel {piece}, of sky")
            .Contains("SK602"));
    }

    [Fact]
    public void No_piece_fits_in_the_trim() =>
        Assert.Contains("SK602", Codes("paper sky: 4 x 4, 1 sheet, trim 1/4 bottom", "front\n  panel 4 x 4, of sky"));

    [Fact]
    public void The_base_must_fit_unfolded() =>
        Assert.Contains("SK602", Codes("cardstock white: 5 x 6, 10 sheets", "front\n  panel 2 x 2, of navy"));

    [Fact]
    public void Copies_of_a_line_are_reported_once() =>
        Assert.Single(Codes("paper sky: 1 x 1, 1 sheet, front dots", "front\n  3 square 1 1/8, in a column, of sky"), "SK602");

    private static string[] Codes(string shelf, string card) =>
        [.. Stashed.Card(card, Stashed.Stash(shelf)).Findings.Select(f => f.Code)];
}
