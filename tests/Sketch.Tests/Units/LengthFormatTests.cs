using CsCheck;
using Sketch.Units;
using Xunit;
using Size = Sketch.Units.Size;

namespace Sketch.Tests.Units;

/// <summary>How lengths, sizes and borders are written in inches and in millimetres.</summary>
public sealed class LengthFormatTests
{
    private static readonly LengthFormat Inches = new(false);
    private static readonly LengthFormat Metric = new(true);

    /// <summary>A tenth of an inch, which no ruler shows.</summary>
    private static readonly Length Tenth = new(Length.NanometresPerInch / 10);

    [Fact]
    public void Each_system_has_its_unit_and_its_name() =>
        Assert.Equal(("in", "inches", "mm", "millimetres"), (Inches.Unit, Inches.UnitName, Metric.Unit, Metric.UnitName));

    [Fact]
    public void A_size_is_written_as_width_and_height_in_the_units_of_the_card()
    {
        var size = new Size(Length.Inch(4), Length.Inch(5, 1, 4));
        Assert.Equal(("4 x 5 1/4", "101.6 x 133.35"), (Inches.Text(size), Metric.Text(size)));
    }

    [Theory]
    [InlineData(2, 2, 2, 2, "1/8")]
    [InlineData(4, 2, 4, 2, "sides 1/4, top and bottom 1/8")]
    [InlineData(8, 2, 2, 2, "1/8, left 1/2")]
    [InlineData(2, 8, 2, 2, "1/8, top 1/2")]
    [InlineData(2, 2, 8, 2, "1/8, right 1/2")]
    [InlineData(2, 2, 2, 8, "1/8, bottom 1/2")]
    [InlineData(2, 2, 4, 4, "left 1/8, right 1/4, top 1/8, bottom 1/4")]
    [InlineData(2, 4, 2, 8, "left 1/8, right 1/8, top 1/4, bottom 1/2")]
    [InlineData(4, 2, 8, 2, "left 1/4, right 1/2, top 1/8, bottom 1/8")]
    public void A_border_is_written_in_as_few_words_as_cover_its_sides(int left, int top, int right, int bottom, string text) =>
        Assert.Equal(text, Inches.Text(new Insets(Sixteenths(left), Sixteenths(top), Sixteenths(right), Sixteenths(bottom))));

    [Fact]
    public void Files_get_a_fraction_where_a_ruler_has_a_mark_and_decimals_elsewhere()
    {
        Assert.Equal(("2 5/8 in", "1/64 in"), (Inches.WithUnit(Sixteenths(42)), Inches.WithUnit(Length.Inch(0, 1, 64))));
        Assert.Equal(("0.1 in", "2.54 mm"), (Inches.WithUnit(Tenth), Metric.WithUnit(Tenth)));
    }

    [Fact]
    public void Files_of_any_unit_get_a_fraction_of_an_inch_or_exact_millimetres() =>
        Assert.Equal("2 5/8 in x 1.234567 mm", LengthFormat.Exact(new Size(Sixteenths(42), new(1_234_567))));

    [Fact]
    public void A_bare_number_has_six_decimals_at_most() =>
        Assert.Equal(("0.015625", "0.03937", "1.234567"),
            (Inches.Number(Length.Inch(0, 1, 64)), Inches.Number(Length.Millimetre(1)), Metric.Number(new(1_234_567))));

    [Theory]
    [InlineData(2_540_000, "about 1/8 in", "2.54 mm")]
    [InlineData(3_175_000, "1/8 in", "3.18 mm")]
    [InlineData(3_175_001, "about 1/8 in", "3.18 mm")]
    [InlineData(500_000, "less than 1/16 in", "0.5 mm")]
    [InlineData(793_750, "1/32 in", "0.79 mm")]
    [InlineData(793_751, "about 1/16 in", "0.79 mm")]
    [InlineData(5, "less than 1/16 in", "0 mm")]
    [InlineData(0, "0 in", "0 mm")]
    [InlineData(-500_000, "about -1/16 in", "-0.5 mm")]
    public void A_sentence_says_about_where_no_ruler_shows_the_length(long nanometres, string inches, string metric) =>
        Assert.Equal((inches, metric), (Inches.About(new Length(nanometres)), Metric.About(new Length(nanometres))));

    [Fact]
    public void A_size_in_a_sentence_has_its_unit_once() =>
        Assert.Equal("about 1/8 x 5 in", Inches.About(new Size(Tenth, Length.Inch(5))));

    [Fact]
    public void What_is_bought_by_its_thickness_shows_that_as_written_on_either_side()
    {
        var (strip, turned) = (new Size(Length.Inch(5, 1, 32), Tenth), new Size(Tenth, Length.Inch(5, 1, 32)));
        Assert.Equal(("5 + x 0.1", "0.1 x 5 +"), (Inches.ReadyMade(strip), Inches.ReadyMade(turned)));
        Assert.Equal("about 5 x 0.1 in", Inches.AboutReadyMade(strip));
    }

    [Fact]
    public void Only_a_residue_of_ten_nanometres_is_written_as_nothing()
    {
        Assert.Equal(("0 +", "1/16 -"), (LengthFormat.Ruler(new(10)), LengthFormat.Ruler(new(11))));
        Assert.Equal(("0", "0.000011"), (LengthFormat.MillimetreNumber(new(10)), LengthFormat.MillimetreNumber(new(11))));
    }

    [Fact]
    public void Rounding_down_gives_the_last_step_that_fits() => Gen.Select(Gen.Long[0, 1_000_000_000], Gen.Bool).Sample(
        (nanometres, metric) =>
        {
            var lengths = new LengthFormat(metric);
            var (length, step) = (new Length(nanometres), metric ? 1_000_000 : 1_587_500);
            var down = lengths.Down(length).Nanometres;
            return down % step == 0 && down <= nanometres && nanometres < down + step;
        },
        iter: 300);

    private static Length Sixteenths(int count) => Length.Inch(0, count, 16);
}
