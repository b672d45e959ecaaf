using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class TemplatesVerbTests : IDisposable
{
    private const string Lamp =
        "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  sky: panel, showing 1/8, of blue\n    mat +1/8, of navy\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    private string Out => _line.InFolder("lamp.pdf");

    private int Make(string content, params string[] options) =>
        _line.Run(["templates", _line.File("lamp.card", content), "--out", Out, .. options]);

    private string[] Made(string pattern) =>
        [.. Directory.GetFiles(_line.Folder, pattern, SearchOption.AllDirectories).Select(f => Path.GetRelativePath(_line.Folder, f))
            .Order(StringComparer.Ordinal)];

    [Fact]
    public void A_PDF_is_made_and_reported()
    {
        Assert.Equal(0, Make(Lamp));
        Assert.Equal(($"{Out}\n", true), (_line.Output, File.Exists(Out)));
    }

    [Fact]
    public void A_folder_takes_a_PDF_named_after_the_card()
    {
        Assert.Equal(0, _line.Run("templates", _line.File("lamp.card", Lamp), "--out", _line.InFolder("out")));
        Assert.Equal([Path.Combine("out", "lamp-templates.pdf")], Made("*.pdf"));
    }

    [Fact]
    public void Pages_can_be_SVG()
    {
        Assert.Equal(0, Make(Lamp, "--as", "svg"));
        Assert.Equal(["lamp-1.svg", "lamp-2.svg"], Made("*.svg").Take(2));
    }

    [Fact]
    public void Left_over_pages_of_an_earlier_longer_run_are_deleted()
    {
        Make(Lamp + "inside\n  panel 2 x 2, of red\n", "--as", "svg");
        var before = Made("*.svg").Length;
        Make(Lamp, "--as", "svg");
        Assert.Equal(before - 1, Made("*.svg").Length);
    }

    [Fact]
    public void A_page_not_made_by_this_tool_stays()
    {
        var other = _line.File("lamp-9.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
        Make(Lamp, "--as", "svg");
        Assert.True(File.Exists(other));
    }

    [Fact]
    public void What_hollow_mats_free_is_listed()
    {
        Assert.Equal(0, Make(Lamp, "--hollow"));
        // The panel is 3 7/8 x 5 1/8 in with a sixteenth of mat; a quarter inch stays on each side.
        Assert.Contains("The middle of mat behind sky is left for a smaller layer: 3 3/8 x 4 5/8 in, navy.", _line.Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Json_lists_pages_and_pieces()
    {
        Assert.Equal(0, Make(Lamp, "--json", "--hollow"));
        var piece = _line.Json.GetProperty("pieces")[1];
        Assert.Equal(
            ("mat behind sky", 1, 85.725m),
            (piece.GetProperty("name").GetString(), piece.GetProperty("count").GetInt32(), piece.GetProperty("freed")[0].GetProperty("size")
                .GetProperty("width").GetProperty("mm").GetDecimal()));
    }

    [Theory]
    [InlineData("--page", "A5", "--page: there is no page \"A5\"")]
    [InlineData("--page", "lettr", "Did you mean \"letter\"?")]
    [InlineData("--printer-scale", "98.5", "from 0.8 to 1.25")]
    [InlineData("--measured", "four", "is not a length")]
    [InlineData("--glue", "1/4", "--hollow")]
    public void A_wrong_option_is_reported_and_nothing_is_made(string option, string value, string reported)
    {
        Assert.Equal(2, Make(Lamp, option, value));
        Assert.Equal((true, false), (_line.Error.Contains(reported, StringComparison.Ordinal), File.Exists(Out)));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0 mm")]
    public void A_margin_without_room_for_glue_is_reported(string margin)
    {
        Assert.Equal(2, Make(Lamp, "--hollow", "--glue", margin));
        Assert.Contains("a margin of 0 leaves no room for glue", _line.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("x.svg")]
    [InlineData("x.PNG")]
    public void A_file_of_another_kind_is_reported_and_no_folder_is_made(string name)
    {
        Assert.Equal(2, _line.Run("templates", _line.File("lamp.card", Lamp), "--out", _line.InFolder(name)));
        Assert.Contains("templates go into a PDF or a folder", _line.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(_line.InFolder(name)));
    }

    [Theory]
    [InlineData("5", "mm", "The middle of mat behind sky is left for a smaller layer: 83 x 128 mm")]
    [InlineData(".5", "cm", "The middle of mat behind sky is left for a smaller layer: 83 x 128 mm")]
    [InlineData("3/8", "mm", "The middle of mat behind sky is left for a smaller layer: 73 x 118 mm")]
    public void A_margin_without_a_unit_is_in_the_units_of_the_card(string margin, string units, string reported)
    {
        // The panel is 93 x 138 mm; the margin is 5 mm, or 9.525 mm for three eighths of an inch.
        var sizes = units == "cm" ? ("9.3 x 13.8", ".4") : ("93 x 138", "4");
        var card = $"card \"Lamp\"\nunits {units}\nbase ISO A6, fold left, of white\nfront\n"
            + $"  sky: panel {sizes.Item1}, of blue\n    mat +{sizes.Item2}, of navy\n";
        Assert.Equal(0, Make(card, "--hollow", "--glue", margin));
        Assert.Contains(reported, _line.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_corrections_at_once_are_reported() => Assert.Equal(2, Make(Lamp, "--printer-scale", "0.98", "--measured", "3.9"));

    [Fact]
    public void A_place_that_cannot_be_written_to_is_reported()
    {
        _line.File("taken", "");
        Assert.Equal(2, _line.Run("templates", _line.File("lamp.card", Lamp), "--out", _line.InFolder("taken/lamp.pdf")));
        Assert.Contains("cannot be written", _line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_PDF_not_made_by_this_tool_is_not_replaced()
    {
        _line.File("lamp.pdf", "%PDF-1.7");
        Assert.Equal(2, Make(Lamp));
    }

    [Fact]
    public void A_piece_too_large_to_tile_is_an_error_and_nothing_is_made()
    {
        Assert.Equal(1, Make("card \"Sail\"\nbase 9 x 120, fold left, of white\nfront\n  strip 8 x 119, of red\n"));
        Assert.Equal((true, false), (_line.Error.Contains("SK511", StringComparison.Ordinal), File.Exists(Out)));
    }

    [Fact]
    public void A_card_with_nothing_on_it_is_a_warning_and_gives_its_base()
    {
        Assert.Equal(0, Make("card \"Bare\"\nbase A2, fold left, of white\n"));
        Assert.Equal((true, true), (_line.Error.Contains("SK512", StringComparison.Ordinal), File.Exists(Out)));
    }

    [Fact]
    public void A_card_with_errors_is_left_out_and_the_others_are_made()
    {
        Assert.Equal(1, _line.Run("templates", _line.Broken("broken.card"), _line.File("lamp.card", Lamp), "--out", Out));
        Assert.True(File.Exists(Out));
    }

    [Fact]
    public void The_same_cards_give_the_same_bytes()
    {
        Make(Lamp);
        var first = File.ReadAllBytes(Out);
        Make(Lamp);
        Assert.Equal(first, File.ReadAllBytes(Out));
    }

    [Fact]
    public void A_run_that_is_stopped_makes_nothing()
    {
        Assert.Equal(130, _line.Run(new CancellationToken(canceled: true), "templates", _line.File("lamp.card", Lamp), "--out", Out));
        Assert.False(File.Exists(Out));
    }
}
