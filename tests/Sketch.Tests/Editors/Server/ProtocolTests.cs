using System.Text;
using StreamJsonRpc;
using Xunit;

namespace Sketch.Tests.Editors.Server;

/// <summary>Whatever an editor sends gets an answer, and the program ends as the protocol asks.</summary>
public sealed class ProtocolTests : IDisposable
{
    private const int MethodNotFound = -32601;
    private const int InvalidParams = -32602;
    private const int ParseError = -32700;
    private const int NotInitialized = -32002;
    private const int RequestFailed = -32803;

    private readonly RunningEditor _editor = new();

    public void Dispose() => _editor.Dispose();

    [Fact]
    public async Task Positions_are_counted_in_units_of_utf_16() => Assert.Equal(
        "utf-16", (await _editor.Begin()).GetProperty("capabilities").GetProperty("positionEncoding").GetString());

    [Theory]
    [InlineData("textDocument/nothing", MethodNotFound)]
    [InlineData("textDocument/hover", RequestFailed)]
    public async Task What_cannot_be_answered_is_refused(string method, int code)
    {
        await _editor.Begin();

        Assert.Equal(code, await Refusal(method, _editor.At("not-open.card", 0, 0)));
    }

    [Fact]
    public async Task Before_the_first_request_others_are_refused() =>
        Assert.Equal(NotInitialized, await Refusal("textDocument/hover", _editor.At("lamp.card", 0, 0)));

    [Fact]
    public async Task Parameters_of_another_form_are_refused()
    {
        await _editor.Begin();

        Assert.Equal(InvalidParams, await Refusal("textDocument/hover", new { textDocument = 7 }));
        Assert.Equal(InvalidParams, await Refusal("textDocument/hover", new { }));
    }

    [Fact]
    public async Task A_message_that_is_no_json_is_answered_and_the_next_is_read()
    {
        using var other = new RawEditor();

        other.Send(RunningEditor.Message("{\"jsonrpc\": nonsense"));
        Assert.Equal(ParseError, other.Read().GetProperty("error").GetProperty("code").GetInt32());

        other.Send(RunningEditor.Message("[1, 2]"));
        Assert.True(other.Read().TryGetProperty("error", out _));

        other.Send(RunningEditor.Message("""{"jsonrpc":"2.0","id":"x","method":"initialize","params":{}}"""));
        Assert.Equal("x", other.Read().GetProperty("id").GetString());
        Assert.Equal("", await other.End());
    }

    [Theory]
    [InlineData("no header at all\r\n\r\n")]
    [InlineData("Content-Length: many\r\n\r\n{}")]
    [InlineData("Content-Length: -5\r\n\r\n{}")]
    public async Task What_is_no_message_ends_the_program_without_a_crash(string sent)
    {
        using var other = new RawEditor();

        other.Send(Encoding.ASCII.GetBytes(sent));

        Assert.Equal("", await other.End());
        Assert.Equal(1, other.Status);
    }

    [Fact]
    public async Task After_shutdown_and_exit_the_program_ends_with_success()
    {
        await _editor.Begin();
        await _editor.Ask("shutdown");

        await _editor.Client.NotifyAsync("exit");

        Assert.Equal(0, await _editor.Status());
    }

    [Fact]
    public async Task Exit_without_shutdown_ends_it_with_1()
    {
        await _editor.Begin();

        await _editor.Client.NotifyAsync("exit");

        Assert.Equal(1, await _editor.Status());
    }

    [Fact]
    public async Task An_editor_that_is_gone_ends_it_with_1()
    {
        await _editor.Begin();

        _editor.Program.StandardInput.Close();

        Assert.Equal(1, await _editor.Status());
    }

    private async Task<int> Refusal(string method, object about) =>
        (int)(await Assert.ThrowsAnyAsync<RemoteRpcException>(() => _editor.Ask(method, about))).ErrorCode!;
}
