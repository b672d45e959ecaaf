using CsCheck;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Syntax;

public class LengthTests
{
    private const long Sixteenth = Length.NanometresPerInch / 16;

    private static readonly Gen<Length> SixtyFourths = Gen.Long[0, 64_000].Select(n => new Length(n * (Length.NanometresPerInch / 64)));

    [Theory]
    [InlineData(0, "0")]
    [InlineData(Sixteenth, "1/16")]
    [InlineData(14 * Sixteenth, "7/8")]
    [InlineData(42 * Sixteenth, "2 5/8")]
    [InlineData(32 * Sixteenth, "2")]
    [InlineData(Sixteenth + 1, "1/16 +")]
    [InlineData(Sixteenth - 1, "1/16 -")]
    [InlineData(Sixteenth / 2, "0 +")]
    [InlineData(3 * Sixteenth / 2, "1/16 +")]
    [InlineData(3 * Sixteenth / 2 + 1, "1/8 -")]
    [InlineData(-42 * Sixteenth, "-2 5/8")]
    [InlineData(-Sixteenth - 1, "-1/16 -")]
    public void The_nearest_mark_is_named_and_ties_go_to_the_smaller(long nanometres, string text) =>
        Assert.Equal(text, RulerText.Inches(new(nanometres)));

    [Theory]
    [InlineData(16, "1/16 +")]
    [InlineData(32, "3/32")]
    [InlineData(64, "3/32")]
    public void Finer_rulers_have_more_marks(int marks, string text) => Assert.Equal(text, RulerText.Inches(Length.Inch(0, 3, 32), marks));

    [Theory]
    [InlineData(69_850_000, "69.85 mm")]
    [InlineData(1, "0 mm")]
    [InlineData(5_000, "0.01 mm")]
    [InlineData(-1_500_000, "-1.5 mm")]
    public void Millimetres_have_two_decimals_at_most(long nanometres, string text) => Assert.Equal(text, RulerText.Millimetres(new(nanometres)));

    [Fact]
    public void What_is_printed_in_64ths_reads_as_the_same_length() =>
        SixtyFourths.Where(l => l > Length.Zero).Sample(l => Assert.Equal(l, Reading.Length(RulerText.Inches(l, 64))), iter: 300);

    [Fact]
    public void What_is_printed_in_millimetres_reads_as_the_same_length() =>
        Gen.Long[1, 10_000_000_000].Sample(n => Assert.Equal(new(n), Reading.Length(RulerText.MillimetreNumber(new(n), 6), "mm")), iter: 300);

    [Fact]
    public void The_named_mark_is_within_half_a_mark() => Gen.Long[0, 1_000_000_000].Sample(
        n =>
        {
            var mark = Mark(RulerText.Inches(new(n)));
            return (mark - new Length(n)).Abs().Nanometres * 2 <= Sixteenth;
        },
        iter: 300);

    [Fact]
    public void Equal_parts_add_up_and_differ_by_a_nanometre_at_most() =>
        Gen.Select(Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Gen.Int[1, 1000]).Sample(
            (whole, count) =>
            {
                var parts = Enumerable.Range(0, count).Select(i => Parts.Equal(new(whole), count, i).Nanometres).ToArray();
                return parts.Sum() == whole && parts.Max() - parts.Min() <= 1;
            },
            iter: 300);

    [Fact]
    public void A_part_begins_where_the_parts_before_it_end() =>
        Gen.Select(Gen.Long[-1_000_000_000, 1_000_000_000], Gen.Int[1, 100], Gen.Int[0, 99]).Sample(
            (whole, count, index) => index >= count
                || Parts.Before(new(whole), count, index).Nanometres == Enumerable.Range(0, index).Sum(i => Parts.Equal(new(whole), count, i).Nanometres),
            iter: 300);

    [Theory]
    [InlineData(10, 1, 4, 3)]
    [InlineData(-10, 1, 4, -3)]
    [InlineData(9, 1, 4, 2)]
    [InlineData(7, 2, 2, 7)]
    public void Scaling_rounds_halves_away_from_zero(long nanometres, long numerator, long denominator, long scaled) =>
        Assert.Equal(scaled, new Length(nanometres).Scale(numerator, denominator).Nanometres);

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(double.PositiveInfinity, 2_000_000_000_000)]
    [InlineData(-1e300, -2_000_000_000_000)]
    [InlineData(0.0000006, 1)]
    public void A_drawn_measure_stays_in_range(double millimetres, long nanometres) => Assert.Equal(nanometres, Length.NearestMillimetres(millimetres).Nanometres);

    /// <summary>The mark that a text names, without its sign for a remainder.</summary>
    private static Length Mark(string text)
    {
        var mark = text.TrimEnd('+', '-').TrimEnd();
        return mark == "0" ? Length.Zero : Reading.Length(mark);
    }
}
