using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Syntax;

public class MistakeTests
{
    [Theory]
    [InlineData("shadow 1/16 of navy", "shadow")]
    [InlineData("raised 2 mm", "raised")]
    [InlineData("swallowtail both", "swallowtail")]
    public void A_clause_on_a_line_of_its_own_is_sent_to_the_line_of_its_piece(string line, string word)
    {
        var (_, findings) = Reading.File($"card \"x\"\nbase A2, of white\nfront\n  star 2, of gold\n    {line}\n");
        Assert.Equal($"Write {word} on the line of its piece, after a comma.", Assert.Single(findings).Hint);
    }

    [Theory]
    [InlineData("blue waves", "blue-waves", "waves blue")]
    [InlineData("waves blue", "waves-blue", "waves blue")]
    [InlineData("Gingham Red", "gingham-red", "gingham red")]
    public void A_pattern_with_its_colour_on_a_piece_is_sent_to_a_role(string paper, string role, string paint)
    {
        var mistake = Assert.Single(Reading.Mistakes($"panel 2 x 3, of {paper}"));
        Assert.Equal(
            (role, $"Write of {role}, and declare it above the faces: role {role}: {paint}."), (mistake.Replacement, mistake.Hint));
        Assert.Empty(Reading.File($"card \"x\"\nbase A2, of white\nrole {role}: {paint}\nfront\n  panel 2 x 3, of {role}\n").Findings);
    }

    [Theory]
    [InlineData("star 1, at the bottom", "bottom 1/4")]
    [InlineData("star 1, at the top 1/2", "top 1/2")]
    [InlineData("star 1, near the left edge, of gold", "left 1/4")]
    [InlineData("star 1, in the top right corner", "upper right 1/4")]
    [InlineData("star 1, in the bottom left-hand corner", "lower left 1/4")]
    [InlineData("star 1, in the middle of the card", "centre")]
    [InlineData("star 1, at the top centre", "top 1/4")]
    [InlineData("star 1 of gold in the middle", ", centre")]
    [InlineData("star 1 of gold at the top left", ", upper left 1/4")]
    [InlineData("strip 1 high, across the bottom", "bottom 1/4")]
    [InlineData("star 1, 1/2 from the left edge", "left 1/2")]
    [InlineData("star 1, 1/2 from the top", "top 1/2")]
    [InlineData("star 1, 1/2 down from the top", "top 1/2")]
    [InlineData("strip 1/2 wide, down the left side", "left 1/4")]
    public void A_place_in_everyday_words_becomes_a_clause(string line, string clause) =>
        Assert.Equal(clause, Applied(line).Replacement);

    [Theory]
    [InlineData("units mm", "star 25, at the bottom", "bottom 6")]
    [InlineData("units cm", "star 2.5, at the bottom", "bottom 0.6")]
    public void A_place_without_a_distance_gets_one_in_the_units_of_the_file(string units, string line, string clause)
    {
        var (_, findings) = Reading.File($"card \"x\"\n{units}\nbase A2, of white\nfront\n  {line}\n");
        Assert.Equal(clause, Assert.Single(findings).Replacement);
    }

    [Theory]
    [InlineData("strip of gold 1 high", "strip 1 high, of gold")]
    [InlineData("star of gold 1", "star 1, of gold")]
    [InlineData("panel of gold, 3 x 2, left 1/4", "panel 3 x 2, of gold")]
    [InlineData("gem star of gold, 1/4", "gem star 1/4, of gold")]
    [InlineData("banner \"ahoy\", of gold, 3 x 1", "banner \"ahoy\" 3 x 1, of gold")]
    public void A_size_among_the_clauses_goes_before_them(string line, string corrected) =>
        Assert.Equal(corrected, Applied(line).Replacement);

    [Theory]
    [InlineData("mat of gold 1/8")]
    [InlineData("mat, of gold, 1/8")]
    public void The_size_of_a_mat_among_the_clauses_may_be_its_border(string line)
    {
        var (_, findings) = Reading.File($"card \"x\"\nbase A2, of white\nfront\n  star 2, of red\n    {line}\n");
        Assert.Equal("Write mat +1/8 for both sides together, or mat, border 1/8 for each side.", Assert.Single(findings).Hint);
    }

    [Theory]
    [InlineData("white panel 4 x 3", "panel 4 x 3, of white")]
    [InlineData("3 gold star 1/2, in a row", "star 1/2, of gold")]
    [InlineData("lamp: gold star 1 centre, raised 2 mm", "star 1 centre, of gold")]
    public void A_colour_before_the_kind_goes_behind_it(string line, string corrected) =>
        Assert.Equal(corrected, Applied(line).Replacement);

    [Theory]
    [InlineData("a panel 3 x 2")]
    [InlineData("the star 1")]
    [InlineData("lamp: a star 1")]
    public void An_article_before_the_kind_is_removed_with_its_blank(string line) => Assert.Equal("", Applied(line).Replacement);

    [Fact]
    public void A_side_is_written_without_an_article() => Assert.Equal("", Applied("strip full x 1, along the bottom").Replacement);

    [Theory]
    [InlineData("circle 2 diameter", "")]
    [InlineData("circle radius 1", null)]
    public void The_size_of_a_circle_is_its_diameter(string line, string? replacement)
    {
        var mistake = Reading.Mistakes(line)[0];
        Assert.Equal(("The size of a circle is its diameter.", replacement), (mistake.Message, mistake.Replacement));
    }

    [Theory]
    [InlineData("paper sky: waves blue", "role")]
    [InlineData("colour sky: blue", "role")]
    [InlineData("paper sky is blue", null)]
    public void A_paper_that_is_named_in_a_card_is_a_role(string line, string? word)
    {
        var (_, findings) = Reading.File($"card \"x\"\nbase A2, of white\n{line}\nfront\n  star 1\n");
        var mistake = Assert.Single(findings);
        Assert.Equal((word, "Write role sky: and its paper or colour."), (mistake.Replacement, mistake.Hint));
    }

    [Theory]
    [InlineData("paper sky: 12 x 12")]
    [InlineData("cardstock cream: A4")]
    public void A_line_of_a_stash_whose_first_line_is_misspelt_is_no_role(string line) =>
        Assert.DoesNotContain(Reading.File($"satsh \"x\"\n{line}, 4 sheets\n").Findings,
            f => f.Hint.Contains("role", StringComparison.Ordinal));

    [Fact]
    public void A_size_after_the_title_goes_on_the_next_line()
    {
        const string text = "card \"x\" 5 x 7 in, fold top # a tent\nfront\n  star 1\n";
        var mistake = Assert.Single(Reading.File(text).Findings);
        Assert.StartsWith("card \"x\" \nbase 5 x 7 in, fold top # a tent\n", Followed(text, mistake), StringComparison.Ordinal);
    }

    /// <summary>The text after the change that a finding offers.</summary>
    private static string Followed(string text, Finding finding) =>
        TextEdit.Apply(text, [new(finding.Location.Span, finding.Replacement!)]);

    /// <summary>The only mistake of a line, which following its hint removes.</summary>
    private static Finding Applied(string line)
    {
        string Card(string piece) => $"card \"x\"\nbase A2, of white\nfront\n  {piece}\n";
        var mistake = Assert.Single(Reading.File(Card(line)).Findings);
        Assert.Empty(Reading.File(Followed(Card(line), mistake)).Findings);
        return mistake;
    }

    [Fact]
    public void Words_on_a_line_of_their_own_become_a_text()
    {
        var mistake = Assert.Single(Reading.Mistakes("\"With thanks\""));
        Assert.Equal(("text \"With thanks\"", "Write text \"With thanks\"."), (mistake.Replacement, mistake.Hint));
    }

    [Fact]
    public void A_make_line_without_of_gets_it()
    {
        const string text = "batch \"x\"\nmake 12 \"gull.card\"\n";
        var mistake = Assert.Single(Reading.File(text, "x.batch").Findings);
        Assert.Equal("Write make 12 of \"gull.card\".", mistake.Hint);
        Assert.Empty(Reading.File(Followed(text, mistake), "x.batch").Findings);
    }

    [Theory]
    [InlineData("make 12 gull.card", "Write make 12 of \"gull.card\".")]
    [InlineData("make 12 of gull.card", "Write of \"gull.card\".")]
    [InlineData("12 of gull.card", "Write make 12 of \"gull.card\".")]
    [InlineData("12 x \"gull.card\"", "Write make 12 of \"gull.card\".")]
    [InlineData("uses shelf.stash", "Write stash \"shelf.stash\".")]
    public void A_line_of_a_batch_with_a_file_gets_its_words_and_quotes(string line, string hint)
    {
        var text = $"batch \"x\"\n{line}\n";
        var mistake = Assert.Single(Reading.File(text, "x.batch").Findings);
        Assert.Equal(hint, mistake.Hint);
        Assert.Empty(Reading.File(Followed(text, mistake), "x.batch").Findings);
    }

    [Fact]
    public void A_file_name_ends_at_its_ending() => Assert.Equal("of \"gull.card\"",
        Reading.File("batch \"x\"\nmake 12 gull.card in red and blue\n", "x.batch").Findings[0].Replacement);

    [Fact]
    public void A_line_of_a_stash_without_a_kind_gets_a_name_of_one_word() =>
        Assert.Equal("Write paper navy-stars: 12 x 12, 3 sheets, with its own size and number.",
            Assert.Single(Reading.File("stash \"x\"\nnavy stars 3 sheets\n", "x.stash").Findings).Hint);

    [Theory]
    [InlineData("x.card", "card \"x\"\nbase A2, of white\nrole sea: night/back\nfront\n  strip full x 1, of sea\n")]
    [InlineData("x.batch", "batch \"x\"\nmake 2 of \"x.card\"\n  role sea: night/back\n")]
    public void The_side_of_a_paper_is_written_as_a_clause(string path, string text)
    {
        var mistake = Assert.Single(Reading.File(text, path).Findings);
        Assert.Equal("Write night, back.", mistake.Hint);
        Assert.Empty(Reading.File(Followed(text, mistake), path).Findings);
    }

    [Theory]
    [InlineData("line 1/16, along top 1/4, of gold", "top, top 1/4")]
    [InlineData("strip full x 1, along left 1 1/2", "left, left 1 1/2")]
    public void A_distance_after_along_becomes_a_clause_of_its_own(string line, string offer)
    {
        var mistake = Assert.Single(Reading.Mistakes(line));
        Assert.Equal((offer, $"Write along {offer}."), (mistake.Replacement, mistake.Hint));
    }

    [Theory]
    [InlineData("pannel 3 x 4", "panel")]
    [InlineData("lamp: sttar 2", "star")]
    [InlineData("3 gems 1/8", "gem")]
    [InlineData("4 squrae 1", "square")]
    [InlineData("hart 1, of gold", "heart")]
    [InlineData("star 2, rasied 2 mm", "raised")]
    [InlineData("star 2, botom 1", "bottom")]
    [InlineData("star 2, aboev lamp", "above")]
    [InlineData("star 2, swalowtail left", "swallowtail")]
    [InlineData("banner 2 x 1, swallowtail rigth", "right")]
    [InlineData("strip full x 1, along tpo", "top")]
    [InlineData("star 2, shift upp 1/8", "up")]
    [InlineData("3 star 1, in a rwo", "row")]
    [InlineData("star 2, on foma", "foam")]
    [InlineData("star 2, same size sa sky", "as")]
    public void A_misspelt_word_gets_the_nearest_one_as_a_hint(string line, string offer)
    {
        var mistake = Assert.Single(Reading.Mistakes(line));
        Assert.Equal((offer, $"Did you mean {offer}?"), (mistake.Replacement, mistake.Hint));
    }

    [Theory]
    [InlineData("star 2, over bottom", "Expected the word of, found the end of the line.", "Write over bottom of pic.")]
    [InlineData("star 2, over pic", "Expected left, right, top or bottom, found 'pic'.", "Write over bottom of pic.")]
    [InlineData("star 2, in a line", "Expected row, column, grid or honeycomb, found 'line'.",
        "Write in a row, in a column, in a grid 2 across, in a honeycomb 4 across, or in turn.")]
    [InlineData("star 2, shift 1/8", "Expected left, right, up or down, found '1/8'.", "Write shift up 1/8.")]
    [InlineData("star 2, turn left", "Expected a number of degrees after turn left, found the end of the line.",
        "Write turn left 5, in degrees.")]
    [InlineData("star 2, left", "Expected a length, found the end of the line.", "Write left 1/4.")]
    [InlineData("star 2, of", "Expected a role or colour, found the end of the line.", "Write of navy, or of #16324f.")]
    [InlineData("panel full", "Expected x and the height, found the end of the line.", "Write width x height, such as full x 3/4.")]
    [InlineData("panel full x share 2", "Expected a fraction up to 1/1, found '2'.", "Write share 2/3.")]
    [InlineData("star 2, top 1 left 1", "Expected a comma before 'left', or it does not belong here.",
        "Put a comma before 'left' if it starts a new clause.")]
    [InlineData("star 2, turn, of red", "Expected a number of degrees after turn, found ','.", "Write turn left 5, in degrees.")]
    [InlineData("gulls panel 2 x 3", "'gulls' cannot come before panel.",
        "Write panel, of gulls if that is its paper, or gulls: panel if that is its name.")]
    [InlineData("3 gems heart 1/4", "'gems' is not a kind of piece.", "Write gem heart.")]
    [InlineData("sky: gulls panel 2 x 3", "'gulls' cannot come before panel.", "Write panel, of gulls if that is its paper.")]
    [InlineData("3 gulls star 1/2", "'gulls' cannot come before star.",
        "Write star, of gulls if that is its paper, or gulls: star if that is its name.")]
    [InlineData("windwo circle 2", "A line cannot start with 'windwo'.", "Did you mean window?")]
    [InlineData("panel 4 by 3, of red", "Separate width and height with x, not 'by'.", "Write 4 x 3.")]
    [InlineData("panel 2 by 5/8, of red", "Separate width and height with x, not 'by'.", "Write 2 x 5/8.")]
    [InlineData("panel 2 y 3, of red", "Separate width and height with x, not 'y'.", "Write 2 x 3.")]
    [InlineData("panel 4*3, of red", "Separate width and height with x, not '*'.", "Write 4 x 3.")]
    [InlineData("star 2; of red", "';' has no meaning here.", "Use a comma between clauses.")]
    [InlineData("panel 3 x 3, of red, mat +1/8", "'mat' does not start a clause.",
        "Put the mat on its own line, indented under the piece it lies on.")]
    [InlineData("star [2]", "'[' has no meaning here.", "Change one copy of a repeat with an indented line below it: item 2: of pearl.")]
    public void A_missing_part_is_reported_with_an_example(string line, string message, string hint)
    {
        var mistake = Reading.Mistakes(line)[0];
        Assert.Equal((message, hint), (mistake.Message, mistake.Hint));
    }

    [Theory]
    [InlineData("star, 1 3/4, of gold", "Write star 1 3/4, then the clauses.")]
    [InlineData("word \"ahoy\", 2 wide, of red", "Write word 2 wide, then the clauses.")]
    [InlineData("panel of red, 2 5/8 x 3", "Write panel 2 5/8 x 3, then the clauses.")]
    [InlineData("strip of red, full x 3/4", "Write strip full x 3/4, then the clauses.")]
    [InlineData("window circle, 2", "Write window circle 2, then the clauses.")]
    [InlineData("mat, +1/8, of red", "Write mat +1/8, then the clauses.")]
    public void The_hint_for_a_size_after_a_comma_shows_where_it_belongs(string line, string hint)
    {
        var mistake = Assert.Single(Reading.Mistakes(line));
        Assert.Equal(("A size goes before the first comma.", hint), (mistake.Message, mistake.Hint));
    }

    [Theory]
    [InlineData("star 2, rasied 2 mm, of red", 1)]
    [InlineData("star 2, over pic, top 1/4, of red", 2)]
    [InlineData("star 1/3, top 1/4, of red", 2)]
    [InlineData("star 2, left 2,5, of red", 1)]
    public void Reading_continues_at_the_next_comma(string line, int clauses)
    {
        var (file, findings) = Reading.File($"card \"x\"\nfront\n  {line}\n");
        Assert.Single(findings);
        Assert.Equal(clauses, file.Lines[1].Children[0].Clauses.Length);
    }

    [Fact]
    public void An_unreadable_line_does_not_affect_the_pieces_on_it()
    {
        var (file, findings) = Reading.File("card \"x\"\nfront\n  pannel 3 x 4\n    star 1, of red\n  star 1/3\n");
        Assert.Equal(["SK110", "SK102"], findings.Select(f => f.Code));
        Assert.IsType<PieceLine>(Assert.Single(file.Lines[1].Children[0].Children));
    }

    [Theory]
    [InlineData("star 1/3")]
    [InlineData("star 1, of")]
    [InlineData("lamp: sttar 1\n  heart 1, above lamp, of red")]
    [InlineData("panel showing 1/3, of red")]
    public void One_mistake_is_one_finding(string pieces) =>
        Assert.Single(Compiler.Compile(new("a.card", $"card \"x\"\nbase A2, of white\nfront\n  {pieces}\n"), new TestWorld())
            .Findings
            .Where(f => string.CompareOrdinal(f.Code, "SK4") < 0));

    [Theory]
    [InlineData("front:")]
    [InlineData("inside left:")]
    [InlineData("back:")]
    [InlineData("envelope: US A2")]
    [InlineData("envelope back:")]
    public void A_face_with_a_colon_is_one_finding_and_still_a_face(string face)
    {
        var (file, findings) = Reading.File($"card \"x\"\n{face}\n  star 1\n");
        Assert.Equal(("SK113", ""), (Assert.Single(findings).Code, findings[0].Replacement));
        Assert.IsType<PieceLine>(Assert.Single(Assert.IsType<FaceLine>(file.Lines[1]).Children));
    }

    [Theory]
    [InlineData("card \"x\"\nabse A2, fold left\nfront\n  star 1, of red\n")]
    [InlineData("crad \"x\"\nbase A2\nfront\n  star 1, of red\n")]
    [InlineData("stsah \"x\"\npaper gulls: 12 x 12, 3 sheets\n")]
    [InlineData("bacth \"x\"\nmake 3 of \"a.card\"\n")]
    [InlineData("stash \"x\"\npaper gulls: 12 x 12, 3 shets\n")]
    [InlineData("stash \"x\"\ngem red: 1/8, 60 peices\n")]
    public void A_misspelt_word_is_the_only_finding_of_its_line(string text) =>
        Assert.StartsWith("Did you mean", Assert.Single(Compiler.Compile(new("a.card", text), new TestWorld()).Findings)
            .Hint, StringComparison.Ordinal);

    [Theory]
    [InlineData("cardstock navy: 25 sheets", "Write cardstock navy: 12 x 12, 3 sheets.")]
    [InlineData("envelope A2: 50", "Write width x height, such as 12 x 12.")]
    public void A_missing_size_in_a_stash_is_one_finding(string line, string hint) =>
        Assert.Equal(hint, Assert.Single(Compiler.Compile(new("a.stash", $"stash \"x\"\n{line}\n"), new TestWorld()).Findings).Hint);

    [Theory]
    [InlineData("gem gold 3 mm: 20", "gem gold: 3 mm, 20")]
    [InlineData("line silver 1/16 in: 40 ft long", "line silver: 1/16 in, 40 ft long")]
    [InlineData("envelope plain US A2: 50", "envelope plain: US A2, 50")]
    [InlineData("envelope: US A2, 50", "envelope plain: US A2, 50")]
    [InlineData("gem: 3 mm, 60", "gem red: 1/8 in, 60 pieces")]
    [InlineData("gem", "gem red: 1/8 in, 60 pieces")]
    [InlineData("line", "line silver: 1/16 in, 40 ft long")]
    [InlineData("foam", "foam white: 2 mm, 200 pieces")]
    [InlineData("tape", "tape sail: 1/2 in, 40 ft long")]
    [InlineData("envelope", "envelope plain: US A2, 50")]
    [InlineData("offcut", "offcut gulls: 6 x 4, 2")]
    [InlineData("cardstock", "cardstock navy: 12 x 12, 3 sheets")]
    [InlineData("gem red: 60 pieces", "gem red: 1/8 in, 60 pieces")]
    [InlineData("foam white: 60 pieces", "foam white: 2 mm, 200 pieces")]
    public void The_hint_for_an_incomplete_line_of_a_stash_is_a_valid_line(string line, string offer)
    {
        Assert.Equal($"Write {offer}.", Assert.Single(In(line)).Hint);
        Assert.Empty(In(offer));
        Assert.Empty(In(offer, "units mm\n"));

        static IReadOnlyList<Finding> In(string line, string units = "") =>
            [.. Compiler.Compile(new("a.stash", $"stash \"x\"\n{units}{line}\npaper gulls: A4, 3 sheets\n"), new TestWorld())
                .Findings];
    }

    [Theory]
    [InlineData("Dear all, this is my card",
        "Start with card \"Fair winds\", then base A2, fold left, of white, then faces such as front with their pieces indented below.")]
    [InlineData("stash \"x\"\ncupboard",
        "A line of a stash starts with paper, cardstock, offcut, gem, ribbon or another supply, envelope, units or note.")]
    [InlineData("batch \"x\"\nenvelopes 3", "Start with make, cut, for, stash or another word of a batch.")]
    [InlineData("stash \"x\"\npaper gulls: 12 x 12, sheets 3",
        "A paper takes clauses such as 3 sheets, trim 1/4 bottom, upright, front dots navy, weight 216 gsm or price 0.99.")]
    [InlineData("stash \"x\"\nline gold: 1/16, 25 ft", "Write 25 ft long.")]
    [InlineData("batch \"x\"\nmake 2 cards of \"a.card\"", "Remove 'cards'.")]
    [InlineData("batch \"x\"\nmake 2 of \"a.card\", sea: gulls", "Write role sea: and its paper on a line of its own, indented below.")]
    [InlineData("stash \"x\"\npaper: gulls 12 x 12, 3 sheets", "Write paper gulls: and its size.")]
    public void A_hint_fits_the_kind_of_file(string text, string hint) =>
        Assert.Equal(hint, Assert.Single(Reading.File(text).Findings).Hint);

    [Theory]
    [InlineData("navy: cardstock 12 x 12, 6 sheets", "Write cardstock navy: and its size.")]
    [InlineData("navy cardstock: 12 x 12, 6 sheets", "Write cardstock navy: and its size.")]
    [InlineData("gulls: 12 x 12, 6 sheets", "Write paper gulls: and its size.")]
    [InlineData("blue waves: 12 x 12, 4 sheets", "Write paper blue-waves: and its size.")]
    [InlineData("cardstock navy: 12 x 12, navy, 6 sheets", "Write front navy.")]
    [InlineData("paper gulls: 12 x 12, waves navy white, 6 sheets", "Write front waves.")]
    public void A_line_of_a_stash_in_another_order_gets_a_hint_that_can_be_applied(string line, string hint)
    {
        var text = $"stash \"x\"\n{line}\n";
        var mistake = Assert.Single(Reading.File(text, "x.stash").Findings);
        Assert.Equal(hint, mistake.Hint);
        Assert.Empty(Reading.File(Followed(text, mistake), "x.stash").Findings);
    }

    [Fact]
    public void A_misspelt_kind_of_stock_is_not_taken_for_a_name() =>
        Assert.Equal("Did you mean offcut?", Reading.File("stash \"x\"\nofcut big: 12 x 12, 2\n", "x.stash").Findings[0].Hint);

    [Fact]
    public void A_file_without_quotes_is_one_mistake() =>
        Assert.Equal("Write stash \"shelf.stash\".",
            Assert.Single(Reading.File("batch \"x\"\nstash shelf.stash\n", "x.batch").Findings).Hint);

    [Theory]
    [InlineData("fornt", "front")]
    [InlineData("frnt", "font")]
    public void Among_equally_near_words_the_one_of_the_same_length_is_offered(string written, string meant) =>
        Assert.Equal(meant, Nearest.Find(written, ["font", "front"]));

    [Theory]
    [InlineData("batch \"Day\"\nmeke 3 of \"a.card\"", "make")]
    [InlineData("batch \"Day\"\ncat 3 of 2 x 2 from gulls", "cut")]
    [InlineData("stash \"Shelf\"\nofcut 12 x 12", "offcut")]
    [InlineData("batch \"Day\"\npannel 2 x 2", null)]
    [InlineData("card \"Day\"\nmeke 3", null)]
    public void Only_words_that_start_a_line_of_that_kind_of_file_are_offered(string text, string? offer) =>
        Assert.Equal(offer, Reading.File(text).Findings[0].Replacement);

    [Theory]
    [InlineData("lamp", "lamb", true)]
    [InlineData("lamp", "lmap", true)]
    [InlineData("lamp", "lantern", false)]
    [InlineData("raised", "rasied", true)]
    [InlineData("of", "off", true)]
    public void The_nearest_word_is_within_a_third_of_the_letters(string known, string written, bool near) =>
        Assert.Equal(near ? known : null, Nearest.Find(written, [known]));

    [Fact]
    public void Among_equally_near_words_the_first_in_the_alphabet_is_offered() => Assert.Equal("bar", Nearest.Find("ber", ["bor", "bar"]));
}
