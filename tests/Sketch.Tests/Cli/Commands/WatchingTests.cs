using System.Text;
using Sketch.Cli;
using Sketch.Cli.Commands;
using Xunit;

namespace Sketch.Tests.Cli.Commands;

public sealed class WatchingTests : IDisposable
{
    private const string Lamp = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 2 x 3, of blue\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public async Task A_changed_file_is_checked_again_until_the_run_is_stopped()
    {
        var card = _line.File("a.card", Lamp);

        var (status, output) = await Watch(["check", card], () => _line.File("a.card", Lamp + "  panel 9 x 9, of blue\n"));

        Assert.Equal(130, status);
        Assert.Matches(@"no problems found\n(.*\n)+.*a\.card: \d", output);
    }

    [Fact]
    public async Task A_file_that_another_names_is_watched_too()
    {
        _line.File("base.card", Lamp);
        var card = _line.File("a.card", "card \"Other lamp\"\nlike \"base.card\"\n");

        var (_, output) = await Watch(["sizes", card], () => _line.File("base.card", Lamp.Replace("2 x 3", "3 x 4")));

        Assert.Contains("3 x 4", output);
    }

    [Fact]
    public async Task A_new_file_in_a_watched_folder_is_read()
    {
        _line.File("a.card", Lamp);

        var (_, output) = await Watch(["check", _line.Folder], () => _line.File("b.card", Lamp));

        Assert.Contains("b.card: no problems found", output);
    }

    [Fact]
    public async Task What_a_run_draws_into_the_folder_does_not_start_it_again()
    {
        var card = _line.File("a.card", Lamp);

        var (_, output) = await Watch(["draw", card, "-o", _line.Folder], () => _line.File("a.card", Lamp.Replace("2 x 3", "3 x 4")));

        Assert.Equal(2, output.Split("a-front.svg").Length - 1);
    }

    /// <summary>Runs with --watch: makes a change after the first run, and stops after the second.</summary>
    private static async Task<(int Status, string Output)> Watch(string[] line, Action change)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var runs = 0;
        using var output = new FlushedWriter(() =>
        {
            if (++runs == 1)
            {
                change();
            }
            else
            {
                stop.Cancel();
            }
        });
        var status = await Task.Run(() => Program.Run([.. line, "--watch"], new Session(output, TextWriter.Null, stop.Token)), stop.Token);
        return (status, output.ToString());
    }

    /// <summary>The end of a run is when it flushes its output.</summary>
    private sealed class FlushedWriter(Action flushed) : StringWriter(new StringBuilder())
    {
        public override void Flush() => flushed();
    }
}
