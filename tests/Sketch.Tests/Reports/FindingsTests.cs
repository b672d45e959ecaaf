using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Reports;
using Sketch.Text;
using Xunit;
using static Sketch.Tests.Reports.SampleCard;

namespace Sketch.Tests.Reports;

public class FindingsTests
{
    private static readonly FindingKind Unknown = new("SK999", Severity.Error, "Unknown word");

    private static string Report(string content, TextSpan span, string message = "There is no role \"skye\".") =>
        Written(o => FindingsText.Write(
        o, [new(Unknown, new(new("fair-winds.card", content), span), message, "Write \"sky\".")]));

    [Fact]
    public void A_finding_shows_its_position_and_line_and_hint() => Assert.Equal(
        """
        fair-winds.card:2:20: error SK999: There is no role "skye".
            2 |  panel, 1 x 1,  of skye
              |                    ^^^^
          hint: Write "sky".

        """.ReplaceLineEndings("\n"), Report("front\n\tpanel, 1 x 1,  of skye\n", new(6 + 19, 6 + 23)));

    [Fact]
    public void Columns_count_from_one() => Assert.StartsWith("fair-winds.card:2:1:", Report("a\nb", new(2, 3)));

    [Fact]
    public void Combining_accents_do_not_shift_the_caret() =>
        Assert.Contains("| e\u0301 x\n      |   ^\n", Report("e\u0301 x", new(3, 4)));

    [Fact]
    public void A_finding_at_the_end_of_the_file_has_a_caret_too() => Assert.Contains("| card\n      |     ^\n", Report("card", new(4, 4)));

    [Fact]
    public void A_finding_on_an_empty_line_shows_no_line() => Assert.DoesNotContain("|", Report("", new(0, 0)));

    [Fact]
    public void A_very_long_line_is_shown_in_part() =>
        Assert.All(Report(new string('x', 1_000_000), new(500_000, 600_000)).Split('\n'), l => Assert.InRange(l.Length, 0, 115));

    [Fact]
    public void A_file_cannot_send_commands_to_the_terminal() =>
        Assert.DoesNotContain('\u001b', Report("\u001b[2J", new(0, 4), "Not \u001b[2J."));

    [Fact]
    public void The_summary_counts_by_severity()
    {
        var note = new Finding(new("SK998", Severity.Note, "n"), At(0, 1), "", "");
        var error = note with { Kind = Unknown };
        Assert.Equal("2 errors, 1 note", FindingsText.Summary([error, note, error]));
    }

    [Fact]
    public void A_finding_as_JSON_has_its_span() => Assert.Equal(
        """{"file":"fair-winds.card","code":"SK999","severity":"error","message":"m","hint":"h","""
            + "\"line\":2,\"column\":2,\"endLine\":3,\"endColumn\":14}",
        Json(new(Unknown, At(19, 60), "m", "h")));

    [Theory]
    [InlineData("sky")]
    [InlineData("")]
    public void A_finding_as_JSON_has_its_replacement(string replacement) =>
        Assert.EndsWith($$""","replacement":"{{replacement}}"}""", Json(new(Unknown, At(19, 60), "m", "h") { Replacement = replacement }),
            StringComparison.Ordinal);

    private static string Json(Finding finding)
    {
        var text = Written(o => ReportJson.WriteDocument(o, j =>
        {
            j.WriteStartObject();
            FindingsJson.Write(j, [finding]);
            j.WriteEndObject();
        }));
        return JsonSerializer.Serialize(JsonDocument.Parse(text).RootElement.GetProperty("findings")[0]);
    }
}
