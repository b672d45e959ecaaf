using System.Diagnostics;
using System.Text.Json;
using Sketch.Tests.Planning;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class CountVerbTests : IDisposable
{
    private readonly CommandLineRun _line = new() { Clock = new FixedClock(new(2026, 11, 25, 14, 30, 0, TimeSpan.Zero)) };
    private readonly string _batch;

    public CountVerbTests()
    {
        _line.File("gull.card", PlanRun.Card);
        _batch = _line.File("day.batch", "batch \"Lamp day\"\nfor \"Cliff ward\", 12 cards\nmake 12 of \"gull.card\"\n");
    }

    public void Dispose() => _line.Dispose();

    private string Log => File.ReadAllText(_line.InFolder("day.count"));

    private JsonElement Design => _line.Json.GetProperty("designs")[0];

    [Fact]
    public void Without_a_log_nothing_is_made()
    {
        Assert.Equal(0, _line.Run("count", _batch, "--json"));
        Assert.Equal(
            "{\"card\":\"Gull\",\"make\":12,\"cut\":0,\"glued\":0,\"inside\":0,\"enveloped\":0,\"given\":0,\"left\":12,\"spoilt\":0}",
            JsonSerializer.Serialize(Design));
    }

    [Fact]
    public void An_entry_is_a_line_beside_the_batch()
    {
        Assert.Equal(0, _line.Run("count", _batch, "cut", "8", "Gull", "--note", "by lamplight"));
        Assert.Matches("^2026-11-25 14:30 cut 8 \"Gull\" note \"by lamplight\" #[0-9a-f]{16}\n$", Log);
    }

    [Fact]
    public void A_negative_number_takes_back()
    {
        _line.Run("count", _batch, "cut", "8", "gull.card");
        Assert.Equal(0, _line.Run("count", _batch, "cut", "-3", "gull", "--json"));
        Assert.Equal(5, Design.GetProperty("cut").GetInt32());
    }

    [Fact]
    public void Cards_are_given_to_a_recipient()
    {
        Assert.Equal(0, _line.Run("count", _batch, "given", "8", "Gull", "--to", "cliff ward", "--json"));
        Assert.Equal("{\"name\":\"Cliff ward\",\"cards\":12,\"given\":8,\"left\":4}",
            JsonSerializer.Serialize(_line.Json.GetProperty("recipients")[0]));
        Assert.Equal("{\"made\":8,\"days\":1,\"by\":\"2026-11-26\"}", JsonSerializer.Serialize(_line.Json.GetProperty("pace")));
    }

    [Fact]
    public void The_text_says_what_is_left_to_make()
    {
        _line.Run("count", _batch, "enveloped", "8", "Gull");
        Assert.StartsWith(
            "Lamp day\n8 of 12 cards are made; 4 are left to make.\n"
                + "At this pace, 8 in 1 day, the last one is made by 2026-11-26.\n", _line.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Did you mean \"glued\"?", "glud", "2", "Gull")]
    [InlineData("Did you mean \"Gull\"?", "cut", "2", "Gul")]
    [InlineData("not a number of cards", "cut", "a dozen", "Gull")]
    [InlineData("Only 0 of \"Gull\" are counted as cut", "cut", "-1", "Gull")]
    [InlineData("Give the number and the card", "cut")]
    [InlineData("Did you mean \"Cliff ward\"?", "given", "2", "Gull", "--to", "Clif ward")]
    [InlineData("Only cards that are given have a recipient", "cut", "2", "Gull", "--to", "Cliff ward")]
    [InlineData("quotation mark", "cut", "2", "Gull", "--note", "the \"best\"")]
    public void What_cannot_be_counted_is_wrong_usage_and_adds_nothing(string words, params string[] entry)
    {
        Assert.Equal(2, _line.Run(["count", _batch, .. entry]));
        Assert.Contains(words, _line.Error, StringComparison.Ordinal);
        Assert.Equal("", File.Exists(_line.InFolder("day.count")) ? Log : "");
    }

    [Fact]
    public void A_broken_line_of_the_log_is_an_error_at_its_place_and_the_rest_counts()
    {
        _line.Run("count", _batch, "cut", "8", "Gull");
        File.AppendAllText(_line.InFolder("day.count"), "eight more\n");
        Assert.Equal(1, _line.Run("count", _batch));
        Assert.Contains("day.count:2:1: error SK801", _line.Error, StringComparison.Ordinal);
        Assert.Contains("12    8", _line.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_is_no_batch()
    {
        Assert.Equal(1, _line.Run("count", _line.InFolder("gull.card")));
        Assert.Contains("SK701", _line.Error, StringComparison.Ordinal);
    }

    // The full campaign of a thousand kills is in Sketch.Benchmarks: "counting".
    [Fact]
    public async Task Killed_programs_lose_and_double_nothing_that_they_said_was_done()
    {
        var runs = Enumerable.Range(0, 8).Select(i => Program(killAfter: i % 2 == 0 ? null : 150 + (60 * i))).ToList();
        var done = (await Task.WhenAll(runs)).Count(succeeded => succeeded);

        Assert.True(done >= 4, $"{done} programs succeeded.");
        Assert.Equal(0, _line.Run("count", _batch, "--json"));
        Assert.InRange(Design.GetProperty("cut").GetInt32(), done, runs.Count);
        Assert.Equal(0, _line.Run("count", _batch, "cut", "1", "Gull"));
    }

    private async Task<bool> Program(int? killAfter)
    {
        using var program = Process.Start(new ProcessStartInfo(
            "dotnet", [typeof(Sketch.Cli.Program).Assembly.Location, "count", _batch, "cut", "1", "Gull"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        using var patience = new CancellationTokenSource();
        if (killAfter is { } milliseconds)
        {
            patience.CancelAfter(milliseconds);
        }

        try
        {
            await program.WaitForExitAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            program.Kill();
            await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        }

        return program.ExitCode == 0;
    }

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }
}
