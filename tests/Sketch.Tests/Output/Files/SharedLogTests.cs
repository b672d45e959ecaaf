using System.Globalization;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Output.Files;
using Xunit;

namespace Sketch.Tests.Output.Files;

public sealed class SharedLogTests : IDisposable
{
    private const string Mark = " # cut";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private string Log => _folder.At("day.count");

    private static Failure? Append(string path, string line) => SharedLog.Append(path, Mark, _ => Result.Of(line));

    [Fact]
    public void A_log_that_does_not_exist_is_empty() => Assert.Equal("", SharedLog.Read(Log).Value);

    [Fact]
    public void Lines_are_appended_in_order()
    {
        Assert.Null(Append(Log, "one"));
        Assert.Null(Append(Log, "two"));
        Assert.Equal("one\ntwo\n", File.ReadAllText(Log));
    }

    // A killed program leaves any number of the bytes of its line; the last of them may be half of a letter.
    [Fact]
    public void A_line_cut_off_after_any_byte_is_set_aside_and_the_next_line_is_whole()
    {
        var line = Encoding.UTF8.GetBytes("Zoë 12");
        for (var length = 1; length <= line.Length; length++)
        {
            File.WriteAllBytes(Log, [.. "one\n"u8, .. line[..length]]);

            Assert.Null(Append(Log, "two"));

            var lines = SharedLog.Read(Log).Value.Split('\n');
            Assert.Equal(["one", "two", ""], (string[])[lines[0], lines[2], lines[3]]);
            Assert.EndsWith(Mark, lines[1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_refused_line_changes_nothing()
    {
        Append(Log, "one");
        Assert.Equal("No.", SharedLog.Append(Log, Mark, _ => new Failure("No."))!.Problem);
        Assert.Equal("one\n", File.ReadAllText(Log));
    }

    [Fact]
    public void Writers_at_the_same_time_lose_and_double_nothing()
    {
        Parallel.For(0, 200, new() { MaxDegreeOfParallelism = 8 },
            i => Assert.Null(Append(Log, i.ToString(CultureInfo.InvariantCulture))));

        Assert.Equal(Enumerable.Range(0, 200), File.ReadAllLines(Log).Select(l => int.Parse(l, CultureInfo.InvariantCulture)).Order());
    }

    [Fact]
    public void A_line_is_composed_from_all_lines_written_before_it()
    {
        Parallel.For(0, 50, new() { MaxDegreeOfParallelism = 8 },
            _ => SharedLog.Append(Log, Mark, content => Result.Of($"{content.Count(c => c == '\n')}")));

        Assert.Equal(Enumerable.Range(0, 50).Select(i => $"{i}"), File.ReadAllLines(Log));
    }

    [Fact]
    public void A_folder_that_does_not_exist_is_a_problem() =>
        Assert.Contains("there is no such folder", Append(_folder.At("gone/day.count"), "one")!.Problem, StringComparison.Ordinal);

    [Fact]
    public void A_pipe_is_a_problem() =>
        Assert.Contains("not a regular file", Append(_folder.Pipe("day.count"), "one")!.Problem, StringComparison.Ordinal);
}
