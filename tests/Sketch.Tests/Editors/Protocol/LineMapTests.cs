using CsCheck;
using Sketch.Editors.Protocol;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Editors.Protocol;

public sealed class LineMapTests
{
    private static readonly string[] Parts = ["a", "\r", "\n", "\r\n", "🗼", "é"];

    private static readonly Gen<string> Texts =
        Gen.OneOf(Parts.Select(Gen.Const).ToArray()).Array[0, 30].Select(parts => string.Concat(parts));

    [Theory]
    [InlineData("a\nb", 1)]
    [InlineData("a\r\nb", 1)]
    [InlineData("a\rb", 1)]
    [InlineData("a\n\rb", 2)]
    public void Each_line_end_of_the_protocol_ends_a_line(string text, int line) =>
        Assert.Equal(new(line, 0), new LineMap(text).PlaceOf(text.IndexOf('b', StringComparison.Ordinal)));

    [Fact]
    public void A_place_past_the_end_of_its_line_is_that_end() => Assert.Equal(2, new LineMap("ab\r\ncd").OffsetOf(new(0, 9)));

    [Theory]
    [InlineData(7, 0, 5)]
    [InlineData(-1, -1, 0)]
    [InlineData(1, int.MaxValue, 5)]
    public void A_place_outside_the_text_is_the_nearest_in_it(int line, int character, int offset) =>
        Assert.Equal(offset, new LineMap("ab\ncd").OffsetOf(new(line, character)));

    [Fact]
    public void A_range_that_ends_before_it_starts_is_empty() =>
        Assert.Equal(new TextSpan(2, 2), new LineMap("abcd").SpanOf(new(new(0, 2), new(0, 1))));

    [Fact]
    public void The_place_of_an_offset_leads_back_to_it_outside_line_ends() => Texts.Sample(text =>
    {
        var map = new LineMap(text);
        for (var at = 0; at <= text.Length; at++)
        {
            var isInLineEnd = at > 0 && at < text.Length && text[at - 1] == '\r' && text[at] == '\n';
            Assert.Equal(isInLineEnd ? at - 1 : at, map.OffsetOf(map.PlaceOf(at)));
        }
    });
}
