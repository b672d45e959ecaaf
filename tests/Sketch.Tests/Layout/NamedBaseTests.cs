using Sketch.Diagnostics;
using Sketch.Stationery;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

public class NamedBaseTests
{
    /// <summary>Flat sizes of bases, as printed in US size tables and on pages about metric cards.</summary>
    [Theory]
    [InlineData("A1, fold left", "7 x 4 7/8")]
    [InlineData("A2, fold left", "8 1/2 x 5 1/2")]
    [InlineData("A2, fold top", "4 1/4 x 11")]
    [InlineData("US A6, fold left", "9 x 6 1/4")]
    [InlineData("US A7, fold left", "10 x 7")]
    [InlineData("US A8, fold left", "10 1/2 x 7 7/8")]
    [InlineData("A9, fold left", "11 x 8 1/2")]
    [InlineData("no10, fold left", "7 3/4 x 9 1/4")]
    [InlineData("slimline, fold left", "7 x 8 1/2")]
    [InlineData("ISO A6, fold left", "210 mm x 148 mm")] // A5, scored at 105
    [InlineData("DL, fold left", "198 mm x 210 mm")] // scored at 99
    [InlineData("6 x 6, fold left", "12 x 6")]
    public void The_flat_size_of_a_base_is_the_published_one(string size, string flat) =>
        Assert.Equal(Measure.Size(flat), Laid.Out($"card \"Test\"\nbase {size}, of white\nfront\n").Base.Flat);

    [Theory]
    [InlineData("A2", Fold.Left)] // upright
    [InlineData("A2, landscape", Fold.Top)]
    public void The_default_fold_follows_from_the_orientation(string size, Fold fold) =>
        Assert.Equal(fold, Laid.Out($"card \"Test\"\nbase {size}, of white\nfront\n").Base.Fold);

    [Theory]
    [InlineData("inches")]
    [InlineData("mm")]
    public void Units_never_change_what_a_name_means(string units) => Assert.Equal(
        Measure.Size("4 1/4 x 5 1/2"),
        Laid.Out($"card \"Test\"\n{(units == "mm" ? "units mm\n" : "")}base A2, fold left, of white\nfront\n").Base.Closed);

    [Fact]
    public void The_layout_keeps_the_name_of_the_size() =>
        Assert.Equal("A2", Laid.Out("card \"Test\"\nbase a2, of white\nfront\n").Base.SizeName);

    [Fact]
    public void A_name_that_exists_in_both_systems_is_ambiguous()
    {
        var error = Assert.Single(
            Compiler.Compile(new SourceText("card.card", "card \"Test\"\nbase A6, of white\nfront\n"), new TestWorld()).Findings,
            f => f.Severity == Severity.Error);
        Assert.Contains("US A6", error.Hint);
        Assert.Contains("ISO A6", error.Hint);
    }

    [Fact]
    public void ISO_A2_is_the_sheet_of_paper() =>
        Assert.Equal(Measure.Size("420 mm x 594 mm"), Laid.Out("card \"Test\"\nbase ISO A2, of white\nfront\n").Base.Closed);
}
