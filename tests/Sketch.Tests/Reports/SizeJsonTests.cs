using System.Text.Json;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Units;
using Xunit;
using static Sketch.Tests.Reports.SampleCard;

namespace Sketch.Tests.Reports;

public class SizeJsonTests
{
    private static JsonElement Json(Compilation compilation) =>
        JsonDocument.Parse(Written(o => ReportJson.WriteDocument(o,
            j => SizeJson.Write(j, compilation.Source.Path, compilation.Card, compilation.Findings)))).RootElement;

    private static JsonElement Piece(string path, params Piece[] pieces) =>
        Json(Compiled(pieces.Length == 0 ? FairWinds() : With(pieces))).GetProperty("pieces").EnumerateArray()
            .Single(p => p.GetProperty("path").GetString() == path);

    private static string LengthJson(Length length) => Written(o => ReportJson.WriteDocument(o, j =>
    {
        j.WriteStartObject();
        j.WriteLength("l", length);
        j.WriteEndObject();
    })).Replace("\n", "").Replace(" ", "");

    [Theory]
    [InlineData(69_850_000, "{\"l\":{\"mm\":69.85,\"in\":2.75,\"ruler\":\"23/4\"}}")]
    [InlineData(1_587_500, "{\"l\":{\"mm\":1.5875,\"in\":0.0625,\"ruler\":\"1/16\"}}")]
    [InlineData(33_866_667, "{\"l\":{\"mm\":33.866667,\"in\":1.333333,\"ruler\":\"15/16+\"}}")]
    [InlineData(793_750, "{\"l\":{\"mm\":0.79375,\"in\":0.03125,\"ruler\":\"1/32\"}}")]
    [InlineData(0, "{\"l\":{\"mm\":0,\"in\":0,\"ruler\":\"0\"}}")]
    [InlineData(-1_587_500, "{\"l\":{\"mm\":-1.5875,\"in\":-0.0625,\"ruler\":\"-1/16\"}}")]
    public void Lengths_are_exact_decimals(long nanometres, string json) => Assert.Equal(json, LengthJson(new(nanometres)));

    [Fact]
    public void A_file_has_its_card_base_pieces_and_findings() => Assert.Equal(
        ["file", "card", "base", "pieces", "findings"], Json(Compiled(FairWinds())).EnumerateObject().Select(p => p.Name));

    [Fact]
    public void The_base_has_its_closed_and_its_flat_size() => Assert.Equal(
        ["width", "height", "flatWidth", "flatHeight", "fold"], Json(Compiled(FairWinds())).GetProperty("base").EnumerateObject()
            .Select(p => p.Name));

    [Fact]
    public void A_piece_has_all_its_fields() => Assert.Equal(
        ["path", "face", "kind", "role", "paper", "count", "parts", "cut", "finished", "border", "place", "turn", "raised"],
        Piece("front/sky").EnumerateObject().Select(p => p.Name));

    [Fact]
    public void A_border_has_all_four_sides() => Assert.Equal(
        ["left", "right", "top", "bottom"], Piece("front/sky/mat").GetProperty("border").EnumerateObject().Select(p => p.Name));

    [Fact]
    public void Pieces_that_are_not_mats_have_no_border() =>
        Assert.Equal(JsonValueKind.Null, Piece("front/sky").GetProperty("border").ValueKind);

    [Fact]
    public void The_cut_size_is_null_if_nothing_is_cut() =>
        Assert.Equal(JsonValueKind.Null, Piece("front/sky/gem[2]").GetProperty("cut").ValueKind);

    [Fact]
    public void A_place_is_the_corner_of_the_unturned_piece() =>
        Assert.Equal("3/16", Piece("front/sky").GetProperty("place").GetProperty("left").GetProperty("ruler").GetString());

    [Fact]
    public void A_paper_has_its_side() => Assert.Equal("navy, back", Piece("front/sky/mat").GetProperty("paper").GetString());

    [Fact]
    public void A_colour_alone_is_not_a_paper() => Assert.Equal(JsonValueKind.Null, Piece("base").GetProperty("paper").ValueKind);

    [Theory]
    [InlineData(5.0, "5")]
    [InlineData(-2.5, "-2.5")]
    [InlineData(-1e-12, "0")]
    [InlineData(0.1 + 0.2, "0.3")]
    public void Turns_are_plain_numbers(double turn, string written) =>
        Assert.Equal(written, Piece("front/a", Paper("front/a", PieceKind.Panel, Sixteenths(0, 0, 8, 8)) with { Turn = turn })
            .GetProperty("turn")
            .GetRawText());

    [Fact]
    public void A_raised_piece_has_its_height() => Assert.Equal(
        2m, Piece("front/a", Paper("front/a", PieceKind.Panel, Sixteenths(0, 0, 8, 8)) with { Raised = Length.Millimetre(2) })
            .GetProperty("raised")
            .GetProperty("mm").GetDecimal());

    [Fact]
    public void A_flat_piece_is_not_raised() => Assert.Equal(JsonValueKind.Null, Piece("front/sky").GetProperty("raised").ValueKind);

    [Fact]
    public void A_file_that_is_not_a_card_has_no_base()
    {
        var json = Json(new(Source, null, []));
        Assert.Equal((JsonValueKind.Null, 0), (json.GetProperty("base").ValueKind, json.GetProperty("pieces").GetArrayLength()));
    }

    [Fact]
    public void A_lone_surrogate_does_not_break_the_document() =>
        Assert.Equal("lamp \uFFFD", Json(Compiled(FairWinds() with { Title = "lamp \ud83d" })).GetProperty("card").GetString());

    [Fact]
    public void A_long_list_of_words_in_all_scripts_is_intact()
    {
        // Letters of one to four bytes, so that buffers end within letters.
        var card = With([.. Enumerable.Range(0, 5000)
            .Select(i => Paper($"front/q{i}", PieceKind.Panel, Sixteenths(i, 0, 8, 8), White with { Role = "aä灯🗼" }))]);
        Assert.Equal(5000, Json(Compiled(card)).GetProperty("pieces").EnumerateArray()
            .Count(p => p.GetProperty("role").GetString() == "aä灯🗼"));
    }
}
