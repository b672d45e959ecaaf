using Sketch.Papers;
using Sketch.Stashes;
using Xunit;

namespace Sketch.Tests.Stashes;

public sealed class OffcutKindTests
{
    private static readonly Stash Shelf = Stashed.Stash(
        "paper gulls: 12 x 12, 3 sheets, front waves #cfe3ea navy\ncardstock deep: letter, 3 sheets, front #16324f\n"
            + "cardstock brick: letter, 3 sheets, front #a8402f\n");

    [Theory]
    [InlineData(null, "gulls deep brick")]
    [InlineData("patterned", "gulls")]
    [InlineData("cardstock", "deep brick")]
    [InlineData("navy", "deep")]
    [InlineData("red", "brick")]
    [InlineData("deep", "deep")]
    [InlineData("green", "")]
    public void A_kind_takes_papers_by_sort_name_or_nearest_colour(string? kind, string papers) =>
        Assert.Equal(papers, string.Join(' ', Shelf.Papers.Where(p => OffcutKinds.Takes(kind, p)).Select(p => p.Name)));

    [Fact]
    public void A_kind_is_drawn_as_a_patchwork_of_the_papers_that_it_takes()
    {
        var look = OffcutKinds.Look("cardstock", Shelf);
        Assert.Equal(PaperPattern.Patches, look.Pattern);
        Assert.Equal(["#16324f", "#a8402f"], new[] { look.Ground, look.Figures[0] }.Select(c => c.Hex));
        Assert.True(look.Figures.Length >= 2);
    }

    [Fact]
    public void Offcuts_of_one_paper_look_like_that_paper() =>
        Assert.Equal(Shelf.Find("gulls")!.Front.Look, OffcutKinds.Look("gulls", Shelf));

    [Fact]
    public void Any_offcut_looks_the_same_with_every_stash() => Assert.Equal(BuiltIn.AnyOffcut, OffcutKinds.Look(null, Shelf));

    [Fact]
    public void A_misspelt_kind_is_reported_with_the_nearest_word()
    {
        var findings = Stashed.Card("role scrap: any offcut of patternd\nfront\n  panel 2 x 2, of scrap\n", Shelf).Findings;
        Assert.Equal("Did you mean patterned?", Assert.Single(findings).Hint);
    }
}
