using Sketch.Syntax;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Syntax;

public class NumberTests
{
    [Theory]
    [InlineData("2 5/8")]
    [InlineData("2-5/8")]
    [InlineData("2⅝")]
    [InlineData("2 ⅝")]
    [InlineData("2   5/8")]
    [InlineData("2 10/16")]
    [InlineData("2.625")]
    [InlineData("2 5/8 in")]
    [InlineData("2 5/8in")]
    [InlineData("2 5/8\"")]
    [InlineData("2 5/8”")]
    [InlineData("2⅝″")]
    [InlineData("66.675 mm")]
    [InlineData("66.675mm")]
    [InlineData("6.6675 cm")]
    [InlineData("0.066675 m")]
    [InlineData("0.21875 ft")]
    [InlineData("21/8")]
    public void Two_and_five_eighths_inches_can_be_spelt_in_many_ways(string number) =>
        Assert.Equal(Length.Inch(2, 5, 8), Reading.Length(number));

    [Theory]
    [InlineData("5/8")]
    [InlineData("⅝")]
    [InlineData(".625")]
    [InlineData("0.625")]
    [InlineData("40/64")]
    public void Less_than_an_inch_needs_no_whole_number(string number) => Assert.Equal(Length.Inch(0, 5, 8), Reading.Length(number));

    [Theory]
    [InlineData("mm", "35", 35_000_000)]
    [InlineData("mm", "1/2 in", 12_700_000)]
    [InlineData("mm", "0.000001", 1)]
    [InlineData("cm", "3.5", 35_000_000)]
    [InlineData("cm", "1\"", 25_400_000)]
    [InlineData("in", "1 m", 1_000_000_000)]
    [InlineData("in", "2 yd", 1_828_800_000)]
    public void Bare_numbers_are_in_the_units_of_the_file(string units, string number, long nanometres) =>
        Assert.Equal(nanometres, Reading.Length(number, units).Nanometres);

    [Theory]
    [InlineData("4inx5in")]
    [InlineData("4 in x 5 in")]
    [InlineData("4x5")]
    [InlineData("4 × 5")]
    [InlineData("4\"x5\"")]
    [InlineData("4 X 5")]
    public void The_x_of_a_size_needs_no_spaces(string size)
    {
        var box = Assert.IsType<BoxSize>(Reading.Line<PieceLine>($"panel {size}").Head.Size);
        Assert.Equal((Length.Inch(4), Length.Inch(5)), (((LengthExtent)box.Width).Value, ((LengthExtent)box.Height).Value));
    }

    [Theory]
    [InlineData("3 gem 1/8 in a row")]
    [InlineData("3 gem 1/8, in a row")]
    [InlineData("3 gem 1/8 in, in a row")]
    [InlineData("3 gem 1/8\" in a row")]
    public void In_after_a_number_is_a_unit_unless_a_row_follows(string line)
    {
        var gems = Reading.Line<PieceLine>(line);
        Assert.Equal(Length.Inch(0, 1, 8), Assert.IsType<SingleSize>(gems.Head.Size).Value);
        Assert.IsType<ArrangeClause>(Assert.Single(gems.Clauses));
    }

    [Theory]
    [InlineData("2,5", "2.5")]
    [InlineData("1/3", "5/16")]
    [InlineData("2 2/3", "2 11/16")]
    [InlineData("⅓", "5/16")]
    [InlineData("1/128", "1/64")]
    [InlineData("3 in", null)]
    public void A_number_that_is_not_on_a_ruler_gets_the_nearest_valid_one(string number, string? corrected)
    {
        var mistake = Reading.Mistakes($"panel {number} x 1").SingleOrDefault();
        Assert.Equal(corrected, mistake?.Replacement);
        Assert.Equal(corrected is null ? null : "SK102", mistake?.Code);
    }

    [Theory]
    [InlineData("1/3", "Write 5/16, the nearest sixteenth.")]
    [InlineData("1/100", "Write 1/64, the nearest sixty-fourth.")]
    public void The_offered_mark_is_called_by_its_name(string number, string hint) =>
        Assert.Equal(hint, Reading.Mistakes($"panel {number} x 1").Single().Hint);

    [Theory]
    [InlineData("1/0")]
    [InlineData("2 9/8")]
    [InlineData("1234567890")]
    [InlineData("0.1234567891")]
    [InlineData("1/1234567890")]
    [InlineData("1001 m")]
    [InlineData("999999999")]
    [InlineData("0.0000001 mm")]
    [InlineData("-2")]
    [InlineData("-1/8")]
    [InlineData("2 inches")]
    public void An_invalid_number_is_one_finding(string number) =>
        Assert.Equal(["SK102"], Reading.Mistakes($"panel {number} x 1").Select(m => m.Code));

    [Theory]
    [InlineData("mm", "1/8", "1/8 in")]
    [InlineData("cm", "2 1/2", "2 1/2 in")]
    public void A_fraction_in_a_metric_file_needs_its_unit(string units, string number, string corrected) =>
        Assert.Equal(corrected, Assert.Single(Reading.Mistakes($"panel {number} x 1", units)).Replacement);

    [Theory]
    [InlineData("in", "148 x 105 mm", 148_000_000)]
    [InlineData("in", "14.8 x 10.5 cm", 148_000_000)]
    [InlineData("in", "1/2 x 30 mm", 12_700_000)]
    [InlineData("in", "2 x 1 in", 50_800_000)]
    [InlineData("mm", "60 x 1 in", 60_000_000)]
    [InlineData("cm", "6 x 10 mm", 60_000_000)]
    public void In_a_file_in_inches_a_bare_width_takes_the_unit_of_a_metric_height(string units, string size, long width) =>
        Assert.Equal(width, Assert.IsType<LengthExtent>(
            Assert.IsType<BoxSize>(Reading.Line<PieceLine>($"panel {size}", units).Head.Size).Width).Value.Nanometres);

    [Theory]
    [InlineData("left -1/8", -1, 8)]
    [InlineData("left −1/8", -1, 8)]
    [InlineData("left -2 1/2", -5, 2)]
    [InlineData("left -0.5", -1, 2)]
    public void A_distance_can_be_negative(string clause, long numerator, long denominator) =>
        Assert.Equal(Length.Inch(0, numerator, denominator), Reading.Clause<EdgeClause>(clause).Distance);

    [Fact]
    public void A_minus_sign_touches_its_number() =>
        Assert.Equal(["SK101"], Reading.Mistakes("panel 1 x 1, left - 1/8").Select(m => m.Code));

    [Theory]
    [InlineData("turn 5", 5)]
    [InlineData("turn -5", -5)]
    [InlineData("turn left 5", -5)]
    [InlineData("turn right 2.5", 2.5)]
    [InlineData("turn right 2 1/2", 2.5)]
    public void A_turn_is_in_degrees_clockwise(string clause, double degrees) =>
        Assert.Equal(degrees, Reading.Clause<TurnClause>(clause).Degrees);

    [Theory]
    [InlineData("0 gem 1/8")]
    [InlineData("2001 gem 1/8")]
    [InlineData("gem 1/8, in a grid 0 x 2")]
    public void A_count_is_from_1_to_2000(string line) => Assert.Equal(["SK119"], Reading.Mistakes(line).Select(m => m.Code));
}
