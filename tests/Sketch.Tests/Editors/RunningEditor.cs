using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Threading.Channels;
using StreamJsonRpc;

namespace Sketch.Tests.Editors;

/// <summary>A text editor that has started the program, in a folder of its own, and talks to it by the client half of a library.</summary>
public sealed class RunningEditor : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    private readonly Channel<JsonElement> _findings = Channel.CreateUnbounded<JsonElement>();

    public RunningEditor()
    {
        Program = Process.Start(new ProcessStartInfo("dotnet", [typeof(Sketch.Cli.Program).Assembly.Location, "language-server"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Client = new(new HeaderDelimitedMessageHandler(
            Program.StandardInput.BaseStream, Program.StandardOutput.BaseStream, new SystemTextJsonFormatter()));
        Client.AddLocalRpcMethod("textDocument/publishDiagnostics", new Action<string, int?, JsonElement>((uri, version, diagnostics) =>
            _findings.Writer.TryWrite(JsonSerializer.SerializeToElement(new { uri, version, diagnostics }))));
        Client.StartListening();
    }

    public Process Program { get; }

    public JsonRpc Client { get; }

    public string Folder { get; } = Directory.CreateTempSubdirectory("sketch-editor-").FullName;

    /// <summary>Ends what waits too long.</summary>
    public static CancellationToken Stop => new CancellationTokenSource(Patience).Token;

    public string UriOf(string name) => new Uri(Path.Combine(Folder, name)).AbsoluteUri;

    /// <summary>The parameters of a request about a file.</summary>
    public object About(string name) => new { textDocument = new { uri = UriOf(name) } };

    /// <summary>The parameters of a request about a place in a file.</summary>
    public object At(string name, int line, int character, string? newName = null) => new
    {
        textDocument = new { uri = UriOf(name) },
        position = new { line, character },
        newName,
        context = new { includeDeclaration = true },
    };

    /// <summary>The parameters of a request about all of a file.</summary>
    public object Whole(string name) => new { textDocument = new { uri = UriOf(name) }, range = Range(0, 0, 1_000_000, 0) };

    public static object Range(int line, int character, int endLine, int endCharacter) =>
        new { start = new { line, character }, end = new { line = endLine, character = endCharacter } };

    public Task<JsonElement> Ask(string method, object? about = null) =>
        Client.InvokeWithParameterObjectAsync<JsonElement>(method, about, Stop);

    public Task<JsonElement> Begin() => Ask("initialize", new
    {
        processId = Environment.ProcessId,
        rootUri = (string?)null,
        capabilities = new { },
        initializationOptions = new { explanationScheme = "sketch-finding" },
    });

    /// <summary>Opens a text and returns its findings.</summary>
    public async Task<JsonElement[]> Open(string name, string text)
    {
        await Client.NotifyWithParameterObjectAsync(
            "textDocument/didOpen", new { textDocument = new { uri = UriOf(name), languageId = "card", version = 1, text } });
        return await Findings(name, 1);
    }

    /// <summary>Changes a text and returns its findings.</summary>
    public async Task<JsonElement[]> Change(string name, int version, params object[] changes)
    {
        await Client.NotifyWithParameterObjectAsync(
            "textDocument/didChange", new { textDocument = new { uri = UriOf(name), version }, contentChanges = changes });
        return await Findings(name, version);
    }

    /// <summary>The next findings of a version of a text.</summary>
    public async Task<JsonElement[]> Findings(string name, int version)
    {
        while (true)
        {
            var published = await _findings.Reader.ReadAsync(Stop);
            if (published.GetProperty("uri").GetString() == UriOf(name) && published.GetProperty("version").ValueKind != JsonValueKind.Null
                && published.GetProperty("version").GetInt32() == version)
            {
                return [.. published.GetProperty("diagnostics").EnumerateArray()];
            }
        }
    }

    /// <summary>The status with which the program ends.</summary>
    public async Task<int> Status()
    {
        await Program.WaitForExitAsync(Stop);
        return Program.ExitCode;
    }

    /// <summary>Sends bytes as they are.</summary>
    public static byte[] Message(string content) =>
        Encoding.UTF8.GetBytes($"Content-Length: {Encoding.UTF8.GetByteCount(content)}\r\n\r\n{content}");

    public void Dispose()
    {
        Client.Dispose();
        if (!Program.HasExited)
        {
            Program.Kill();
            Program.WaitForExit();
        }

        Program.Dispose();
        Directory.Delete(Folder, recursive: true);
    }
}
