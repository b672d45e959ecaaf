using Sketch.Drawing;
using Sketch.Planning.Diagrams;
using Sketch.Tests.Output.Rendering;
using Xunit;

namespace Sketch.Tests.Planning.Diagrams;

/// <summary>The part of the workbook that shows how cards are put together.</summary>
public sealed class DesignPagesTests
{
    private const string Lamp = """
        card "Lamp"
        base A2, fold left, of white
        front
          sky: panel 3 x 4, of navy
            lamp: star 2, raised 2 mm, of white
        inside
          text "Calm seas"

        """;

    private static PlanPages Pages(string batch) =>
        new(PlanRun.Of("batch \"Day\"\nstash \"shelf.stash\"\n" + batch, ("lamp.card", Lamp)).Plan!, new TestWorld());

    private static List<string> Words(string batch) => [.. PrintedWords.On(Pages(batch).Designs()).SelectMany(p => p).Select(w => w.Words)];

    private static int Boxes(IEnumerable<DrawnPage> pages) =>
        pages.Sum(p => p.Shapes.Split("width=\"3.8\" height=\"3.8\"").Length - 1);

    [Fact]
    public void Each_design_begins_a_page_with_its_title_and_number_of_cards() =>
        Assert.Equal(["Gull: 4 cards", "Lamp: 1 card"],
            PrintedWords.On(Pages("make 4 of \"gull.card\"\nmake 1 of \"lamp.card\"\n").Designs())
                .Select(p => p[0].Words).Where(w => w.Contains(": ", StringComparison.Ordinal)));

    [Fact]
    public void Every_step_is_numbered_beside_its_sentence()
    {
        var words = Words("make 1 of \"lamp.card\"\n");
        Assert.Contains(words, w => w.StartsWith("Glue sky (panel, navy)", StringComparison.Ordinal));
        // The steps 2 and 3 are on the front, so their numbers are in the exploded picture too.
        Assert.Equal([1, 2, 2, 1], Enumerable.Range(1, 4).Select(n => words.Count(w => w == $"{n}")));
    }

    [Fact]
    public void Foam_is_given_for_all_cards() =>
        Assert.Contains("For all cards: 12 pads", string.Join(' ', Words("make 3 of \"lamp.card\"\n")), StringComparison.Ordinal);

    [Fact]
    public void The_message_is_what_to_write_inside() =>
        Assert.Contains("Write or stamp: “Fair winds”", Words("make 1 of \"lamp.card\"\n  message \"Fair winds\"\n"));

    [Fact]
    public void Each_stage_has_a_box_for_each_card() => Assert.Equal(5 * 12, Boxes(Pages("make 12 of \"gull.card\"\n").Designs()));

    [Fact]
    public void A_box_stands_for_ten_cards_where_single_boxes_would_fill_the_page() =>
        Assert.Equal(5 * 7, Boxes(Pages("make 61 of \"gull.card\"\n").Designs()));

    /// <summary>Cards with more and more steps end at every height of a page.</summary>
    [Fact]
    public void Boxes_stand_on_the_page_of_their_heading()
    {
        for (var pieces = 1; pieces < 30; pieces += 4)
        {
            var card = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n" + string.Concat(Enumerable.Range(1, pieces)
                .Select(i => $"  p{i}: square 1/2, left {i % 8}/4, top {i / 8}/2, of navy\n"));
            var plan = PlanRun.Of("batch \"Day\"\nstash \"shelf.stash\"\nmake 12 of \"many.card\"\n", ("many.card", card)).Plan!;
            var pages = new PlanPages(plan, new TestWorld()).Designs();
            var page = pages.Single(p => PrintedWords.On([p])[0].Any(w => w.Words == "Tick what is done"));
            Assert.Equal(5 * 12, Boxes([page]));
        }
    }

    [Fact]
    public void Each_recipient_has_a_box() =>
        Assert.Contains("Cliff ward: 4 cards", Words("for \"Cliff ward\", 4 cards\nmake 4 of \"gull.card\"\n"));

    [Fact]
    public void Simple_stacks_of_sheets_share_a_page()
    {
        var pages = Pages("cut 1 of 12 x 6 from gulls\ncut 2 of 8 x 10 from navy\n");
        Assert.Equal((2, 1), (pages.Work.Length, pages.Sheets().Count));
    }
}
