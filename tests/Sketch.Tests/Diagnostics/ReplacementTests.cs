using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Tests.Project;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Diagnostics;

/// <summary>A hint that says exactly what to type carries it as a replacement, and typing it fixes that mistake.</summary>
public class ReplacementTests
{
    private const string Front =
        "card \"Test\"\nbase A2, fold left, of white\nrole sky: #9fc9e8\npart lantern 1 x 1\n  circle 1/2, of red\nfront\n  sky: panel "
            + "3 x 3\n    lamp: star 1, of gold\n  use lantern, top 1/8\n";

    private const string Shelf = "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front dots navy\n";

    [Theory]
    [InlineData("pannel 1 x 1, of red", "panel")]
    [InlineData("3 gems 1/8, in a row, of red", "gem")]
    [InlineData("star 1, of silvr", "silver")]
    [InlineData("star 1, of skye", "sky")]
    [InlineData("strip 1 x 1 \"ahoy\", of red, ink nvay", "navy")]
    [InlineData("star 1, botom 1/4, of red", "bottom")]
    [InlineData("star 1 1/3, of red", "1 5/16")]
    [InlineData("star 1/4, raised 1/100, of red", "1/64")]
    [InlineData("panel 2,5 x 1, of red", "2.5")]
    [InlineData("panel 25,5 mm x 1, of red", "25.5 mm")]
    [InlineData("panel 2,5 inches x 1, of red", "2.5 inches")]
    [InlineData("panel 2 inches x 1, of red", "2 in")]
    [InlineData("panel -2 x 1, of red", "2")]
    [InlineData("panel 2 by 1, of red", "x")]
    [InlineData("panel 2*1, of red", " x ")]
    [InlineData("panel 2 * 1, of red", "x")]
    [InlineData("star 1; of red", ",")]
    [InlineData("star 1, top 1 left 1, of red", ", left")]
    [InlineData("text: panel 1 x 1, of red", "words")]
    [InlineData("text \"ahoy", "\"ahoy\"")]
    [InlineData("text Keep a good light, of red", "\"Keep a good light\"")]
    [InlineData("banner 2 x 1 Happy Birthday, of red", "\"Happy Birthday\"")]
    [InlineData("tag 3 x 1 Light the way, of red", "\"Light the way\"")]
    [InlineData("star 1, red", "of red")]
    [InlineData("star 1, #9fc9e8", "of #9fc9e8")]
    [InlineData("star 1, of red, above the sky by 1/8", "")]
    [InlineData("2 star 1, in a row, of red, gold, #fff, top 1/8", " and gold and #fff")]
    [InlineData("star 1, of pale teal", "#88b2b2")]
    [InlineData("star 1, of navy blue", "navy")]
    [InlineData("star 1, of baby blue", "blue")]
    [InlineData("star 1, of orange red", "orangered")]
    [InlineData("star 1, dark green", "of dark")]
    [InlineData("star 1, in red", "of")]
    [InlineData("text \"ahoy\", in capitals", "capitals")]
    [InlineData("text \"ahoy\", bold", "lettering plain bold")]
    [InlineData("text \"ahoy\", lettering script, bold", " bold")]
    [InlineData("panel 1 x 1, of red\n    mat 1/8 larger, of navy", "+1/8")]
    [InlineData("tag 1, of red\n    mat 1/8 bigger, of navy", "+1/8")]
    [InlineData("rectangle 1 x 1, of red", "panel")]
    [InlineData("star 1, color red", "of")]
    [InlineData("my star: star 1, of red", "my-star")]
    [InlineData("star: 1 1/2, of red", "")]
    [InlineData("text: \"ahoy\"", "")]
    [InlineData("star 1, top left 1/4, of red", "upper left")]
    [InlineData("star 1, 1/4 left, of red", "left 1/4")]
    [InlineData("panel, 1/8 border, of red", "border 1/8")]
    [InlineData("star 1, foam, of red", "on foam")]
    [InlineData("panel, margin 1/8, of red", "showing")]
    [InlineData("two star 1, in a row, of red", "2")]
    [InlineData("star 1, of red, 1/4 from left", "left 1/4")]
    [InlineData("star 1, of red, in the centre", "centre")]
    [InlineData("strip 2 x 1/2 'ahoy there', of red", "\"ahoy there\"")]
    [InlineData("use latern", "lantern")]
    [InlineData("star 1/4, above skyy, of red", "sky")]
    [InlineData("star 1/4, above sky/lmap by 1/8, of red", "lamp")]
    public void On_a_piece(string line, string replacement) => Mends(Front + "  " + line + "\n", replacement);

    [Fact]
    public void Any_offcut_gives_way_to_the_role_that_is_one() =>
        Mends(Front.Replace("role sky: #9fc9e8", "role sky: #9fc9e8\nrole rest: any offcut", StringComparison.Ordinal)
            + "  star 1, of any offcut\n", "rest");

    [Theory]
    [InlineData("card 50 years\nbase A2, of white\n", "\"50 years\"")]
    [InlineData("card \"Test\"\nbase A2, top fold\n", "fold top")]
    [InlineData("card \"Test\"\nbase square 5, of white\n", "5 x 5")]
    [InlineData("card \"Test\"\nbase 5 1/4 square, of white\n", "5 1/4 x 5 1/4")]
    [InlineData("title \"Test\"\nbase A2, of white\n", "card")]
    [InlineData("card \"Test\"\nlettering script, bold\nbase A2, of white\n", " bold")]
    [InlineData("card \"Test\"\nbase A2 white\n", "of white")]
    [InlineData("card \"Test\"\nbase A2, portrait\n", "upright")]
    [InlineData("card Test card\nbase A2, of white\n", "\"Test card\"")]
    [InlineData("card \"Test\"\nunits inches\nbase A2, of white\n", "in")]
    [InlineData("card \"Test\"\nbase 148 x 105 mm, of white\nfront\n  star 20 mm, top 0, of red\n", "units mm\nbase")]
    [InlineData("card \"Test\"\n  base 14.8 x 10.5 cm, of white\n", "units cm\n  base")]
    [InlineData("card \"Test\"\nbase 148 x 105, of white\n", "148 x 105 mm")]
    [InlineData("card \"Test\"\nbase A2, of white\nrole sky gulls\n", "sky:")]
    [InlineData("card \"Test\"\nbase A2, of white\nfront:\n", "")]
    [InlineData("card \"Test\"\nbase:A2, of white\n", " ")]
    [InlineData("card \"Test\"\nbase slimlien, of white\n", "slimline")]
    [InlineData("card \"Test\"\nbase nol0, of white\n", "no10")]
    [InlineData("card \"Test\"\nbase A2, of white\nrole sky: dots nvay\nfront\n  panel 1 x 1, of sky\n", "navy")]
    [InlineData("card \"Test\"\nbase A2, fold left, of white\ninside top\n  text \"ahoy\"\n", "inside left")]
    [InlineData("card \"Test\"\nbase A2, of white\nfront\n  sky: star 1, of red\ninside\n  star 1, above sky, of red\n", "front/sky")]
    [InlineData("card \"Test\"\nbase A2, of white\nfront\n  star 1, of red,\ninside\n  text \"ahoy\"\n", "")]
    [InlineData("card \"Test\"\nbase A2, of white\nfrnot\n  star 1, of red\n", "front")]
    public void On_a_line_of_the_card(string card, string replacement) => Mends(card, replacement);

    [Fact]
    public void On_a_name_in_a_change() =>
        Mends("card \"Test\"\nlike \"first.card\"\nchange skyy: showing 1/4\n", "sky", new TestWorld()
            .WithText("first.card", "card \"First\"\nbase A2, of white\nfront\n  sky: panel, showing 1/8, of red\n"));

    [Theory]
    [InlineData("card \"Test\"\nlike \"frist.card\"\n", "\"first.card\"")]
    [InlineData("card \"Test\"\nlike \"first\"\n", "\"first.card\"")]
    public void On_the_name_of_a_file(string card, string replacement) =>
        Mends(card, replacement, new TestWorld().WithText("first.card", "card \"First\"\nbase A2, of white\n"));

    [Theory]
    [InlineData("offcut gulsl: 4 x 6, 2\n", "gulls")]
    [InlineData("paper waves: 12 x 12, 3 sheets, front wavs navy\n", "waves")]
    [InlineData("envelope plain: C66, 50\n", "C6")]
    [InlineData("paper dots: 12 x 12, 3 sheets, price $0.99\n", "")]
    [InlineData("papper dots: 12 x 12, 3 sheets\n", "paper")]
    [InlineData("paper dots 12 x 12, 3 sheets\n", "dots:")]
    [InlineData("paper blue dots: 12 x 12, 3 sheets\n", "blue-dots")]
    [InlineData("paper dots: 12 y 12, 3 sheets\n", "x")]
    [InlineData("paper dots: 12 x 12, 3 shets\n", "sheets")]
    public void On_a_line_of_a_stash(string line, string replacement) => Mends(Shelf + line, replacement);

    [Fact]
    public void On_a_paper_that_the_shelf_does_not_have()
    {
        var stash = Compiler.Compile(new SourceText("museum.stash", Shelf), new TestWorld()).Stash;
        Mends("card \"Test\"\nbase A2, of white\nrole sky: gulsl\nfront\n  panel 1 x 1, of sky\n", "gulls", filling: new(stash, []));
    }

    [Fact]
    public void A_paper_chosen_from_outside_replaces_nothing_in_the_card()
    {
        var stash = Compiler.Compile(new SourceText("museum.stash", Shelf), new TestWorld()).Stash;
        var filling = new RoleFilling(stash, [new("sky", "gulsl", PaperSide.Front)]);
        var finding = Assert.Single(
            Compiler.Compile(new SourceText("a.card", Front), new TestWorld(), filling).Findings, f =>
                f.Hint == "Did you mean gulls?");
        Assert.Null(finding.Replacement);
    }

    [Fact]
    public void A_name_that_several_pieces_have_is_not_replaced_by_itself()
    {
        var world = new TestWorld()
            .WithText("first.card", "card \"First\"\nbase A2, of white\nfront\n  sky: star 1, of red\ninside\n  sky: star 1, of red\n");
        var finding = Compiler.Compile(new SourceText("a.card", "card \"Test\"\nlike \"first.card\"\nchange sky: of blue\n"), world)
            .Findings.Single(f => f.Severity == Severity.Error);
        Assert.Equal(("Write the face before it: front/sky.", null), (finding.Hint, finding.Replacement));
    }

    public static TheoryData<string> Samples() => new("every-construct.card", "keepers-watch.card", "museum.stash", "lamp-day.batch");

    [Theory]
    [MemberData(nameof(Samples))]
    public void Whichever_word_of_a_sample_is_misspelt_each_offer_can_be_typed_and_fixes_it(string sample)
    {
        var path = Repository.PathTo("sketches", sample);
        var text = File.ReadAllText(path);
        var world = new FolderFiles();
        foreach (Match word in Regex.Matches(text, @"(?<=^|[\s,:])[a-z]{4,}(?=[\s,:]|$)", RegexOptions.Multiline))
        {
            var misspelt = text[..(word.Index + 1)] + text[word.Index + 2] + text[word.Index + 1] + text[(word.Index + 3)..];
            foreach (var finding in Compile(misspelt).Where(f => f.Hint.StartsWith("Did you mean", StringComparison.Ordinal)))
            {
                Assert.Equal($"Did you mean {finding.Replacement}?", finding.Hint);
                var span = finding.Location.Span;
                Assert.DoesNotContain(
                    Compile(misspelt[..span.Start] + finding.Replacement + misspelt[span.End..]),
                    f => f.Location.Span.Start == span.Start && f.Message == finding.Message);
            }
        }

        ImmutableArray<Finding> Compile(string content) => Compiler.Compile(new SourceText(path, content), world).Findings;
    }

    private static void Mends(string text, string replacement, TestWorld? world = null, RoleFilling? filling = null)
    {
        var before = Findings(text);
        var finding = Assert.Single(before, f => f.Replacement == replacement);
        var span = finding.Location.Span;

        var after = Findings(text[..span.Start] + replacement + text[span.End..]);

        Assert.DoesNotContain(after, f => f.Code == finding.Code && f.Location.Span.Start == span.Start && f.Message == finding.Message);

        Finding[] Findings(string content) =>
            [.. Compiler.Compile(new SourceText("a.card", content), world ?? new TestWorld(), filling ?? RoleFilling.None).Findings];
    }
}
