using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Planning.Reports;

/// <summary>The steps of assembly in the JSON of a plan.</summary>
public sealed class PlanStepsTests
{
    private const string Lamp = """
        card "Lamp"
        base A2, fold left, of white
        role gold: navy
        front
          lamp: star 2, top 1/2, left 1/4, raised 2 mm, of gold

        """;

    private static JsonElement Steps(string batch) =>
        PlanRun.Of("batch \"Day\"\nstash \"shelf.stash\"\n" + batch, ("lamp.card", Lamp)).Json.GetProperty("steps");

    private static JsonElement LampStep => Steps("make 2 of \"lamp.card\"\n").GetProperty("Lamp")[1];

    [Fact]
    public void Each_card_has_its_steps_counted_from_1() =>
        Assert.Equal([1, 2, 3],
            Steps("make 2 of \"gull.card\"\n").GetProperty("Gull").EnumerateArray().Select(s => s.GetProperty("n").GetInt32()));

    [Fact]
    public void The_first_step_scores_the_base()
    {
        var first = Steps("make 2 of \"lamp.card\"\n").GetProperty("Lamp")[0];
        Assert.Equal(("score", "base"), (first.GetProperty("action").GetString(), first.GetProperty("pieces")[0].GetString()));
    }

    [Fact]
    public void A_step_names_its_pieces_by_path() => Assert.Equal("front/lamp", LampStep.GetProperty("pieces")[0].GetString());

    [Fact]
    public void Foam_has_its_height_and_an_estimate() =>
        Assert.Equal((2, 4), (LampStep.GetProperty("foam").GetProperty("height").GetProperty("mm").GetDouble(),
            LampStep.GetProperty("foam").GetProperty("pads").GetInt32()));

    [Fact]
    public void A_place_is_measured_from_the_edges_of_what_the_piece_lies_on() =>
        Assert.Equal(("1/4", "1/2"), (LampStep.GetProperty("place").GetProperty("left").GetProperty("ruler").GetString(),
            LampStep.GetProperty("place").GetProperty("top").GetProperty("ruler").GetString()));

    [Fact]
    public void The_key_of_a_second_design_of_the_same_title_names_its_line() =>
        Assert.Equal(["Lamp", "Lamp (line 4)"],
            Steps("make 2 of \"lamp.card\"\nmake 2 of \"lamp.card\"\n").EnumerateObject().Select(p => p.Name));
}
