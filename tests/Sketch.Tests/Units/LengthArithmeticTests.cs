using CsCheck;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Units;

/// <summary>Lengths compare and count like the whole numbers of their nanometres.</summary>
public sealed class LengthArithmeticTests
{
    private static readonly Gen<(long, long)> Pairs = Gen.Select(Gen.Long[-3, 3], Gen.Long[-3, 3]);

    [Fact]
    public void Lengths_are_ordered_as_their_nanometres() => Pairs.Sample((a, b) =>
    {
        var (first, second) = (new Length(a), new Length(b));
        Assert.Equal(a < b, first < second);
        Assert.Equal(a > b, first > second);
        Assert.Equal(a <= b, first <= second);
        Assert.Equal(a >= b, first >= second);
        Assert.Equal(Math.Sign(a.CompareTo(b)), Math.Sign(first.CompareTo(second)));
    });

    [Fact]
    public void The_smaller_and_the_larger_of_two_are_told_apart() => Pairs.Sample((a, b) => Assert.Equal(
        (Math.Min(a, b), Math.Max(a, b)),
        (Length.Min(new(a), new(b)).Nanometres, Length.Max(new(a), new(b)).Nanometres)));

    [Fact]
    public void An_inch_is_25_4_millimetres()
    {
        var length = Length.Inch(2, 5, 8);
        Assert.Equal((66_675_000, 66.675, 2.625), (length.Nanometres, length.Millimetres, length.Inches));
        Assert.Equal("66.675 mm", length.ToString());
    }

    [Fact]
    public void A_fraction_that_is_no_whole_number_of_nanometres_is_refused() =>
        Assert.Throws<ArgumentException>(() => Length.Inch(0, 1, 3));

    [Fact]
    public void Dividing_drops_what_is_left_over() =>
        Assert.Equal((3, -3), ((new Length(7) / 2).Nanometres, (new Length(-7) / 2).Nanometres));

    [Theory]
    [InlineData(3, 2)]
    [InlineData(-3, -2)]
    public void A_scaled_length_stays_within_two_kilometres(long times, long kilometres) =>
        Assert.Equal(Length.Limit * kilometres, Length.Limit.Scale(times, 1));

    [Fact]
    public void A_scaled_length_is_the_nearest_one_whatever_the_signs() =>
        Gen.Select(Gen.Long[-1000, 1000], Gen.Long[-20, 20], Gen.Long[-20, 20].Where(d => d != 0)).Sample(
            (nanometres, numerator, denominator) =>
                new Length(nanometres).Scale(numerator, denominator).Nanometres
                == (long)Math.Round((decimal)nanometres * numerator / denominator, MidpointRounding.AwayFromZero));
}
