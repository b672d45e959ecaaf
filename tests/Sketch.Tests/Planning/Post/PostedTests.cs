using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Planning.Post;

/// <summary>Post is shown where it is asked for.</summary>
public class PostedTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";

    private static PlanRun Plan(string whom, params (string, string)[] files) =>
        PlanRun.Of($"{Top}{whom}\nmake 6 of \"gull.card\"\n", files);

    [Fact]
    public void Cards_that_go_by_post_are_held_against_the_limits()
    {
        var run = Plan("for \"Cliff ward\", 6 cards, by post");
        var post = run.Json.GetProperty("post")[0];
        Assert.Equal(("Gull", "US A2"), (post.GetProperty("card").GetString(), post.GetProperty("envelope").GetString()));
        Assert.True(post.GetProperty("thickness").GetProperty("low").GetProperty("mm").GetDouble() > 0.5);
        Assert.True(post.GetProperty("weight").GetProperty("high").GetDouble() < 30);
        var service = post.GetProperty("services")[0];
        Assert.Equal(("US Postal Service", "letter"), NameAndClass(service));
        Assert.Equal(0, service.GetProperty("reasons").GetArrayLength());
        Assert.Contains("the local post office decides", run.Summary.Sections.Single(s => s.Heading == "Post").Sentences[0],
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("for \"Cliff ward\", 6 cards")]
    [InlineData("for \"Cliff ward\", 6 cards, by hand")]
    public void What_is_not_asked_for_is_not_shown(string whom)
    {
        var run = Plan(whom);
        Assert.Equal(0, run.Json.GetProperty("post").GetArrayLength());
        Assert.DoesNotContain(run.Summary.Sections, s => s.Heading == "Post");
    }

    [Fact]
    public void A_card_that_is_handed_over_in_its_envelope_is_not_posted() => Assert.Equal(0, Plan(
        "for \"Cliff ward\", 6 cards, by post", ("gull.card", PlanRun.Card + "envelope US A2, by hand\n"))
        .Json.GetProperty("post").GetArrayLength());

    [Fact]
    public void A_file_beside_the_batch_replaces_the_limits()
    {
        var services = Plan("for \"Cliff ward\", 6 cards, by post",
            ("post.csv", "Harbour post,letter,,100,,100,,5,100,,,,,the harbour office,S,2026-11-25\n"))
            .Json.GetProperty("post")[0].GetProperty("services");
        Assert.Equal(("Harbour post", "parcel"), NameAndClass(services[0]));
        Assert.Equal(1, services.GetArrayLength());
    }

    private static (string?, string?) NameAndClass(JsonElement service) =>
        (service.GetProperty("service").GetString(), service.GetProperty("class").GetString());
}
