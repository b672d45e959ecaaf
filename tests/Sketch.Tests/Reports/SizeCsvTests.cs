using Sketch.Panels;
using Sketch.Reports;
using Xunit;
using static Sketch.Tests.Reports.SampleCard;

namespace Sketch.Tests.Reports;

public class SizeCsvTests
{
    private static string Csv(LaidOutCard card, string file = "fair-winds.card", bool metric = false) =>
        Written(o => SizeCsv.Write(o, SizeList.Of(card), file, new(metric)));

    [Fact]
    public void A_mat_is_a_row_of_decimal_numbers() => Assert.Contains(
        "\r\nfair-winds.card,Fair winds,front,front/sky/mat,mat,1,in,4,5.25,4,5.25,0.0625,0.0625,0.0625,0.0625,deep,\"navy, back\"\r\n",
            Csv(FairWinds()));

    [Fact]
    public void A_piece_that_is_not_cut_has_no_cut_size() => Assert.Contains(",gem,3,in,,,0.125,0.125,,,,,white,\r\n", Csv(FairWinds()));

    [Fact]
    public void The_header_has_as_many_columns_as_each_row()
    {
        var header = Written(SizeCsv.WriteHeader);
        var line = Csv(With()).Split("\r\n")[0];
        Assert.Equal(header.Count(c => c == ','), line.Count(c => c == ','));
    }

    [Fact]
    public void Millimetres_are_exact() => Assert.Contains(",panel,1,mm,98.425,130.175,", Csv(FairWinds(), metric: true));

    // RFC 4180, section 2, rules 5 to 7: such fields are quoted, and a quote in them is doubled.
    [Theory]
    [InlineData("a,b.card", "\"a,b.card\"")]
    [InlineData("a\"b.card", "\"a\"\"b.card\"")]
    [InlineData("a\nb.card", "\"a\nb.card\"")]
    public void File_names_with_commas_quotes_or_line_endings_are_quoted(string file, string field) =>
        Assert.StartsWith(field + ",Fair winds,", Csv(With(), file));

    [Fact]
    public void Control_characters_are_removed() =>
        Assert.StartsWith("a·[2J.card,Fair winds,", Csv(With(), "a\u001b[2J.card"));

    [Fact]
    public void A_title_that_a_spreadsheet_would_read_as_a_formula_gets_an_apostrophe() =>
        Assert.Contains(",'=1+1,", Csv(With() with { Title = "=1+1" }));
}
