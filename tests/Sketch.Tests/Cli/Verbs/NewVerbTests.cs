using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class NewVerbTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Theory]
    [InlineData("fair-winds.card", "card \"Fair winds\"")]
    [InlineData("museum.stash", "stash \"Museum\"")]
    [InlineData("lamp_day.batch", "batch \"Lamp day\"")]
    public void A_first_file_is_written_that_has_no_problems(string name, string title)
    {
        foreach (var metric in new[] { false, true })
        {
            var file = _line.InFolder(metric ? "metric-" + name : name);
            Assert.Equal(0, metric ? _line.Run("new", file, "--metric") : _line.Run("new", file));
            Assert.Contains(metric ? $"{title.Split('"')[0]}\"Metric " : title, File.ReadAllText(file),
                StringComparison.Ordinal);
            Assert.Equal(0, _line.Run("check", file));
            Assert.Contains("no problems found", _line.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_batch_makes_the_card_of_its_folder_from_the_stash_of_its_folder()
    {
        _line.Run("new", _line.InFolder("fair-winds.card"));
        _line.Run("new", _line.InFolder("museum.stash"));
        var batch = _line.InFolder("lamp-day.batch");
        Assert.Equal(0, _line.Run("new", batch));
        Assert.Contains("stash \"museum.stash\"\nmake 12 of \"fair-winds.card\"\n", File.ReadAllText(batch), StringComparison.Ordinal);
        Assert.Equal(0, _line.Run("check", batch));
    }

    [Fact]
    public void A_batch_without_a_card_to_make_comes_with_one_and_with_a_stash()
    {
        Assert.Equal(0, _line.Run("new", _line.InFolder("lamp-day.batch")));
        Assert.Contains(
            "stash \"lamp-day.stash\"\nmake 12 of \"lamp-day.card\"", File.ReadAllText(_line.InFolder("lamp-day.batch")),
            StringComparison.Ordinal);
        Assert.Equal(0, _line.Run("check", _line.InFolder("lamp-day.card"), _line.InFolder("lamp-day.stash")));
    }

    [Fact]
    public void A_card_with_errors_is_not_made()
    {
        _line.File("broken.card", "card \"Broken\nbase");
        var batch = _line.InFolder("lamp-day.batch");
        Assert.Equal(0, _line.Run("new", batch));
        Assert.DoesNotContain("broken.card", File.ReadAllText(batch), StringComparison.Ordinal);
        Assert.Equal(0, _line.Run("check", batch));
    }

    [Fact]
    public void An_existing_file_is_never_changed()
    {
        var file = _line.File("mine.card", "my own words");
        Assert.Equal(2, _line.Run("new", file));
        Assert.Equal("my own words", File.ReadAllText(file));
        Assert.Contains("exists already and is not changed", _line.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fair-winds")]
    [InlineData("fair-winds.txt")]
    [InlineData(".card")]
    public void A_name_that_says_no_kind_is_wrong_usage(string name)
    {
        var file = _line.InFolder(name);
        Assert.Equal(2, _line.Run("new", file));
        Assert.Contains("ends in .card, .stash or .batch", _line.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }
}
