using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Cli;

public sealed class SizesVerbTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public void Findings_do_not_mix_with_the_table()
    {
        Assert.Equal(1, _line.Run("sizes", _line.Broken("a.card")));
        Assert.Equal(("", true), (_line.Output, _line.Error.Contains("error ")));
    }

    [Fact]
    public void Json_holds_the_findings_and_nothing_else_is_told()
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
}
