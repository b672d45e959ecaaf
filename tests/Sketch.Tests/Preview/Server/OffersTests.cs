using System.Net;
using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>What the page gets to offer at the caret.</summary>
public sealed class OffersTests : OnOpenedPage
{
    [Fact]
    public async Task Each_offer_has_its_kind_and_replaces_what_is_typed_of_it()
    {
        var offered = await Offered("card \"Lamp\"\nbase A\nfront\n", line: 2, column: 7);
        Assert.Contains(("A2", "size"), Offers(offered));
        Assert.Equal((6, 7), (offered.GetProperty("column").GetInt32(), offered.GetProperty("endColumn").GetInt32()));
    }

    [Fact]
    public async Task The_text_of_the_window_is_read_and_not_that_of_the_file()
    {
        var offered = await Offered(OpenedPage.Card + "  buoy: star 1, of red\n  dot 1/8, below ", line: 6, column: 18);
        Assert.Equal([("lamp", "name"), ("buoy", "name")], Offers(offered));
    }

    [Fact]
    public async Task Papers_come_from_the_stashes_beside_the_file()
    {
        Page.Write("shelf.stash", "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front waves, back dots\n");
        Assert.Contains(("gulls", "paper"), Offers(await Offered("card \"Lamp\"\nrole sky: ", line: 2, column: 11)));
    }

    [Fact]
    public async Task Lines_that_end_with_a_return_have_the_same_columns()
    {
        var offered = await Offered("card \"Lamp\"\r\nbase A\r\nfront\r\n", line: 2, column: 7);
        Assert.Equal((6, 7), (offered.GetProperty("column").GetInt32(), offered.GetProperty("endColumn").GetInt32()));
    }

    [Theory]
    [InlineData("lamp.card", "panel", "make")]
    [InlineData("shelf.stash", "offcut", "panel")]
    [InlineData("day.batch", "make", "panel")]
    public async Task Each_kind_of_file_has_its_own_words(string file, string own, string other)
    {
        var words = Offers(await Offered("", 1, 1, file)).Select(o => o.Text).ToList();
        Assert.Contains(own, words);
        Assert.DoesNotContain(other, words);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, -1)]
    [InlineData(int.MinValue, int.MaxValue)]
    [InlineData(int.MaxValue, int.MinValue)]
    [InlineData(2, int.MaxValue)]
    public async Task A_caret_outside_the_text_is_moved_into_it(int line, int column)
    {
        var text = "card \"Lamp\"\nbase A2, of w\n";
        var offered = await Offered(text, line, column);
        var (from, to) = (offered.GetProperty("column").GetInt32(), offered.GetProperty("endColumn").GetInt32());
        Assert.InRange(from, 1, to);
        Assert.InRange(to, 1, text.Split('\n').Max(l => l.Length) + 1);
    }

    [Theory]
    [InlineData("../secret.card")]
    [InlineData("lamp.txt")]
    [InlineData("")]
    public async Task A_file_outside_the_folder_is_refused(string file) =>
        Assert.Equal(HttpStatusCode.NotFound, await Page.Status(Asking("", 1, 1, file)));

    [Theory]
    [InlineData("{}", HttpStatusCode.NotFound)]
    [InlineData("{\"sheet\":{\"file\":\"lamp.card\"},\"line\":1e99}", HttpStatusCode.BadRequest)]
    [InlineData("{\"sheet\":{\"file\":\"lamp.card\"},\"line\":1.5}", HttpStatusCode.BadRequest)]
    [InlineData("{\"sheet\":{\"file\":\"lamp.card\",\"text\":null}}", HttpStatusCode.BadRequest)]
    public async Task A_request_without_a_text_or_a_place_is_refused(string body, HttpStatusCode status) =>
        Assert.Equal(status, await Page.Status(Page.Say("offers", new StringContent(body, null, "application/json"))));

    private async Task<JsonElement> Offered(string text, int line, int column, string file = "lamp.card")
    {
        var (status, json) = await Page.Ask(Asking(text, line, column, file));
        Assert.Equal(HttpStatusCode.OK, status);
        return json;
    }

    private HttpRequestMessage Asking(string text, int line, int column, string file) =>
        Page.Say("offers", new { sheet = new { file, window = OpenedPage.Window, text }, line, column });

    private static IEnumerable<(string Text, string Kind)> Offers(JsonElement offered) => offered.GetProperty("offers").EnumerateArray()
        .Select(o => (o.GetProperty("text").GetString()!, o.GetProperty("kind").GetString()!));
}
