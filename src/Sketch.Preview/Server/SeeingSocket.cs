using System.Buffers;
using System.Net.WebSockets;
using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Sketch.Preview.Views;

namespace Sketch.Preview.Server;

/// <summary>
/// A socket (RFC 6455) on which a window asks with every keystroke what it shows of its text. In a browser, a message takes several
/// milliseconds less than a request. The questions are answered one after the other, each with one message: the view or a problem.
/// </summary>
/// <param name="see">Answers a question.</param>
internal sealed class SeeingSocket(Func<SeeRequest, Results<Ok<TextView>, Problem>> see)
{
    /// <summary>Answers until the window closes the socket or the program ends.</summary>
    /// <param name="socket">The socket.</param>
    /// <param name="end">Ends it.</param>
    public async Task Answer(WebSocket socket, CancellationToken end)
    {
        var question = new ArrayBufferWriter<byte>(16 * 1024);
        try
        {
            while (await IsReceived(socket, question, end).ConfigureAwait(false))
            {
                await AnswerOne(socket, question.WrittenMemory, end).ConfigureAwait(false);
                question.ResetWrittenCount();
            }
        }
        catch (Exception ended) when (ended is OperationCanceledException or WebSocketException)
        {
            // The window is closed, or the program is ending.
        }
    }

    /// <summary>Receives a whole question; false when the window closes the socket or sends too much.</summary>
    private static async Task<bool> IsReceived(WebSocket socket, ArrayBufferWriter<byte> question, CancellationToken end)
    {
        while (true)
        {
            var part = await socket.ReceiveAsync(question.GetMemory(4096), end).ConfigureAwait(false);
            if (part.MessageType == WebSocketMessageType.Close)
            {
                await socket.CloseAsync(WebSocketCloseStatus.NormalClosure, null, end).ConfigureAwait(false);
                return false;
            }

            question.Advance(part.Count);
            if (question.WrittenCount > PageServer.MostBytes)
            {
                await Send(socket, Problem.OfRefused(StatusCodes.Status413PayloadTooLarge), end).ConfigureAwait(false);
                await socket.CloseAsync(WebSocketCloseStatus.MessageTooBig, null, end).ConfigureAwait(false);
                return false;
            }

            if (part.EndOfMessage)
            {
                return true;
            }
        }
    }

    private async Task AnswerOne(WebSocket socket, ReadOnlyMemory<byte> question, CancellationToken end)
    {
        SeeRequest? asked;
        try
        {
            asked = JsonSerializer.Deserialize(question.Span, PageJson.Of<SeeRequest>());
        }
        catch (JsonException)
        {
            asked = null;
        }

        switch (asked is null ? Problem.OfRefused(StatusCodes.Status400BadRequest) : see(asked).Result)
        {
            case Ok<TextView> { Value: { } view }:
                await Send(socket, view, end).ConfigureAwait(false);
                break;
            case Problem problem:
                await Send(socket, problem, end).ConfigureAwait(false);
                break;
        }
    }

    private static Task Send(WebSocket socket, Problem problem, CancellationToken end) =>
        Send(socket, new ProblemAnswer(problem.Sentence), end);

    private static async Task Send<T>(WebSocket socket, T answer, CancellationToken end)
    {
        // Pictures are drawn one at a time while the answer is written.
        var message = WebSocketStream.CreateWritableMessageStream(socket, WebSocketMessageType.Text);
        await using (message.ConfigureAwait(false))
        {
            await JsonSerializer.SerializeAsync(message, answer, PageJson.Of<T>(), end).ConfigureAwait(false);
        }
    }
}
