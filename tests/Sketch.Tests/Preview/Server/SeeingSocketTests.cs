using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using Sketch.Output.Files;
using Xunit;
using static Sketch.Tests.Preview.OpenedPage;

namespace Sketch.Tests.Preview.Server;

/// <summary>The socket on which a window asks with every keystroke answers as a request does, and refuses what a request refuses.</summary>
public sealed class SeeingSocketTests : OnOpenedPage
{
    [Fact]
    public async Task A_question_gets_the_answer_of_a_request()
    {
        using var socket = await Page.OpenSocket("seeing");
        var answer = await Ask(socket, Question(Card));
        var (_, requested) = await Page.Ask(Page.See(Card));
        Assert.True(JsonElement.DeepEquals(requested, answer), answer.ToString());
    }

    [Fact]
    public async Task Questions_are_answered_in_order()
    {
        using var socket = await Page.OpenSocket("seeing");
        foreach (var title in (string[])["One", "Two", "Three"])
        {
            await Say(socket, Question(Card.Replace("Lamp", title, StringComparison.Ordinal)));
        }

        Assert.Equal(
            ["One", "Two", "Three"],
            [(await Answer(socket)).GetProperty("title").GetString(), (await Answer(socket)).GetProperty("title").GetString(),
                (await Answer(socket)).GetProperty("title").GetString()]);
    }

    [Fact]
    public async Task A_question_in_several_parts_is_read_as_one()
    {
        using var socket = await Page.OpenSocket("seeing");
        var question = Encoding.UTF8.GetBytes(Question(Card));
        await socket.SendAsync(question.AsMemory(0, 40), WebSocketMessageType.Text, false, Stop);
        await socket.SendAsync(question.AsMemory(40), WebSocketMessageType.Text, true, Stop);
        Assert.Equal("Lamp", (await Answer(socket)).GetProperty("title").GetString());
    }

    [Fact]
    public async Task The_text_of_a_question_is_kept()
    {
        using var socket = await Page.OpenSocket("seeing");
        await Ask(socket, Question(Card + "# mine\n"));
        await Until(() => Page.Keeps(".json", "# mine"));
    }

    [Theory]
    [InlineData("", "The page sent an invalid request. Reload it.")]
    [InlineData("{", "The page sent an invalid request. Reload it.")]
    [InlineData("null", "The page sent an invalid request. Reload it.")]
    [InlineData("{\"choices\":[null]}", "The page sent an invalid request. Reload it.")]
    [InlineData("{\"file\":\"lamp.card\",\"text\":\"card\"}", "The request names no window. Reload the page.")]
    public async Task A_wrong_question_gets_a_problem_and_the_next_one_an_answer(string question, string problem)
    {
        using var socket = await Page.OpenSocket("seeing");
        Assert.Equal(problem, (await Ask(socket, question)).GetProperty("problem").GetString());
        Assert.Equal("Lamp", (await Ask(socket, Question(Card))).GetProperty("title").GetString());
    }

    [Fact]
    public async Task A_question_larger_than_a_request_may_be_gets_a_problem_and_ends_the_socket()
    {
        using var socket = await Page.OpenSocket("seeing");
        var part = new byte[1_000_000];
        Array.Fill(part, (byte)' ');
        for (var sent = 0L; sent <= TextContent.Limit * 2L; sent += part.Length)
        {
            await socket.SendAsync(part, WebSocketMessageType.Text, false, Stop);
        }

        var problem = (await Answer(socket)).GetProperty("problem").GetString();
        Assert.Contains("too large", problem, StringComparison.Ordinal);
        var end = await socket.ReceiveAsync(new byte[100], Stop);
        Assert.Equal((WebSocketMessageType.Close, WebSocketCloseStatus.MessageTooBig), (end.MessageType, socket.CloseStatus));
    }

    [Fact]
    public async Task A_window_that_closes_the_socket_gets_its_closing_confirmed()
    {
        using var socket = await Page.OpenSocket("seeing");
        await socket.CloseAsync(WebSocketCloseStatus.NormalClosure, null, Stop);
        Assert.Equal(WebSocketState.Closed, socket.State);
    }

    [Fact]
    public Task A_foreign_page_gets_no_socket() =>
        Assert.ThrowsAsync<WebSocketException>(() => Page.OpenSocket("seeing", "http://example.org"));

    [Fact]
    public async Task A_request_to_the_socket_is_refused() =>
        Assert.Equal(System.Net.HttpStatusCode.BadRequest, await Page.Status(Page.Read("seeing")));

    private static string Question(string text) =>
        JsonSerializer.Serialize(new { file = "lamp.card", window = Window, text, stamp = "known", saved = false });

    private static async Task<JsonElement> Ask(ClientWebSocket socket, string question)
    {
        await Say(socket, question);
        return await Answer(socket);
    }

    private static Task Say(ClientWebSocket socket, string question) =>
        socket.SendAsync(Encoding.UTF8.GetBytes(question), WebSocketMessageType.Text, true, Stop);

    private static async Task<JsonElement> Answer(ClientWebSocket socket)
    {
        var answer = WebSocketStream.CreateReadableMessageStream(socket);
        await using (answer)
        {
            using var json = await JsonDocument.ParseAsync(answer, cancellationToken: Stop);
            return json.RootElement.Clone();
        }
    }
}
