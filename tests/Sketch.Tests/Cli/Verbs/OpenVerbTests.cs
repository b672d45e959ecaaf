using System.Net;
using System.Net.Sockets;
using System.Text;
using Sketch.Cli;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class OpenVerbTests : IDisposable
{
    private const string Card = "card \"Lamp\"\nbase A2, fold left, of white\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    /// <summary>Runs the verb until it has printed an address, then presses Ctrl-C.</summary>
    private static async Task<(int Status, Uri Address)> OpenAndStop(params string[] args)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        using var output = new Reported();
        var run = Task.Run(() => Program.Run(["open", .. args, "--no-browser"], output, TextWriter.Null, stop.Token),
            CancellationToken.None);
        var first = await Task.WhenAny(run, output.Address);
        await stop.CancelAsync();
        var status = await run;
        Assert.True(first == output.Address, $"It ended with {status} before it printed an address.");
        return (status, await output.Address);
    }

    [Fact]
    public async Task Ctrl_C_ends_it_with_130()
    {
        _line.File("lamp.card", Card);
        Assert.Equal(130, (await OpenAndStop(_line.Folder)).Status);
    }

    [Fact]
    public async Task Nothing_is_served_after_its_end()
    {
        var (_, address) = await OpenAndStop(_line.Folder);
        using var line = new TcpClient();
        await Assert.ThrowsAnyAsync<SocketException>(
            async () => await line.ConnectAsync(IPAddress.Loopback, address.Port, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_address_is_on_this_machine_and_begins_with_the_file()
    {
        var (_, address) = await OpenAndStop(_line.File("fair winds.card", Card));
        Assert.Equal(("127.0.0.1", "#fair%20winds.card"), (address.Host, address.Fragment));
    }

    [Fact]
    public async Task The_port_can_be_chosen()
    {
        var port = FreePort();
        Assert.Equal(port, (await OpenAndStop(_line.Folder, "--port", $"{port}")).Address.Port);
    }

    [Fact]
    public void A_port_that_is_taken_is_reported()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        Assert.Equal(2, _line.Run("open", _line.Folder, "--no-browser", "--port", $"{port}"));
        Assert.Contains($"port {port}", _line.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none.card", "there is no such file or folder")]
    [InlineData("lamp\0.card", "a file cannot have that name")]
    [InlineData("letter.txt", "not a card, stash or batch")]
    [InlineData(".hidden.card", "not a card, stash or batch")]
    public void A_name_that_cannot_be_opened_is_reported(string name, string reported)
    {
        _line.File("letter.txt", "");
        _line.File(".hidden.card", Card);
        Assert.Equal(2, _line.Run("open", _line.InFolder("x")[..^1] + name, "--no-browser"));
        Assert.Contains(reported, _line.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("65536")]
    [InlineData("eighty")]
    public void An_invalid_port_is_reported(string port)
    {
        Assert.Equal(2, _line.Run("open", _line.Folder, "--no-browser", "--port", port));
        Assert.Contains("--port", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_it_is_wrong_usage() => Assert.Equal(2, _line.Run("open"));

    private static int FreePort()
    {
        using var any = new TcpListener(IPAddress.Loopback, 0);
        any.Start();
        return ((IPEndPoint)any.LocalEndpoint).Port;
    }

    /// <summary>Waits for the address among what is reported.</summary>
    private sealed class Reported : TextWriter
    {
        private readonly TaskCompletionSource<Uri> _address = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private string _all = "";

        public Task<Uri> Address => _address.Task;

        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value)
        {
            _all += value;
            var start = _all.IndexOf("http", StringComparison.Ordinal);
            if (value == '\n' && start >= 0)
            {
                _address.TrySetResult(new(_all[start..].Split('\n')[0]));
            }
        }
    }
}
