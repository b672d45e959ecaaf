using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using System.Text.Json;
using Sketch.Editors.Server;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;

namespace Sketch.Fuzz.Targets;

/// <summary>
/// The server for text editors, in this process: an input is a text that is opened, and a file <c>messages.txt</c> with a method and its
/// parameters on each line.
/// </summary>
internal sealed class EditorTarget : IFuzzTarget
{
    private const string Messages = "messages.txt";

    /// <summary>The number of an error inside the program, in JSON-RPC 2.0.</summary>
    private const int InternalError = -32603;

    private static readonly string[] Endings = ["card", "card", "stash", "batch"];

    private static readonly string[] AtPlaces = ["completion", "hover", "definition", "references", "prepareRename", "rename"];

    private static readonly string[] OfFiles = ["formatting", "foldingRange", "documentSymbol", "documentColor"];

    private static readonly string[] OfParts = ["codeAction", "inlayHint", "colorPresentation"];

    private static readonly string[] NewNames = ["lamp", "", "a b", "front", "9", "sky/mat", "\"", "x\ny"];

    private static readonly int[] FarAway = [-1, 100_000, int.MaxValue];

    public string Name => "editor";

    public int Weight => 1;

    public FuzzInput Make(Draws draws)
    {
        var ending = draws.Any(Endings);
        var text = ending switch
        {
            "stash" => new GrammarStashes(draws).Stash(),
            "batch" => new GrammarStashes(draws).Batch(["lamp.card"]),
            _ => draws.OnceIn(2) ? draws.Any(Corpus.Cards) : GrammarCards.Text(draws),
        };
        text = draws.OnceIn(3) ? Damage.OfText(text, Corpus.All, draws) : text;
        var lines = text.Split('\n');
        var messages = Enumerable.Range(0, draws.From(1, 12)).Select(_ => Message(draws, lines, $"file:///cards/storm.{ending}"));
        return new([new($"storm.{ending}", text), new(Messages, string.Join('\n', messages))]);
    }

    private static string Message(Draws draws, string[] lines, string uri)
    {
        var document = new { uri = draws.OnceIn(20) ? "file:///cards/none.card" : uri, version = draws.From(0, 3) };
        var range = new { start = Position(draws, lines), end = Position(draws, lines) };
        return draws.Below(6) switch
        {
            0 => $"textDocument/didChange {Json(new
            {
                textDocument = document,
                contentChanges = new[] { new { range = draws.OnceIn(8) ? null : range,
                    text = draws.Any(draws.Any(Corpus.All).Split('\n')) } },
            })}",
            1 => $"textDocument/{draws.Any(OfFiles)} {Json(new { textDocument = document })}",
            2 => $"textDocument/{draws.Any(OfParts)} {Json(new
            {
                textDocument = document,
                range,
                color = new { red = draws.Below(3) / 2.0, green = 0.5, blue = draws.OnceIn(9) ? 1e9 : 1, alpha = 1 },
            })}",
            3 => $"sketch/pictures {Json(new { textDocument = document })}",
            _ => $"textDocument/{draws.Any(AtPlaces)} {Json(new
            {
                textDocument = document,
                position = range.start,
                newName = draws.Any(NewNames),
            })}",
        };
    }

    private static object Position(Draws draws, string[] lines)
    {
        var line = draws.Below(lines.Length);
        return draws.OnceIn(20)
            ? new { line = draws.Any(FarAway), character = draws.Any(FarAway) }
            : new { line, character = draws.Below(lines[line].Length + 2) };
    }

    public void Run(FuzzInput input)
    {
        using var sent = new MemoryStream();
        Send(sent, """{"jsonrpc":"2.0","id":"begin","method":"initialize","params":{"capabilities":{}}}""");
        foreach (var file in input.Files.Where(f => f.Name != Messages))
        {
            Send(sent, Json(new
            {
                jsonrpc = "2.0",
                method = "textDocument/didOpen",
                @params = new
                {
                    textDocument = new
                    {
                        uri = "file:///cards/" + file.Name,
                        languageId = "sketch",
                        version = 0,
                        text = file.Text
                    }
                },
            }));
        }

        var id = 0;
        foreach (var line in input[Messages].Text.Split('\n').Select(l => l.Split(' ', 2)).Where(l => l.Length == 2))
        {
            var number = line[0].StartsWith("textDocument/did", StringComparison.Ordinal) ? ""
                : string.Create(CultureInfo.InvariantCulture, $"\"id\":{++id},");
            Send(sent, $$"""{"jsonrpc":"2.0",{{number}}"method":{{Json(line[0])}},"params":{{line[1]}}}""");
        }

        Send(sent, """{"jsonrpc":"2.0","id":"end","method":"shutdown"}""");
        Check(Answers(sent.ToArray()).GetAwaiter().GetResult());
    }

    /// <summary>What the server answers up to its last answer; only then the editor says goodbye.</summary>
    private static async Task<string> Answers(byte[] messages)
    {
        var unlimited = new PipeOptions(pauseWriterThreshold: 0);
        var (input, output) = (new Pipe(unlimited), new Pipe(unlimited));
        await using var reading = output.Reader.AsStream();
        await input.Writer.WriteAsync(messages);
        var serving = Task.Run(() => EditorService.Run(input.Reader.AsStream(), output.Writer.AsStream(), CancellationToken.None));
        // A server that ends closes nothing by itself.
        var closing = serving.ContinueWith(_ => output.Writer.Complete(), TaskScheduler.Default);
        var text = new StringBuilder();
        var part = new byte[8192];
        for (var count = -1; count != 0 && !text.ToString().Contains("\"id\":\"end\"", StringComparison.Ordinal);)
        {
            count = await reading.ReadAsync(part);
            text.Append(Encoding.Latin1.GetString(part, 0, count));
        }

        await input.Writer.CompleteAsync();
        await serving;
        await closing;
        return Encoding.UTF8.GetString(Encoding.Latin1.GetBytes(text.ToString()));
    }

    private static void Check(string text)
    {
        BrokenInvariantException.Unless(text.Contains("\"id\":\"end\"", StringComparison.Ordinal), "an editor gets an answer", text);
        foreach (var part in text.Split("Content-Length: ", StringSplitOptions.RemoveEmptyEntries))
        {
            var begin = part.IndexOf('{', StringComparison.Ordinal);
            if (begin < 0 || Encoding.UTF8.GetByteCount(part.AsSpan(begin)) < int.Parse(part.Split('\r')[0], CultureInfo.InvariantCulture))
            {
                // The rest of the last message is not read.
                continue;
            }

            var answer = WellFormed.Json(part[begin..]);
            BrokenInvariantException.Unless(!(answer.TryGetProperty("error", out var error)
                && error.GetProperty("code").GetInt32() == InternalError),
                "an editor never gets an internal error", part);
        }
    }

    private static void Send(MemoryStream to, string message)
    {
        var bytes = Encoding.UTF8.GetBytes(message);
        to.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"Content-Length: {bytes.Length}\r\n\r\n")));
        to.Write(bytes);
    }

    private static string Json(object value) => JsonSerializer.Serialize(value);
}
