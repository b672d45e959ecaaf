using Sketch.Output.Folders;
using Sketch.Starts;
using Sketch.Stationery;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Starts;

public class BegunCardTests
{
    private static readonly FolderFiles World = new();

    public static TheoryData<string> Layouts() => [.. StartingLayouts.All.Select(l => l.Name)];

    [Theory]
    [MemberData(nameof(Layouts))]
    public void A_layout_has_no_finding_in_any_size_and_fold_that_is_offered(string name)
    {
        var layout = StartingLayouts.Find(name)!;
        var findings =
            from size in layout.Sizes
            from fold in layout.Folds
            from finding in Compile(BegunCard.Write(layout, "Fair winds", size, fold)).Findings
            select $"{size.Written}, {fold}, line {finding.Location.Start.Line}: {finding.Message} {finding.Hint}";

        Assert.Equal("", string.Join('\n', findings));
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void The_card_has_the_size_and_the_fold_that_are_asked_for(string name)
    {
        var layout = StartingLayouts.Find(name)!;
        foreach (var (size, fold) in from size in layout.Sizes from fold in layout.Folds select (size, fold))
        {
            var card = Compile(BegunCard.Write(layout, "Fair winds", size, fold)).Card!;
            Assert.Equal((size.Closed, fold, "Fair winds"), (card.Base.Closed, card.Base.Fold, card.Title));
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void In_its_own_size_and_fold_the_layout_is_written_as_it_is(string name)
    {
        var layout = StartingLayouts.Find(name)!;
        var title = Compile(layout.Text.Content).Card!.Title;

        Assert.Equal(layout.Text.Content, BegunCard.Write(layout, title, layout.Sizes[0], layout.Folds[0]));
    }

    [Fact]
    public void At_least_twelve_layouts_are_offered_under_names_of_their_own() =>
        Assert.True(StartingLayouts.All.Select(l => l.Name).Distinct().Count() >= 12);

    [Fact]
    public void Lengths_of_a_metric_card_are_round_millimetres()
    {
        var layout = StartingLayouts.Find("feature-and-strip")!;

        var text = BegunCard.Write(layout, "Fair winds", layout.Sizes.First(s => s.Written == "ISO A6"), Fold.Left);

        Assert.Contains("units mm\nbase ISO A6, fold left, of white\n", text, StringComparison.Ordinal);
        Assert.Contains("panel, showing 3, of ground\n    mat +3, of deep\n", text, StringComparison.Ordinal);
        Assert.Contains("feature: circle 56, top 10, of accent, raised 2 mm\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("The \"light\"")]
    [InlineData("The “light”")]
    [InlineData("# one, two: three")]
    public void Any_title_can_be_read_again(string title)
    {
        var layout = StartingLayouts.All[0];

        var card = Compile(BegunCard.Write(layout, title, layout.Sizes[0], layout.Folds[0]));

        Assert.Empty(card.Findings);
        Assert.Equal(title.Replace('“', '"').Replace('”', '"'), card.Card!.Title);
    }

    private static Compilation Compile(string text) => Compiler.Compile(new SourceText("new.card", text), World);
}
