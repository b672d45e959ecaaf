using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class CutFilesRunTests : IDisposable
{
    private const string Lamp =
        "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  sky: panel, showing 1/8, of blue\n    mat +1/8, of navy\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    private int Make(params string[] options) =>
        _line.Run(["templates", _line.File("lamp.card", Lamp), "--out", _line.InFolder("out"), "--machine", .. options]);

    private string[] Made() => Directory.Exists(_line.InFolder("out"))
        ? [.. Directory.GetFiles(_line.InFolder("out")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)] : [];

    [Fact]
    public void Each_paper_gets_an_SVG_and_a_DXF()
    {
        Assert.Equal(0, Make());
        Assert.Equal(
            ["lamp-machine-blue-1.dxf", "lamp-machine-blue-1.svg", "lamp-machine-navy-1.dxf", "lamp-machine-navy-1.svg",
                "lamp-machine-white-1.dxf", "lamp-machine-white-1.svg"], Made());
        Assert.Contains($"{_line.InFolder("out/lamp-machine-navy-1.dxf")}: navy, 1 piece\n", _line.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Left_over_sheets_of_an_earlier_run_are_deleted()
    {
        Make("--copies", "8", "--as", "svg");
        Assert.Contains("lamp-machine-navy-2.svg", Made());
        Make("--as", "svg");
        Assert.Equal(["lamp-machine-blue-1.svg", "lamp-machine-navy-1.svg", "lamp-machine-white-1.svg"], Made());
    }

    [Fact]
    public void The_same_card_gives_the_same_files_again()
    {
        Make();
        var first = File.ReadAllBytes(_line.InFolder("out/lamp-machine-navy-1.dxf"));
        Assert.Equal(0, Make());
        Assert.Equal(first, File.ReadAllBytes(_line.InFolder("out/lamp-machine-navy-1.dxf")));
    }

    [Fact]
    public void A_file_not_made_by_this_tool_is_not_replaced()
    {
        Directory.CreateDirectory(_line.InFolder("out"));
        File.WriteAllText(_line.InFolder("out/lamp-machine-white-1.dxf"), "0\nEOF\n");
        Assert.Equal(2, Make());
        Assert.Equal("0\nEOF\n", File.ReadAllText(_line.InFolder("out/lamp-machine-white-1.dxf")));
    }

    [Fact]
    public void Json_lists_the_sheets()
    {
        Assert.Equal(0, Make("--json", "--as", "dxf", "--copies", "2"));
        var sheet = _line.Json.GetProperty("sheets")[1];
        Assert.Equal(
            ("navy", 2, 304.8m, _line.InFolder("out/lamp-machine-navy-1.dxf")),
            (sheet.GetProperty("material").GetString(), sheet.GetProperty("pieces").GetInt32(),
                sheet.GetProperty("size").GetProperty("width").GetProperty("mm").GetDecimal(),
                sheet.GetProperty("written")[0].GetString()));
    }

    [Theory]
    [InlineData("--page a33", "Did you mean \"a3\"?")]
    [InlineData("--as pdf", "with --machine write svg, dxf or both")]
    [InlineData("--measured 100mm", "leave them out with --machine")]
    [InlineData("--copies 0", "write a whole number from 1 to 200")]
    [InlineData("--gap wide", "write the room between pieces")]
    public void A_wrong_option_is_reported_and_nothing_is_made(string options, string reported)
    {
        Assert.Equal(2, Make(options.Split(' ')));
        Assert.Contains(reported, _line.Error, StringComparison.Ordinal);
        Assert.Empty(Made());
    }

    [Theory]
    [InlineData("--copies 2", "add --machine")]
    [InlineData("--as dxf", "add --machine")]
    [InlineData("--page 12x12", "there is no page \"12x12\"")]
    public void Options_for_machines_need_machine(string options, string reported)
    {
        Assert.Equal(2, _line.Run(
            ["templates", _line.File("lamp.card", Lamp), "--out", _line.InFolder("out"), .. options.Split(' ')]));
        Assert.Contains(reported, _line.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lamp.dxf")]
    [InlineData("lamp.svg")]
    public void A_file_instead_of_a_folder_is_reported(string name)
    {
        Assert.Equal(2, _line.Run("templates", _line.File("lamp.card", Lamp), "--out", _line.InFolder(name), "--machine"));
        Assert.Contains("with --machine name a folder", _line.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("templates go into a PDF", _line.Error, StringComparison.Ordinal);
    }
}
