using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class FormatVerbTests : IDisposable
{
    private const string Canonical = "card \"Lamp\"\nbase A2, landscape\n";
    private const string Loose = "card   \"Lamp\"\nbase A2 landscape\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public void The_canonical_spelling_is_printed()
    {
        Assert.Equal(0, _line.Run("format", _line.File("a.card", Loose)));
        Assert.Equal((Canonical, ""), (_line.Output, _line.Error));
    }

    [Fact]
    public void A_file_is_not_changed_unless_asked()
    {
        var file = _line.File("a.card", Loose);
        _line.Run("format", file);
        Assert.Equal(Loose, File.ReadAllText(file));
    }

    [Fact]
    public void A_file_is_rewritten_when_asked()
    {
        var file = _line.File("a.card", Loose);
        Assert.Equal(0, _line.Run("format", "--write", file));
        Assert.Equal(Canonical, File.ReadAllText(file));
    }

    [Fact]
    public void A_canonical_file_is_not_touched()
    {
        var file = _line.File("a.card", Canonical);
        var written = new DateTime(2020, 2, 2, 2, 2, 2, DateTimeKind.Utc);
        File.SetLastWriteTimeUtc(file, written);
        _line.Run("format", "--write", file);
        Assert.Equal(written, File.GetLastWriteTimeUtc(file));
    }

    [Fact]
    public void A_file_with_errors_is_left_alone_and_the_others_are_rewritten()
    {
        const string Unclosed = "card   \"Lamp\n";
        var (broken, sound) = (_line.File("a.card", Unclosed), _line.File("b.card", Loose));
        Assert.Equal(1, _line.Run("format", "--write", broken, sound));
        Assert.Equal((Unclosed, Canonical), (File.ReadAllText(broken), File.ReadAllText(sound)));
    }

    [Fact]
    public void Json_reports_whether_the_spelling_changes()
    {
        _line.Run("format", "--json", _line.File("a.card", Loose), _line.File("b.card", Canonical));
        Assert.Equal([true, false], _line.Json.GetProperty("files").EnumerateArray().Select(f => f.GetProperty("changed").GetBoolean()));
    }

    [Fact]
    public void Json_holds_the_text() => Assert.Equal(Canonical, Text(Loose));

    private string? Text(string content)
    {
        _line.Run("format", "--json", _line.File("a.card", content));
        return _line.Json.GetProperty("files")[0].GetProperty("text").GetString();
    }
}
