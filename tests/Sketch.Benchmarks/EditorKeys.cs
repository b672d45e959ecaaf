using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Benchmarks;

/// <summary>
/// From a key in a text editor to the findings that it gets: the time from the change on the input of the language server to the findings
/// on its output, in texts of 10,000 lines. Beside it the same text only parsed, in this process, which no answer can beat. Goal: 50 ms.
/// </summary>
internal static class EditorKeys
{
    private const int Lines = 10_000;
    private const int WarmUp = 20;
    private const string Start = "card \"Lamp\"\nbase A2, of white\nrole deep: navy\nfront\n  panel 3 x 4, of deep\n";

    /// <summary>Prints a table.</summary>
    /// <param name="tool">The published program.</param>
    /// <param name="keys">The number of keys to measure for each row.</param>
    public static int Run(string tool, int keys)
    {
        Clock.Print("| text | key to findings, ms: least | median | 95 of 100 below | of processor, mean | "
            + "only parsed, ms: least | median | of processor, mean |");
        Clock.Print("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        Measure(tool, keys, "card of 200 pieces, each under a page of comments", "lamp.card",
            Start + Repeated(Lines / 50, i => Repeated(49, _ => "    # what the makers have to know about the next piece\n")
                + $"    star 1/8, left {i % 64}/64, of white\n"));
        Measure(tool, keys, "card of 10,000 pieces (the limit is 500)", "many.card",
            Start + Repeated(Lines, i => $"    star 1/8, left {i % 64}/64, top 1/4, of deep\n"));
        Measure(tool, keys, "stash of 10,000 papers", "shelf.stash",
            "stash \"Shelf\"\n" + Repeated(Lines, i => $"paper p{i}: 12 x 12, 3 sheets, front waves\n"));
        return 0;
    }

    private static string Repeated(int times, Func<int, string> line) => string.Concat(Enumerable.Range(0, times).Select(line));

    private static void Measure(string tool, int keys, string name, string file, string text)
    {
        using var server = Process.Start(new ProcessStartInfo(tool, ["language-server"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
        var (input, output) = (server.StandardInput.BaseStream, server.StandardOutput.BaseStream);
        Send(input, new { jsonrpc = "2.0", id = 1, method = "initialize", @params = new { } });
        Receive(output);
        var uri = new Uri(Path.Combine(Path.GetTempPath(), file)).AbsoluteUri;
        Send(input, new
        {
            jsonrpc = "2.0",
            method = "textDocument/didOpen",
            @params = new { textDocument = new { uri, languageId = "card", version = 0, text } },
        });
        Receive(output);
        var (times, parsed, processor) = (new double[keys], new Spent[keys], TimeSpan.Zero);
        for (var i = -WarmUp; i < keys; i++)
        {
            // A letter goes into the title, and out again.
            var (version, isTyped) = (i + WarmUp + 1, i % 2 == 0);
            var at = text.IndexOf('"', StringComparison.Ordinal) + 1;
            var range = new { start = new { line = 0, character = at }, end = new { line = 0, character = isTyped ? at : at + 1 } };
            if (i == 0)
            {
                server.Refresh();
                processor = server.TotalProcessorTime;
            }

            var watch = Stopwatch.StartNew();
            Send(input, new
            {
                jsonrpc = "2.0",
                method = "textDocument/didChange",
                @params = new { textDocument = new { uri, version }, contentChanges = new[] { new { range, text = isTyped ? "k" : "" } } },
            });
            Receive(output);
            times[Math.Max(i, 0)] = watch.Elapsed.TotalMilliseconds;
            parsed[Math.Max(i, 0)] = Clock.Time(() => Parser.Parse(new SourceText(file, text), new FindingBag()));
        }

        server.Refresh();
        var ofKey = (server.TotalProcessorTime - processor).TotalMilliseconds / keys;

        Clock.Print($"| {name} | {times.Min():0.0} | {Clock.Quantile(times, 0.5):0.0} | {Clock.Quantile(times, 0.95):0.0} | "
            + $"{ofKey:0.0} | {parsed.Min(p => p.Wall):0.0} | {Clock.Quantile(parsed.Select(p => p.Wall), 0.5):0.0} | "
            + $"{parsed.Average(p => p.Processor):0.0} |");
        server.Kill();
    }

    private static void Send<T>(Stream input, T message)
    {
        var content = JsonSerializer.SerializeToUtf8Bytes(message);
        input.Write(Encoding.ASCII.GetBytes($"Content-Length: {content.Length}\r\n\r\n"));
        input.Write(content);
        input.Flush();
    }

    /// <summary>Reads a message to its end.</summary>
    private static void Receive(Stream output)
    {
        var header = new StringBuilder();
        while (!header.ToString().EndsWith("\r\n\r\n", StringComparison.Ordinal))
        {
            header.Append((char)output.ReadByte());
        }

        var length = header.ToString().Split("\r\n").Single(l => l.StartsWith("Content-Length: ", StringComparison.Ordinal))[16..];
        output.ReadExactly(new byte[int.Parse(length, System.Globalization.CultureInfo.InvariantCulture)]);
    }
}
