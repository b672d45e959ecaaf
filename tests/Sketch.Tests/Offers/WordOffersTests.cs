using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Offers;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Offers;

public sealed class WordOffersTests
{
    private const string Roles = "card \"Lamp\"\nbase A2, of white\nrole sky: waves\nfront\n";

    private static readonly FilesBeside Museum = new([StashOf("""
        stash "Shelf"
        paper gulls: 12 x 12, 3 sheets, front waves, back dots
        gem red: 1/8, 200
        die small-tag: 2 x 3
        """)], ["museum.stash", "first-light.card", "boat.svg"]);

    private static Stash StashOf(string text) => Compiler.Compile(new SourceText("museum.stash", text), new TestWorld()).Stash!;

    /// <summary>What is offered at the end of a text.</summary>
    private static ImmutableArray<string> Offered(string text, string kind = "card") => [.. At(text, kind).Offers.Select(o => o.Text)];

    private static OfferedWords At(string text, string kind = "card") =>
        WordOffers.At(Parser.Parse(new($"lamp.{kind}", text), new FindingBag()), text.Length, Museum);

    [Theory]
    [InlineData("card", "  p", "panel")]
    [InlineData("card", "", "front")]
    [InlineData("stash", "p", "paper")]
    [InlineData("batch", "m", "make")]
    public void A_line_begins_with_a_word_of_its_kind_of_file(string kind, string text, string word) =>
        Assert.Contains(word, Offered(text, kind));

    [Fact]
    public void A_name_or_a_number_is_followed_by_a_kind_of_piece()
    {
        Assert.Contains("star", Offered("  lamp: s"));
        Assert.DoesNotContain("front", Offered("  lamp: s"));
        Assert.Contains("gem", Offered("  3 g"));
    }

    [Theory]
    [InlineData("star 1 3/4, r")]
    [InlineData("star 1 3/4, # gold\n  r")]
    [InlineData("  item 2: ")]
    public void Clauses_follow_a_comma_also_on_the_next_line(string text)
    {
        Assert.Contains("raised", Offered(text));
        Assert.DoesNotContain("star", Offered(text));
    }

    [Theory]
    [InlineData("  panel, of w")]
    [InlineData("  text \"ahoy\", ink ")]
    [InlineData("  3 star 1, of blue and ")]
    public void Roles_come_before_papers_and_papers_before_colours(string text) =>
        Assert.Equal(["sky", "gulls", "white"], Offered(Roles + text).Take(3));

    [Theory]
    [InlineData("  gem 1/8, of ")]
    [InlineData("  dots: 3 gem 1/8, of ")]
    public void A_ready_made_thing_is_offered_colours_and_no_papers(string text)
    {
        Assert.DoesNotContain("gulls", Offered(text));
        Assert.Contains("gold", Offered(text));
    }

    [Fact]
    public void A_role_is_given_a_paper() => Assert.Equal(["gulls", "plain"], Offered("role sky: ").Take(2));

    [Fact]
    public void In_a_batch_a_paper_has_two_sides() => Assert.Equal(["gulls", "gulls, back"], Offered("  role sky: ", "batch").Take(2));

    [Theory]
    [InlineData("  dot 1/8, above ")]
    [InlineData("  dot 1/8, left of la")]
    [InlineData("  dot 1/8, over top of lamp/")]
    [InlineData("change ")]
    public void What_refers_to_a_piece_is_followed_by_the_names_of_pieces(string text) =>
        Assert.Equal(["lamp"], Offered(Roles + "  lamp: star 1\n" + text));

    [Theory]
    [InlineData("base ", "A2")]
    [InlineData("envelope ", "US A2")]
    [InlineData("base A2, fold ", "gate")]
    [InlineData("units ", "mm")]
    [InlineData("lettering ", "script")]
    [InlineData("  text \"ahoy\", lettering s", "slab")]
    [InlineData("  tag 2, using ", "small-tag")]
    [InlineData("  window ", "circle")]
    [InlineData("  lamp: ", "gem 1/8 in, of red")]
    public void A_word_is_followed_by_what_completes_it(string text, string offered) => Assert.Contains(offered, Offered(text));

    [Fact]
    public void A_sheet_of_a_stash_has_a_named_size() => Assert.Contains("letter", Offered("cardstock navy: ", "stash"));

    [Theory]
    [InlineData("batch", "stash \"m", "museum.stash")]
    [InlineData("batch", "make 12 of \"", "first-light.card")]
    [InlineData("card", "like \"", "first-light.card")]
    [InlineData("card", "  outline 1, file \"b", "boat.svg")]
    public void In_quotes_the_files_beside_are_offered_where_one_is_named(string kind, string text, string file) =>
        Assert.Equal([file], Offered(text, kind));

    [Theory]
    [InlineData("batch", "make 12 of ", "\"first-light.card\"")]
    [InlineData("card", "  outline 1, file ", "\"boat.svg\"")]
    public void Before_the_quotes_the_files_are_offered_in_quotes(string kind, string text, string file) =>
        Assert.Equal([file], Offered(text, kind));

    [Theory]
    [InlineData("stash ")]
    [InlineData("stash \"")]
    public void The_title_of_a_stash_is_not_the_name_of_a_file(string text) => Assert.Empty(Offered(text, "stash"));

    [Fact]
    public void A_role_with_the_name_of_a_colour_is_offered_once() =>
        Assert.Single(Offered("role navy: waves\n  star 1, of "), w => w == "navy");

    [Theory]
    [InlineData("text \"p")]
    [InlineData("# p")]
    [InlineData("star 1 # p")]
    [InlineData("star ")]
    public void Nothing_is_offered_in_other_words_in_comments_or_where_a_number_goes(string text) => Assert.Empty(Offered(text));

    [Fact]
    public void An_offer_replaces_what_is_typed_of_it() => Assert.Equal(new TextSpan(12, 14), At("star 1 3/4, ra").Typed);

    [Fact]
    public void A_line_that_nobody_types_gets_no_offers() => Assert.Empty(Offered(new string('a', 100_000) + ", r"));
}
