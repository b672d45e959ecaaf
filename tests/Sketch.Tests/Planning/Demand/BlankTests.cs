using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.Demand;

/// <summary>Shapes are cut by their templates, from blanks with sides on ruler marks.</summary>
public sealed class BlankTests
{
    private const string Card = "card \"Star\"\nbase A2, fold left, of white\nfront\n  lamp: star 0.7, of navy\n    mat +1/8, of gulls\n"
        + "  panel 1.01 x 2, bottom 0, of navy\n";

    [Theory]
    [InlineData("", 1, 16)]
    [InlineData(", blanks 1/8", 1, 8)]
    [InlineData(", blanks 1/4", 1, 4)]
    public void A_blank_is_the_box_of_a_shape_rounded_up_to_the_step(string clause, int numerator, int denominator)
    {
        var run = Planned(clause);
        var step = Length.Inch(0, numerator, denominator).Nanometres;
        var exact = run.Plan!.Files.Designs[0].Card.Pieces.Single(p => p.Path.ToString() == "front/lamp").Cut!.Value;
        var blank = run.Plan.Pieces["0/front/lamp"].Size;
        Assert.True(run.Plan.Pieces["0/front/lamp"].IsBlank);
        Assert.Equal((0, 0), (blank.Width.Nanometres % step, blank.Height.Nanometres % step));
        Assert.InRange(blank.Width.Nanometres - exact.Width.Nanometres, 0, step - 1);
        Assert.InRange(blank.Height.Nanometres - exact.Height.Nanometres, 0, step - 1);
    }

    [Fact]
    public void A_blank_of_a_metric_batch_has_whole_millimetres()
    {
        var blank = PlanRun.Of("batch \"Day\"\nunits mm\nstash \"shelf.stash\"\nmake 2 of \"star.card\"\n", ("star.card", Card))
            .Plan!.Pieces["0/front/lamp"].Size;
        Assert.Equal((0, 0), (blank.Width.Nanometres % 1_000_000, blank.Height.Nanometres % 1_000_000));
    }

    [Fact]
    public void Exact_blanks_are_the_boxes_themselves()
    {
        var run = Planned(", blanks exact");
        var exact = run.Plan!.Files.Designs[0].Card.Pieces.Single(p => p.Path.ToString() == "front/lamp").Cut!.Value;
        Assert.Equal((exact, false), (run.Plan.Pieces["0/front/lamp"].Size, run.Plan.Pieces["0/front/lamp"].IsBlank));
    }

    [Fact]
    public void Rectangles_are_not_blanks_and_a_mat_follows_the_shape_on_it()
    {
        var pieces = Planned("").Plan!.Pieces;
        Assert.Equal((true, false), (pieces["0/front/lamp/mat"].IsBlank, pieces["0/front/panel"].IsBlank));
    }

    [Fact]
    public void JSON_and_text_call_it_a_blank()
    {
        var run = Planned("");
        var navy = run.Json.GetProperty("papers").EnumerateArray().Single(p => p.GetProperty("paper").GetString() == "navy");
        var pieces = navy.GetProperty("layouts").EnumerateArray().SelectMany(l => l.GetProperty("pieces").EnumerateArray()).ToList();
        Assert.All(pieces, p => Assert.Equal(p.GetProperty("name").GetString() == "lamp", p.GetProperty("blank").GetBoolean()));
        Assert.Contains(
            Sketch.Planning.CutSteps.PaperWork.Of(run.Plan!).SelectMany(w => w.Stacks).SelectMany(s => s.Pieces).Select(
                p => p.Text(new(false))),
            words => words.EndsWith("2 Star lamp, blanks to cut by its template", StringComparison.Ordinal));
    }

    private static PlanRun Planned(string clause) =>
        PlanRun.Of($"batch \"Day\"{clause}\nstash \"shelf.stash\"\nmake 2 of \"star.card\"\n", ("star.card", Card));
}
