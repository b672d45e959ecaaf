using System.Globalization;
using System.Text.RegularExpressions;
using Sketch.Drawing;
using Sketch.Planning.Diagrams;
using Sketch.Tests.Output.Rendering;
using Xunit;

namespace Sketch.Tests.Planning.Diagrams;

/// <summary>Messages printed at full size.</summary>
public sealed partial class MessagePagesTests
{
    private static IReadOnlyList<DrawnPage> Pages(string batch, string inside = "  message: group 3 x 1\n") => new PlanPages(
        PlanRun.Of("batch \"Day\"\nstash \"shelf.stash\"\n" + batch,
            ("lamp.card", "card \"Lamp\"\nbase A2, of white\ninside\n" + inside), ("names.csv", "Ann\nBen\n")).Plan!,
        new TestWorld()).Messages();

    private static List<string> Words(IReadOnlyList<DrawnPage> pages) =>
        [.. PrintedWords.On(pages).SelectMany(p => p).Select(w => w.Words)];

    [Fact]
    public void There_is_a_strip_for_each_card_with_the_size_of_the_place()
    {
        var strips = Rectangles(Pages("make 5 of \"lamp.card\"\n  message \"Ahoy\"\n"));
        Assert.Equal(5, strips.Count);
        Assert.All(strips, s => Assert.Equal((76.2, 25.4), (s.Width, s.Height)));
    }

    [Fact]
    public void Strips_of_a_row_share_the_line_between_them() => Assert.Equal([0, 76.2],
        Rectangles(Pages("make 2 of \"lamp.card\"\n  message \"Ahoy\"\n")).Select(s => s.X));

    [Fact]
    public void A_message_by_hand_gives_one_guide_of_the_whole_inside()
    {
        var pages = Pages("make 5 of \"lamp.card\"\n  message \"Ahoy\", by hand\n");
        Assert.Equal([(107.95, 139.7)], Rectangles(pages).Select(r => (r.Width, r.Height)));
        Assert.Contains("Lamp, guide for 5 cards", Words(pages));
    }

    [Fact]
    public void People_whose_name_is_not_in_the_message_are_listed_in_the_order_of_the_strips() => Assert.Contains(
        "In rows from the left: Ann, Ben.",
        Words(Pages("for \"Ward\", 2 cards\n  names \"names.csv\"\n  message \"Ahoy\"\nmake 2 of \"lamp.card\"\n")));

    [Fact]
    public void Each_page_of_strips_says_whose_they_are()
    {
        var pages = Pages("make 40 of \"lamp.card\"\n  message \"Ahoy\"\n");
        Assert.True(pages.Count > 1);
        Assert.All(
            PrintedWords.On(pages),
            p => Assert.Contains(p, w => w.Words.StartsWith("Lamp, spare cards: 40 strips", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_batch_without_messages_has_no_such_pages() => Assert.Empty(Pages("make 2 of \"lamp.card\"\n"));

    [Fact]
    public void A_strip_larger_than_the_page_is_left_to_be_written_by_hand() =>
        Assert.Contains("These strips are larger than the page: write the message by hand.",
            Words(Pages("make 1 of \"lamp.card\"\n  base 12 x 12\n  message \"Ahoy\"\n", "  message: group full x full\n")));

    private static List<(double X, double Width, double Height)> Rectangles(IEnumerable<DrawnPage> pages) =>
        [.. pages.SelectMany(p => Rectangle().Matches(p.Shapes)).Select(m => (Number(m, 1), Number(m, 2), Number(m, 3)))];

    private static double Number(Match match, int group) =>
        match.Groups[group].Success ? double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex("<rect (?:x=\"([0-9.]+)\" y=\"0\" )?width=\"([0-9.]+)\" height=\"([0-9.]+)\" fill=\"none\"")]
    private static partial Regex Rectangle();
}
