using Sketch.Planning.CutSteps;
using Sketch.Planning.Remainder;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning;

/// <summary>Paper that hollow layers, windows and frames free is stock for pieces of any offcut, and else is left.</summary>
public sealed class FreedPaperTests
{
    // The mat is 3 3/4 x 5, the panel on it 3 5/8 x 4 7/8, so a quarter of an inch for glue leaves 3 1/8 x 4 3/8.
    private const string Card = "card \"Gull\"\nbase A2, of white\nrole deep: navy\nrole scrap: any offcut of navy\nfront\n"
        + "  sky: panel, showing 1/4, of gulls\n    mat +1/8, of deep\n    snip: square 1 1/2, top 1/2, of scrap\n";

    private const string Shelf =
        "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front waves\ncardstock navy: letter, 1 sheet\n"
        + "cardstock white: letter, any sheets\n";

    private static PlanRun Run(string title = "hollow", int cards = 4, string card = Card, string shelf = Shelf) => PlanRun.Of(
        $"batch \"Day\", {title}\nstash \"shelf.stash\"\nmake {cards} of \"gull.card\"\n", ("gull.card", card), ("shelf.stash", shelf));

    private static (string By, Size Size, int Count, int Used)[] Freed(PlanRun run, string paper) =>
        [.. run.Paper(paper).Freed.Select(f => (f.From.Name, f.Size, f.Count, run.Paper(paper).Used(f)))];

    private static Size Box(int width, int widthEighths, int height, int heightEighths) =>
        new(Length.Inch(width, widthEighths, 8), Length.Inch(height, heightEighths, 8));

    [Fact]
    public void A_hollow_layer_frees_its_hidden_middle() =>
        Assert.Equal([("sky/mat", Box(3, 1, 4, 3), 4, 1)], Freed(Run(), "navy"));

    [Fact]
    public void The_margin_for_glue_may_be_wider() =>
        Assert.Equal([("sky/mat", Box(2, 5, 3, 7), 4, 2)], Freed(Run("hollow 1/2"), "navy"));

    [Fact]
    public void Nothing_is_freed_unless_the_batch_is_cut_hollow() => Assert.Empty(Freed(Run("kerf 0"), "navy"));

    [Fact]
    public void Pieces_of_any_offcut_are_cut_from_freed_middles()
    {
        var run = Run();
        var from = Assert.Single(run.Plan!.FromLeftovers);
        Assert.Equal(("navy", "sky/mat", 4), (from.Paper, from.FreedBy!.Name, from.Count));
        Assert.DoesNotContain(run.Findings, f => f.Code == "SK712");
        Assert.Contains(run.Summary.Lines(), l => l.Contains("navy, freed by sky/mat of Gull", StringComparison.Ordinal));
    }

    [Fact]
    public void Freed_middles_are_cut_after_the_sheets_and_are_no_offcuts_on_hand()
    {
        var run = Run();
        Assert.Equal([null, "0/front/sky/mat"], run.Paper("navy").Plan.Layouts.Select(l => l.FreedBy));
        Assert.Equal("navy 2: 1 freed piece of 3 1/8 x 4 3/8, out of sky/mat of Gull",
            SheetWork.Of(run.Plan!, run.Paper("navy"))[1].Heading(new(false)));
        Assert.DoesNotContain(run.Summary.Lines(), l => l.Contains("used first", StringComparison.Ordinal));
        var layout = run.Json.GetProperty("papers").EnumerateArray().Single(p => p.GetProperty("paper").GetString() == "navy")
            .GetProperty("layouts")[1];
        Assert.Equal((true, "front/sky/mat"),
            (layout.GetProperty("offcut").GetBoolean(), layout.GetProperty("freedBy").GetProperty("path").GetString()));
    }

    [Fact]
    public void The_plan_lists_what_is_freed_and_what_of_it_is_used()
    {
        var row = Run().Json.GetProperty("freed").EnumerateArray().Single(f => f.GetProperty("paper").GetString() == "navy");
        Assert.Equal(("Gull", 4, 1), (row.GetProperty("by").GetProperty("card").GetString(), row.GetProperty("count").GetInt32(),
            row.GetProperty("used").GetInt32()));
        Assert.Contains(Run().Summary.Lines(), l => l.Contains("sky/mat of Gull  navy   3 1/8 x 4 3/8         4          1",
            StringComparison.Ordinal));
    }

    [Fact]
    public void Middles_that_are_not_used_are_offcuts_of_the_next_run()
    {
        var text = StashAfter.Write(Run().Plan!);
        Assert.Contains("offcut navy: 3 1/8 in x 4 3/8 in, 3\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Middles_of_sheets_still_to_be_bought_are_not_left()
    {
        // A sheet holds four mats, so only those of one sheet of the two are on hand.
        var text = StashAfter.Write(Run(cards: 8, card: Card.Replace("snip: square 1 1/2, top 1/2, of scrap", "panel 1 x 1, of gulls",
            StringComparison.Ordinal)).Plan!);
        Assert.Contains("offcut navy: 3 1/8 in x 4 3/8 in, 4\n", text, StringComparison.Ordinal);
    }

    [Theory]
    // The square in a circle of 2 in is 1.41 in wide; a frame of 1/8 in leaves the rest of its box.
    [InlineData("  panel 3 x 3, of deep\n    window circle 2\n", "panel", 1, 3, 1, 3)]
    [InlineData("  frame 1/8, around sea, of deep\n  sea: circle 2, of gulls\n", "frame", 1, 3, 1, 3)]
    [InlineData("  frame 2 1/4 x 1 5/8, of deep\n", "frame", 2, 0, 1, 3)]
    public void Windows_and_frames_free_what_is_cut_out_of_them(string pieces, string by, int width, int ofWidth, int height, int ofHeight)
    {
        var run = Run(card: "card \"Gull\"\nbase A2, of white\nrole deep: navy\nfront\n" + pieces);
        Assert.Equal([(by, Box(width, ofWidth, height, ofHeight), 4, 0)], Freed(run, "navy"));
    }

    [Fact]
    public void A_window_of_the_front_frees_paper_of_the_base() =>
        Assert.Equal([("base", Box(2, 0, 3, 0), 4, 0)],
            Freed(Run(card: "card \"Gull\"\nbase A2, of navy\nfront\n  window 2 x 3\n"), "navy"));

    // Four mats of 3 3/4 x 5 leave strips an inch wide of a letter sheet, too narrow for the squares of 1 1/2.
    private static PlanRun SamePaper(string title, int cards = 4, string more = "") =>
        Run(title, cards, Card.Replace(", of scrap", ", of deep", StringComparison.Ordinal) + more);

    [Fact]
    public void Small_pieces_of_the_same_paper_come_out_of_freed_middles_where_that_saves_a_sheet()
    {
        Assert.Equal(2, SamePaper("kerf 0").Paper("navy").Plan.Sheets);
        var paper = SamePaper("hollow").Paper("navy");
        Assert.Equal((1, true), (paper.Plan.Sheets, paper.IsProved));
        Assert.Equal(["sky/mat"], paper.Freed.Select(f => f.From.Name).Distinct());
        Assert.Contains(paper.Plan.Layouts, l => l.FreedBy == "0/front/sky/mat" && l.Pieces.Any(p => p.Id == "0/front/sky/snip"));
    }

    [Fact]
    public void Freed_middles_stay_whole_where_they_save_no_sheet() =>
        Assert.DoesNotContain(SamePaper("hollow", cards: 3).Paper("navy").Plan.Layouts, l => l.FreedBy is not null);

    [Fact]
    public void A_middle_that_comes_out_of_a_middle_is_cut_after_it()
    {
        // The inner mat fits into the middle of the outer one, and the dot only into the middle of the inner mat.
        var run = SamePaper("hollow 1/8", 4, "  small: panel 2 x 2, bottom 1/2, of gulls\n    mat +1/4, of deep\n");
        var cut = new HashSet<string>();
        foreach (var layout in run.Paper("navy").Plan.Layouts)
        {
            Assert.True(layout.FreedBy is null || cut.Contains(layout.FreedBy));
            cut.UnionWith(layout.Pieces.Select(p => p.Id));
        }

        Assert.Equal(1, run.Paper("navy").Plan.Sheets);
    }

    [Fact]
    public void A_shortage_that_freed_middles_remove_needs_no_advice() =>
        Assert.DoesNotContain(SamePaper("hollow").Findings, f => f.Code == "SK710");
}
