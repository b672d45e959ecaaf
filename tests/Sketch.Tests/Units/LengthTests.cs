using CsCheck;
using Sketch.Tests.Syntax;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Units;

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
    [InlineData(3 * Sixteenth / 2, "1/16 +")]
    [InlineData(3 * Sixteenth / 2 + 1, "1/8 -")]
    [InlineData(-42 * Sixteenth, "-2 5/8")]
    [InlineData(-Sixteenth - 1, "-1/16 -")]
    public void The_nearest_mark_is_written_and_ties_go_to_the_smaller(long nanometres, string text) =>
        Assert.Equal(text, LengthFormat.Ruler(new(nanometres)));

    [Theory]
    [InlineData(Sixteenth / 2, 16, "1/32")]
    [InlineData(Sixteenth / 4, 16, "1/64")]
    [InlineData(Sixteenth / 4, 32, "1/64")]
    [InlineData(Sixteenth / 2 - 1, 16, "1/16 -")]
    [InlineData(11, 64, "1/64 -")]
    [InlineData(-Sixteenth / 2, 16, "-1/32")]
    [InlineData(-11, 16, "-1/16 +")]
    public void A_length_below_half_a_mark_is_written_exactly_or_as_less_than_the_first_mark(long nanometres, int marks, string text) =>
        Assert.Equal(text, LengthFormat.Ruler(new(nanometres), marks));

    [Fact]
    public void A_remainder_of_equal_parts_is_written_as_zero_and_a_bit() =>
        Assert.Equal(("0 +", "0"), (LengthFormat.Ruler(new(1)), LengthFormat.MillimetreNumber(new(1))));

    [Fact]
    public void No_positive_size_is_written_as_zero() =>
        Gen.Select(Gen.OneOf(Gen.Long[11, 2_000_000], Gen.Long[11, 20_000]), Gen.Bool, Gen.OneOf(16, 32, 64)).Sample(
            (nanometres, metric, marks) =>
            {
                var (lengths, length) = (new LengthFormat(metric, marks), new Length(nanometres));
                string[] written = [lengths.Text(length), lengths.Written(length), lengths.About(length), LengthFormat.Exact(length),
                    lengths.Text(lengths.Nearest(length))];
                return written.All(w => w.TrimEnd(' ', '+', '-') is not ("0" or "0 in" or "0 mm" or "about 0 in"));
            },
            iter: 300);

    [Theory]
    [InlineData(false, Sixteenth / 3, Sixteenth)]
    [InlineData(false, 3 * Sixteenth / 2, Sixteenth)]
    [InlineData(false, 3 * Sixteenth / 2 + 1, 2 * Sixteenth)]
    [InlineData(true, 1_500_000, 1_000_000)]
    [InlineData(true, 400_000, 1_000_000)]
    public void The_nearest_step_is_never_zero(bool metric, long nanometres, long nearest) =>
        Assert.Equal(nearest, new LengthFormat(metric).Nearest(new(nanometres)).Nanometres);

    [Theory]
    [InlineData(16, "1/16 +")]
    [InlineData(32, "3/32")]
    [InlineData(64, "3/32")]
    public void Finer_rulers_have_more_marks(int marks, string text) =>
        Assert.Equal(text, LengthFormat.Ruler(Length.Inch(0, 3, 32), marks));

    [Theory]
    [InlineData(69_850_000, "69.85 mm")]
    [InlineData(1, "0 mm")]
    [InlineData(5_000, "0.01 mm")]
    [InlineData(-1_500_000, "-1.5 mm")]
    public void Millimetres_have_two_decimals_at_most(long nanometres, string text) =>
        Assert.Equal(text, LengthFormat.Millimetres(new(nanometres)));

    [Fact]
    public void A_length_written_in_64ths_reads_back_exactly() =>
        SixtyFourths.Where(l => l > Length.Zero).Sample(l => Assert.Equal(l, Reading.Length(LengthFormat.Ruler(l, 64))), iter: 300);

    [Fact]
    public void A_length_written_in_millimetres_reads_back_exactly() =>
        Gen.Long[1, 10_000_000_000]
            .Sample(n => Assert.Equal(new(n), Reading.Length(LengthFormat.MillimetreNumber(new(n), 6), "mm")), iter: 300);

    [Fact]
    public void The_written_mark_is_within_half_a_mark() => Gen.Long[0, 1_000_000_000].Sample(
        n =>
        {
            var mark = Mark(LengthFormat.Ruler(new(n)));
            return n * 2 <= Sixteenth || (mark - new Length(n)).Abs().Nanometres * 2 <= Sixteenth;
        },
        iter: 300);

    [Fact]
    public void Equal_parts_add_up_and_differ_by_at_most_a_nanometre() =>
        Gen.Select(Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Gen.Int[1, 1000]).Sample(
            (whole, count) =>
            {
                var parts = Enumerable.Range(0, count).Select(i => Parts.Equal(new(whole), count, i).Nanometres).ToArray();
                return parts.Sum() == whole && parts.Max() - parts.Min() <= 1;
            },
            iter: 300);

    [Fact]
    public void Each_part_starts_where_the_previous_one_ends() =>
        Gen.Select(Gen.Long[-1_000_000_000, 1_000_000_000], Gen.Int[1, 100], Gen.Int[0, 99]).Sample(
            (whole, count, index) => index >= count
                || Parts.Before(new(whole), count, index).Nanometres == Enumerable.Range(0, index)
                .Sum(i => Parts.Equal(new(whole), count, i).Nanometres),
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
    public void A_drawn_measure_stays_in_range(double millimetres, long nanometres) =>
        Assert.Equal(nanometres, Length.NearestMillimetres(millimetres).Nanometres);

    /// <summary>The mark in a text, without the sign for a remainder.</summary>
    private static Length Mark(string text)
    {
        var mark = text.TrimEnd('+', '-').TrimEnd();
        return mark == "0" ? Length.Zero : Reading.Length(mark);
    }
}
