using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.Demand;

/// <summary>A batch makes a card with other words, another base or other pieces than its file has.</summary>
public class ChangedCardsTests
{
    private const string Card = "card \"Ahoy\"\nbase A2, fold left, of white\nfront\n  words: strip 3 x 1 \"Ahoy\", of cream\n";

    [Fact]
    public void Other_words_are_those_of_this_run_alone()
    {
        var designs = Read("make 2 of \"ahoy.card\"\nmake 3 of \"ahoy.card\"\n  change words: \"Bon voyage\"\n").Designs;
        Assert.Equal(["Ahoy", "Bon voyage"], designs.Select(d => WordsOf(d.Card)));
    }

    [Fact]
    public void Another_base_can_refit_the_card()
    {
        var design = Assert.Single(Read("make 2 of \"ahoy.card\"\n  base 8 1/2 x 11, fold left, of white\n  refit all\n").Designs);
        Assert.Equal(new Size(Length.Inch(17), Length.Inch(11)), design.Card.Base.Flat);
        Assert.Equal(Length.Inch(6), design.Card.Pieces[0].Box.Width);
    }

    [Fact]
    public void Pieces_can_be_added_and_left_out()
    {
        var design = Assert.Single(Read(
            "make 2 of \"ahoy.card\"\n  leave out words\n  add to front\n    star 1, of gold\n").Designs);
        Assert.Equal("front/star", Assert.Single(design.Card.Pieces).Path.ToString());
    }

    [Fact]
    public void The_design_keeps_the_title_of_its_card() =>
        Assert.Equal("Ahoy", Assert.Single(Read("make 2 of \"ahoy.card\"\n  change words: \"Land ho\"\n").Designs).Card.Title);

    [Fact]
    public void A_mistake_in_a_change_is_reported_in_the_batch()
    {
        var world = World();
        var batch = new SourceText("day.batch", "batch \"Day\"\nmake 2 of \"ahoy.card\"\n  change wrods: \"x\"\n");
        var findings = BatchCheck.Of(Compiler.Compile(batch, world), world).Findings;
        var mistake = findings.First(f => f.Code == "SK203");
        Assert.Equal(("day.batch", 3, 10),
            (mistake.Location.Source.Path, mistake.Location.Start.Line, mistake.Location.Start.Column));
    }

    [Fact]
    public void A_name_without_its_parents_is_answered_with_the_whole_path()
    {
        const string nested = "card \"Ahoy\"\nbase A2, of white\nfront\n  sky: panel 4 x 4, of blue\n"
            + "    words: strip 3 x 1 \"Ahoy\", of cream\n";
        var world = new TestWorld().WithText("ahoy.card", nested);
        var batch = new SourceText("day.batch", "batch \"Day\"\nmake 2 of \"ahoy.card\"\n  change words: \"Land ho\"\n");
        var mistake = BatchCheck.Of(Compiler.Compile(batch, world), world).Findings.First(f => f.Code == "SK203");
        Assert.Equal("sky/words", mistake.Replacement);
    }

    [Fact]
    public void A_kind_in_place_of_a_name_is_answered_with_how_to_name_the_piece()
    {
        var world = new TestWorld().WithText("ahoy.card", "card \"Ahoy\"\nbase A2, of white\nfront\n  tag 1 x 2 \"Ahoy\", of cream\n");
        var batch = new SourceText("day.batch", "batch \"Day\"\nmake 2 of \"ahoy.card\"\n  change tag: \"Land ho\"\n");
        var mistake = BatchCheck.Of(Compiler.Compile(batch, world), world).Findings.First(f => f.Code == "SK203");
        Assert.Equal("Give the tag a name in its own file, as in words: tag, and write that name here.", mistake.Hint);
    }

    private static string WordsOf(LaidOutCard card) => card.Pieces.Single(p => p.Words is not null).Words!.Text;

    private static BatchFiles Read(string lines) =>
        BatchFiles.Read(new SourceText("day.batch", "batch \"Day\"\n" + lines), World(), new())!;

    private static TestWorld World() => new TestWorld().WithText("ahoy.card", Card);
}
