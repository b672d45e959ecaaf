using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Syntax;

/// <summary>The words that a maker says lead to the words of the language.</summary>
public sealed class EverydayWordTests
{
    private const string Card = "card \"x\"\nbase A2, of white\nfront\n  sky: panel 4 x 5, of navy\n    ";

    [Theory]
    [InlineData("layer 3 x 3", "panel")]
    [InlineData("background 3 x 3", "panel")]
    [InlineData("satin 3 x 1/2", "ribbon")]
    [InlineData("band 3 x 1/2", "strip")]
    [InlineData("string 1/16", "twine")]
    [InlineData("backing", "mat")]
    [InlineData("border 1/4", "frame")]
    [InlineData("label 1", "tag")]
    [InlineData("decal 1", "sticker")]
    [InlineData("belly 3 x 1/2", "strip")]
    [InlineData("overlay 3 x 3", "panel")]
    [InlineData("garland 1", "pennant")]
    [InlineData("gemstone 1/8", "gem")]
    [InlineData("sunburst 1", "star")]
    [InlineData("badge 1", "scallop")]
    [InlineData("bubble 2 x 1", "rounded")]
    [InlineData("anchor 1", "outline")]
    [InlineData("phrase \"ahoy\"", "sentiment")]
    [InlineData("star 1, turned 5", "turn")]
    [InlineData("text \"ahoy\", cursive", "lettering script")]
    [InlineData("text \"ahoy\", lettering calligraphy", "formal")]
    [InlineData("text \"ahoy\", handwritten", "lettering handwriting")]
    [InlineData("flag 2 x 1/2", "banner or pennant")]
    [InlineData("bunting 1", "pennant")]
    [InlineData("spot 1/2", "circle or dot")]
    [InlineData("disc 1/2", "circle")]
    [InlineData("eyelet 1/8", "brad")]
    [InlineData("sequin 1/8", "gem")]
    [InlineData("rhinestone 1/8", "gem")]
    [InlineData("teardrop 1/2", "drop")]
    [InlineData("doily 2", "scallop")]
    [InlineData("ellipse 2 x 1", "oval")]
    [InlineData("butterfly 1", "outline")]
    [InlineData("cut-out 2 \"ahoy\"", "word")]
    [InlineData("die-cut 2 \"ahoy\"", "word")]
    [InlineData("greeting \"ahoy\"", "sentiment")]
    [InlineData("title \"ahoy\"", "text")]
    [InlineData("caption \"ahoy\"", "text")]
    [InlineData("picture 1", "stamp")]
    [InlineData("hole 1 x 1", "window")]
    [InlineData("3 gems 1/8, in a row", "gem")]
    [InlineData("3 rhinestones 1/8, in a row", "gem")]
    [InlineData("rope: belly-band 3 x 1/2", "strip")]
    [InlineData("banner 2 x 1/2, fishtail right", "swallowtail")]
    [InlineData("text \"ahoy\", curved 60", "arched")]
    [InlineData("text \"ahoy\", uppercase", "capitals")]
    [InlineData("text \"ahoy\", caps", "capitals")]
    [InlineData("text \"ahoy\" \"there\", left-aligned", "ranged left")]
    [InlineData("panel 2 x 2, rounded 1/8", "corners")]
    [InlineData("star 1, popped", "on foam")]
    [InlineData("star 1, tilted 5", "turn")]
    [InlineData("star 1, behind", "tucked under")]
    [InlineData("3 star 1/2, in a row, spacing 1/8", "gap")]
    public void An_everyday_word_proposes_the_word_of_the_language(string line, string meant)
    {
        var found = Assert.Single(Compile(Card + line + "\n"));
        Assert.Equal(($"Did you mean {meant}?", meant.Split(" or ")[0]), (found.Hint, found.Replacement));

        var (content, span) = (found.Location.Source.Content, found.Location.Span);
        var cured = Compile(content[..span.Start] + found.Replacement + content[span.End..]);
        Assert.DoesNotContain(cured, f => f.Code == found.Code);
    }

    [Theory]
    [InlineData("cover\n  star 1, of red", "front")]
    [InlineData("interior\n  text \"ahoy\"", "inside")]
    public void An_everyday_word_for_a_face_proposes_the_face(string lines, string meant) =>
        Assert.Equal(meant, Compile($"card \"x\"\nbase A2, of white\n{lines}\n")[0].Replacement);

    [Fact]
    public void Every_proposal_begins_with_a_word_of_the_language()
    {
        string[] units = ["in", "mm", "cm", "gsm", "lb"];
        string[] known =
            [.. Vocabulary.CardLines, .. Vocabulary.BatchLines, .. Vocabulary.ClauseWords,
                .. units, .. LetteringKinds.All.Select(k => k.Word), "gate", "z"];
        Assert.All(EverydayWords.All, w => Assert.Contains(w.Meant.Split(' ')[0], known));
    }

    [Theory]
    [InlineData("light blue", "lightblue")]
    [InlineData("Dark Green", "DarkGreen")]
    [InlineData("light sea green", "lightseagreen")]
    public void The_words_of_a_colour_name_may_stand_apart(string written, string name)
    {
        var paint = Assert.Single(Reading.Clause<OfClause>($"of {written}").Paints);
        Assert.Equal((name, false), (paint.Text, paint.IsHex));
        Assert.Empty(Compile($"{Card}star 1, of {written}\n"));
    }

    [Fact]
    public void Two_colours_of_a_pattern_remain_two()
    {
        var role = Assert.IsType<RoleLine>(Reading.File("card \"x\"\nrole rope: dots orange red\n").File.Lines[1]);
        Assert.Equal(["orange", "red"], role.Colours.Select(c => c.Text));
    }

    [Fact]
    public void A_role_takes_a_colour_name_of_two_words_but_a_paper_and_its_colour_stay_apart()
    {
        var roles = Reading.File("card \"x\"\nrole sea: light blue\nrole sky: sky blue\n").File.Lines.OfType<RoleLine>().ToList();
        Assert.Equal(("lightblue", 0), (roles[0].Paper!.Text, roles[0].Colours.Length));
        Assert.Equal(("sky", "blue"), (roles[1].Paper!.Text, roles[1].Colours[0].Text));
    }

    [Theory]
    [InlineData("on tag", "tag")]
    [InlineData("on the tag", "tag")]
    [InlineData("on top of sky", "sky")]
    public void What_a_piece_lies_on_is_said_by_indentation(string clause, string under)
    {
        var found = Assert.Single(Compile($"{Card}text \"ahoy\", {clause}, of white\n"));
        Assert.Equal(("SK111", $"Remove this clause, and indent the line under {under}."), (found.Code, found.Hint));
    }

    [Theory]
    [InlineData("panel 3 x 3, matted in blue", "mat +1/8")]
    [InlineData("panel 3 x 3, double mat", "mat +1/8")]
    [InlineData("panel, inset 1/8", "showing 1/8")]
    [InlineData("panel width 3, of red", "width x height")]
    [InlineData("star 1, at the top", "Write top 1/4")]
    [InlineData("star 1, next to sky", "right of sky by 1/8")]
    [InlineData("star 1, offset 1/4", "shift right 1/8")]
    [InlineData("4 star 1/2, evenly spaced", "spread")]
    [InlineData("4 star 1/2, spaced 1/8", "gap 1/8")]
    [InlineData("4 star 1/2, in 2 rows", "in a grid 2 across")]
    [InlineData("4 star 1/2, overlapping", "gap -1/8")]
    [InlineData("panel 3 x 3, embossed", "note \"Emboss the panel.\"")]
    [InlineData("panel 3 x 3, drop shadow", "shadow 1/16 of navy")]
    [InlineData("panel 3 x 3, cut out circle 1", "window circle 2")]
    [InlineData("text \"ahoy\", size 1/4", "letters 1/4")]
    [InlineData("text \"ahoy\", all caps", "capitals")]
    [InlineData("text \"ahoy\", navy", "of navy")]
    [InlineData("text \"ahoy\", font script", "lettering script")]
    [InlineData("text \"ahoy\", lettering bold", "lettering plain bold")]
    [InlineData("text \"ahoy\", on an arc", "arched 60")]
    [InlineData("pennant row 1/2", "5 pennant 1/2, in a row")]
    [InlineData("row of 5 pennant 1/2", "5 pennant 1/2, in a row")]
    [InlineData("three gems 1/8", "3 gem 1/8")]
    [InlineData("washi tape 2 x 1/2", "Write tape")]
    [InlineData("foam square 1/2", "square 1, on foam")]
    [InlineData("text \"ahoy\", script", "lettering script")]
    [InlineData("star 1, red cardstock", "of red")]
    [InlineData("star 1, of red, blue", "of red and blue, in turn")]
    [InlineData("fishtail 2 x 1/2", "banner")]
    [InlineData("gift tag 1", "Write tag")]
    [InlineData("bow, of red", "Write bow 1.")]
    [InlineData("layered panel 2 x 2", "mat +1/8")]
    [InlineData("mat 1/8 larger than sky, of red", "Write +1/8")]
    [InlineData("sentiment \"ahoy\", of white, backing 1/8", "mat +1/8")]
    [InlineData("star 1, of light-blue", "lightblue")]
    [InlineData("3 red gems 1/8, in a row", "Write 3 gem, with its size, and of red")]
    [InlineData("star 1, on pop dots", "on foam")]
    [InlineData("star 1, flush left", "left 0")]
    [InlineData("star 1, from top 1/4", "the side with its distance")]
    [InlineData("star 1, in the corner", "upper left 1/4")]
    [InlineData("star 1, in top left corner", "upper left 1/4")]
    [InlineData("star 1, top centre", "top 1/4; a piece is centred")]
    [InlineData("star 1, glued", "on foam 3 mm")]
    [InlineData("frame circle 2", "frame 1/8, around moon")]
    [InlineData("torn strip 3 x 1", "torn bottom")]
    [InlineData("embossed panel 2 x 2", "note \"Emboss the panel.\"")]
    [InlineData("panel 2 x 2, of gold glitter", "of gold-glitter, and declare it above the faces: role gold-glitter: gold")]
    [InlineData("corner 1", "square 1/2, upper left 0")]
    [InlineData("4 corner 1/2, of gold", "square 1/2, upper left 0")]
    [InlineData("glitter 3 x 3", "of glitter")]
    [InlineData("postage stamp 1 x 1", "panel 1 x 1 1/4, scalloped 1/16")]
    [InlineData("postage-stamp 1 x 1", "panel 1 x 1 1/4, scalloped 1/16")]
    [InlineData("chipboard star 1", "raised 1 mm")]
    [InlineData("text \"ahoy\", around circle 2", "on circle 2")]
    [InlineData("text \"ahoy\", around a circle", "on circle 2")]
    public void A_plain_turn_is_answered_with_what_to_type(string line, string typed) =>
        Assert.Contains(typed, Assert.Single(Compile(Card + line + "\n"), f => f.Code != "SK212").Hint, StringComparison.Ordinal);

    [Theory]
    [InlineData("panel 3 wide x 2 high, of red", "3 x 2")]
    [InlineData("panel 3\" wide by 2\" tall, of red", "3\" x 2\"")]
    [InlineData("panel 2 high x 3 wide, of red", "3 x 2")]
    [InlineData("heart sticker 1, of red", "sticker heart")]
    [InlineData("star gem 1/4, of red", "gem star")]
    [InlineData("star 1, of red, turn 10 clockwise", "right 10")]
    [InlineData("star 1, of red, turn 10 deg anticlockwise", "left 10")]
    [InlineData("star 1, of red, turn 10°", "")]
    [InlineData("star 1, of red, left edge 1/4", "left")]
    [InlineData("text \"ahoy\", spaced 10%", " percent")]
    [InlineData("text \"ahoy\", in script", "lettering script")]
    [InlineData("text \"ahoy\", in bold", "lettering plain bold")]
    [InlineData("text \"ahoy\" \"there\", left justified", "ranged left")]
    [InlineData("2 mm twine, along bottom, of red", "twine 2 mm")]
    [InlineData("3 x 2 panel, of red", "panel 3 x 2")]
    [InlineData("text \"ahoy\", around circle 2", "on circle")]
    public void A_turn_is_replaced_by_its_words_in_the_language(string line, string replacement)
    {
        var found = Assert.Single(Compile(Card + line + "\n"));
        var (content, span) = (found.Location.Source.Content, found.Location.Span);
        Assert.Equal(replacement, found.Replacement);
        Assert.Empty(Compile(content[..span.Start] + found.Replacement + content[span.End..]));
    }

    [Theory]
    [InlineData("line gold: 1/16, 10 strips of 12", "line gold: 1/16, 10 strips, 12 long")]
    [InlineData("twine jute: 2 mm, 50 ft roll", "twine jute: 2 mm, 1 roll, 50 ft long")]
    [InlineData("ribbon red: 3/8, 2 yards long", "ribbon red: 3/8, 2 yd long")]
    public void Lengths_in_a_stash_are_replaced_by_their_clauses(string line, string meant)
    {
        var stash = $"stash \"x\"\n{line}\n";
        var found = Assert.Single(Reading.File(stash).Findings);
        Assert.Equal($"stash \"x\"\n{meant}\n", stash[..found.Location.Span.Start] + found.Replacement + stash[found.Location.Span.End..]);
    }

    [Theory]
    [InlineData("base card A2, landscape orientation")]
    [InlineData("base A2 card, landscape format")]
    [InlineData("base 4 1/4 x 5 1/2 card, upright orientation")]
    public void A_base_may_be_said_in_more_words(string line) =>
        Assert.Empty(Compile($"card \"x\"\n{line}, of white\nfront\n  star 1, of red\n"));

    [Theory]
    [InlineData("star 1, of red cardstock")]
    [InlineData("star 1, of white paper")]
    [InlineData("star 1, of gold foil")]
    [InlineData("star 1, on foam tape, of red")]
    [InlineData("star 1, on foam dots, of red")]
    [InlineData("panel 3 x 3, torn all round, of red")]
    [InlineData("star 1, turn 10 deg, of red")]
    [InlineData("panel 3 x 3, torn edges, of red")]
    [InlineData("panel 3 x 3, torn bottom edge 1/8, of red")]
    public void A_plain_turn_with_one_meaning_is_accepted(string line) => Assert.Empty(Compile(Card + line + "\n"));

    [Fact]
    public void Cards_that_are_shared_have_a_number_of_makers()
    {
        var found = Assert.Single(Reading.File("batch \"x\"\nfor \"Cliff ward\", 24 cards, shared by 2\n").Findings);
        Assert.Equal("Write 2 makers.", found.Hint);
    }

    [Theory]
    [InlineData("turn 10 degrees", 10)]
    [InlineData("turn left 1 degree", -1)]
    public void A_turn_may_name_its_unit(string clause, double degrees) =>
        Assert.Equal(degrees, Reading.Clause<TurnClause>(clause).Degrees);

    [Fact]
    public void Bold_takes_the_kind_of_lettering_of_the_card() =>
        Assert.Equal("lettering script bold",
            Assert.Single(Reading.File("card \"x\"\nlettering script\nfront\n  text \"ahoy\", bold\n").Findings).Replacement);

    private static Finding[] Compile(string text) =>
        [.. Compiler.Compile(new SourceText("a.card", text), new TestWorld()).Findings
            .Where(f => f.Severity == Severity.Error || f.Code == "SK210")];
}
