using Xunit;

namespace Sketch.Tests.Cli.Commands;

/// <summary>A single - is standard input where files are read and standard output where they are written.</summary>
public sealed class StandardInputTests : IDisposable
{
    private const string Lamp = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel, showing 1/8, of blue\n";

    private readonly CommandLineRun _line = new() { Input = Lamp };

    public void Dispose() => _line.Dispose();

    [Fact]
    public void A_card_is_read_from_standard_input()
    {
        Assert.Equal(0, _line.Run("check", "-"));
        Assert.Equal("-: no problems found\n", _line.Output);
    }

    [Fact]
    public void Files_and_standard_input_are_read_in_the_order_of_the_command_line()
    {
        var file = _line.File("a.card", Lamp);
        _line.Run("check", file, "-");
        Assert.Equal($"{file}: no problems found\n-: no problems found\n", _line.Output);
    }

    [Fact]
    public void Standard_input_is_read_once()
    {
        _line.Input = "stash \"Museum\"\npaper gulls: 12 x 12, 3 sheets\n";
        Assert.Equal(2, _line.Run("draw", "-", "--stash", "-", "-o", _line.InFolder("out")));
        Assert.Contains("can be read once", _line.Error);
    }

    [Fact]
    public void A_batch_is_read_from_standard_input()
    {
        _line.Input = "batch \"Tags\"\ncut 2 of 2 x 3 from navy\n";
        _line.Run("plan", "-", "--json");
        Assert.Equal("Tags", _line.Json.GetProperty("batch").GetString());
    }

    [Fact]
    public void The_text_in_its_canonical_spelling_goes_to_standard_output()
    {
        _line.Input = Lamp.Replace("  panel", "     panel");
        Assert.Equal((0, Lamp), (_line.Run("format", "-"), _line.Output));
    }

    [Fact]
    public void Standard_input_cannot_be_rewritten() => Assert.Equal(2, _line.Run("format", "-", "--write"));

    [Fact]
    public void Standard_input_cannot_be_watched() => Assert.Equal(2, _line.Run("check", "-", "--watch"));

    [Fact]
    public void The_count_of_a_batch_needs_its_file() => Assert.Equal(2, _line.Run("count", "-"));

    [Theory]
    [InlineData("svg", "<svg")]
    [InlineData("png", "PNG")]
    [InlineData("pdf", "%PDF")]
    public void One_picture_goes_to_standard_output(string form, string start)
    {
        Assert.Equal(0, _line.Run("draw", "-", "-o", "-", "--as", form));
        Assert.Contains(start, System.Text.Encoding.Latin1.GetString(_line.Bytes.AsSpan(0, 8)));
        Assert.Empty(_line.Output);
    }

    [Fact]
    public void Templates_go_to_standard_output_as_one_pdf()
    {
        Assert.Equal(0, _line.Run("templates", "-", "-o", "-"));
        Assert.StartsWith("%PDF", System.Text.Encoding.Latin1.GetString(_line.Bytes.AsSpan(0, 8)));
        Assert.Empty(_line.Output);
    }

    [Fact]
    public void Two_faces_do_not_fit_standard_output()
    {
        _line.Input += "inside\n  strip full x 1/2, bottom 1/4, of blue\n";
        Assert.Equal(2, _line.Run("draw", "-", "-o", "-"));
        Assert.Contains("--face, out of front, inside.", _line.Error);
    }

    [Theory]
    [InlineData("draw", "-", "-o", "-", "--as", "svg,png")]
    [InlineData("draw", "-", "-o", "-", "--json")]
    [InlineData("templates", "-", "-o", "-", "--machine")]
    [InlineData("gallery", ".", "-o", "-")]
    [InlineData("variants", "-", "--stash", "a.stash", "-o", "-")]
    [InlineData("plan", "-", "-o", "-")]
    public void What_is_several_files_does_not_go_to_standard_output(params string[] line)
    {
        Assert.Equal(2, _line.Run(line));
        Assert.Contains("--out -: ", _line.Error);
        Assert.Empty(_line.Bytes);
    }

    [Fact]
    public void What_is_made_from_standard_input_is_named_after_it()
    {
        _line.Run("draw", "-", "-o", _line.InFolder("out"));
        Assert.True(File.Exists(_line.InFolder("out/standard-input-front.svg")));
    }
}
