using System.Text.Json;
using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class SizesVerbTests : IDisposable
{
    private const string Lamp =
        "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  sky: panel, showing 1/8, of blue\n    mat +1/8, of navy\n    2 gem 1/8, "
            + "in a row, gap 1/16, of red\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public void Findings_do_not_mix_with_the_table()
    {
        Assert.Equal(1, _line.Run("sizes", _line.Broken("a.card")));
        Assert.Equal(("", true), (_line.Output, _line.Error.Contains("error ")));
    }

    [Fact]
    public void Json_holds_the_findings_and_nothing_else_is_reported()
    {
        Assert.Equal(1, _line.Run("sizes", "--json", _line.Broken("a.card")));
        Assert.Equal(("", 1), (_line.Error, _line.Json.GetProperty("files")[0].GetProperty("findings").GetArrayLength()));
    }

    [Fact]
    public void A_broken_file_has_no_base_and_no_pieces()
    {
        _line.Run("sizes", "--json", _line.Broken("a.card"));
        var file = _line.Json.GetProperty("files")[0];
        Assert.Equal((JsonValueKind.Null, 0), (file.GetProperty("base").ValueKind, file.GetProperty("pieces").GetArrayLength()));
    }

    [Fact]
    public void Csv_has_its_column_names_even_without_a_card()
    {
        _line.Run("sizes", "--csv", _line.Broken("a.card"));
        Assert.StartsWith("file,card,face,piece,kind,count,unit,", _line.Output);
    }

    [Fact]
    public void A_card_has_the_sizes_a_maker_works_out()
    {
        // Common practice, no source: an eighth showing on a card of 4 1/4 x 5 1/2 leaves 4 x 5 1/4, and the panel on a mat of an eighth is
        // 3 7/8 x 5 1/8.
        Assert.Equal(0, _line.Run("sizes", _line.File("lamp.card", Lamp)));
        var cells = _line.Output.Split('\n').Select(l => Regex.Split(l.Trim(), " {2,}")).ToList();
        Assert.Equal(("4 x 5 1/4", "3 7/8 x 5 1/8"), (cells.Single(c => c[0] == "sky/mat")[2], cells.Single(c => c[0] == "sky")[2]));
    }

    [Fact]
    public void Json_of_a_card_reports_every_piece()
    {
        Assert.Equal(0, _line.Run("sizes", "--json", _line.File("lamp.card", Lamp)));
        var pieces = _line.Json.GetProperty("files")[0].GetProperty("pieces").EnumerateArray();
        Assert.Equal(["base", "front/sky/mat", "front/sky", "front/sky/gem[1]", "front/sky/gem[2]"],
            pieces.Select(p => p.GetProperty("path").GetString()));
    }

    [Fact]
    public void A_finer_ruler_is_used_when_asked_for()
    {
        _line.Run("sizes", "--ruler", "64",
            _line.File("a.card", "card \"A\"\nbase A2, fold left, of white\nfront\n  panel 1 1/64 x 1, of blue\n"));
        Assert.Contains("1 1/64 x 1", _line.Output);
    }

    [Fact]
    public void Millimetres_are_used_when_asked_for()
    {
        _line.Run("sizes", "--mm", _line.File("lamp.card", Lamp));
        Assert.Contains("101.6 x 133.35", _line.Output);
    }

    [Fact]
    public void A_metric_card_is_listed_in_millimetres()
    {
        _line.Run("sizes", _line.File(
            "a.card", "card \"A\"\nunits mm\nbase 105 x 148, fold left, of white\nfront\n  square 35, of blue\n"));
        Assert.Contains("35 x 35", _line.Output);
    }

    [Fact]
    public void Csv_of_several_cards_has_one_header()
    {
        _line.Run("sizes", "--csv", _line.File("a.card", Lamp), _line.File("b.card", Lamp));
        Assert.Single(_line.Output.Split("\r\n"), l => l.StartsWith("file,", StringComparison.Ordinal));
    }

    [Fact]
    public void Tables_of_several_cards_stand_apart()
    {
        _line.Run("sizes", _line.File("a.card", Lamp), _line.File("b.card", Lamp));
        Assert.Contains("\n\nLamp\n", _line.Output);
    }

    [Fact]
    public void A_stash_has_no_sizes()
    {
        Assert.Equal(2, _line.Run("sizes", _line.File("museum.stash", "stash \"Museum shelf\"\ncardstock white: letter, 25 sheets\n")));
        Assert.Contains("there is no card in it", _line.Error);
    }
}
