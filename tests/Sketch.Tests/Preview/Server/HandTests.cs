using System.Net;
using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>What the page gets when somebody changes a piece by hand.</summary>
public sealed class HandTests : OnOpenedPage
{
    private const string Text =
        "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  lamp: panel 2 x 3, left 1/2, of navy\n  star 1, above lamp, of gold\n";

    [Fact]
    public async Task A_move_answers_with_the_text_the_place_and_no_refusal()
    {
        var (status, json) = await Hand(Text, "front/lamp", new { kind = "move", across = 25_400_000 / 16 });

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal(Text.Replace("left 1/2", "left 9/16", StringComparison.Ordinal), json.GetProperty("text").GetString());
        Assert.Equal("lamp: 9/16 in from the left, in the middle from top to bottom.", json.GetProperty("said").GetString());
        Assert.Equal(0, json.GetProperty("refusals").GetArrayLength());
    }

    [Fact]
    public async Task A_typed_size_is_read_like_one_in_the_text()
    {
        var (_, json) = await Hand(Text, "front/lamp", new { kind = "size", measure = "width", text = "2 5/8" });
        Assert.Contains("panel 2 5/8 x 3,", json.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_typed_size_that_is_none_says_what_to_write()
    {
        var (_, json) = await Hand(Text, "front/lamp", new { kind = "size", measure = "width", text = "2 5/7" });
        Assert.Equal(Text, json.GetProperty("text").GetString());
        Assert.Contains("Write 2 11/16", json.GetProperty("refusals")[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_would_be_a_mistake_is_not_done()
    {
        var (_, json) = await Hand(Text, "front/lamp", new { kind = "delete" });
        Assert.Equal(Text, json.GetProperty("text").GetString());
        var reason = json.GetProperty("refusals")[0].GetProperty("reason").GetString();
        Assert.StartsWith("That is not possible: line 4.", reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_copy_is_the_piece_chosen_next()
    {
        var (_, json) = await Hand(Text, "front/lamp", new { kind = "copy" });
        Assert.Equal("front/lamp2", json.GetProperty("piece").GetString());
    }

    [Fact]
    public async Task A_piece_is_shown_with_its_form()
    {
        var (_, json) = await Page.Ask(Page.Say("hold", new { sheet = Sheet(Text), piece = "front/lamp" }));

        Assert.Equal([12_700_000, 31_750_000, 50_800_000, 76_200_000], json.GetProperty("box").EnumerateArray().Select(l => l.GetInt64()));
        Assert.Equal("left", json.GetProperty("across").GetProperty("held").GetString());
        Assert.Equal("lamp: panel 2 x 3, left 1/2, of navy", json.GetProperty("form").GetProperty("text").GetString());
    }

    [Fact]
    public async Task A_piece_that_is_gone_is_not_found() =>
        Assert.Equal(HttpStatusCode.NotFound, (await Hand(Text, "front/heart", new { kind = "copy" })).Status);

    private static object Sheet(string text) => new { file = "lamp.card", window = OpenedPage.Window, text };

    private Task<(HttpStatusCode Status, JsonElement Json)> Hand(string text, string piece, object change) =>
        Page.Ask(Page.Say("hand", new { sheet = Sheet(text), piece, change }));
}
