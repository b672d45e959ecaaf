using Xunit;

namespace Sketch.Tests.Cli.Commands;

public sealed class QuietTests : IDisposable
{
    // The cut size is off the ruler, which is a note; the role is not declared, which is a warning.
    private const string WithNote = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 2.01 x 3, of blue\n";
    private const string WithWarning = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 2 x 3, of sliver\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Theory]
    [InlineData("--quiet")]
    [InlineData("-q")]
    public void A_card_with_notes_alone_says_nothing(string option)
    {
        var card = _line.File("a.card", WithNote);
        _line.Run("check", card);
        Assert.Contains(" note ", _line.Output);
        Assert.Equal((0, "", ""), (_line.Run("check", card, option), _line.Output, _line.Error));
    }

    [Fact]
    public void Problems_are_still_reported()
    {
        _line.Run("check", "-q", _line.File("a.card", WithWarning));
        Assert.Contains(" warning ", _line.Output);
    }

    [Fact]
    public void What_was_asked_for_is_still_written()
    {
        _line.Run("sizes", "-q", _line.File("a.card", WithNote));
        Assert.StartsWith("Lamp\n", _line.Output);
    }

    [Fact]
    public void Written_files_are_not_listed()
    {
        Assert.Equal(0, _line.Run("draw", "-q", _line.File("a.card", WithNote), "-o", _line.InFolder("out")));
        Assert.Equal("", _line.Output);
    }
}
