using Sketch.Tests.Stashes;
using Xunit;

namespace Sketch.Tests.Checks;

/// <summary>A card that is checked alone with its stash is compared with the dies and rubber stamps of the stash.</summary>
public sealed class ToolFitTests
{
    private const string Shelf = "cardstock navy: 3 x 3, 4 sheets\n";

    private static List<string> Codes(string piece, string tool) =>
        [.. Stashed.Card($"role deep: navy\nfront\n  {piece}\n", Stashed.Stash($"{Shelf}{tool}\n"))
            .Findings.Select(f => f.Code).Where(c => c is "SK602" or "SK728")];

    [Theory]
    [InlineData("2 tag 1, in a row, of deep, using small-tag", "die small-tag: 3/4 x 1 1/2", "SK728")]
    [InlineData("panel 1 x 1 \"ahoy\", of deep, using hello", "stamp hello: 2 x 1", "SK728")]
    [InlineData("oval 3 x 5, of deep, using large", "die large: 3 x 5", "SK602")]
    public void A_tool_that_suits_neither_its_piece_nor_its_sheet_is_reported_once(string piece, string tool, string code) =>
        Assert.Equal([code], Codes(piece, tool));

    [Fact]
    public void A_tool_of_the_size_of_its_piece_is_not() =>
        Assert.Empty(Codes("tag 1, of deep, using small-tag", "die small-tag: 1 x 2"));
}
