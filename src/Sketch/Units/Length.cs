namespace Sketch.Units;

/// <summary>
/// An exact length in whole nanometres. One inch is 25,400,000 nm, so every 1/64 in and every metric size is a whole number.
/// Arithmetic is checked: the reader of files and the layout keep every value within <see cref="Limit"/>, so an overflow is a bug in the
/// program.
/// </summary>
/// <param name="Nanometres">The length in nanometres; negative for a distance to the left or up.</param>
public readonly record struct Length(long Nanometres) : IComparable<Length>
{
    /// <summary>Nanometres in an inch, exactly (international inch of 1959: 25.4 mm).</summary>
    public const long NanometresPerInch = 25_400_000;

    /// <summary>Nanometres in a millimetre.</summary>
    public const long NanometresPerMillimetre = 1_000_000;

    /// <summary>Zero.</summary>
    public static readonly Length Zero;

    /// <summary>The largest length that a file may give or a layout may reach: one kilometre.</summary>
    public static readonly Length Limit = new(1_000_000_000_000);

    /// <summary>The length in millimetres, for drawing and output only.</summary>
    public double Millimetres => Nanometres / (double)NanometresPerMillimetre;

    /// <summary>The length in inches, for output only.</summary>
    public double Inches => Nanometres / (double)NanometresPerInch;

    /// <summary>A whole number and a fraction of an inch, such as 2 5/8.</summary>
    /// <exception cref="ArgumentException">The fraction is not a whole number of nanometres.</exception>
    public static Length Inch(long whole, long numerator = 0, long denominator = 1)
    {
        var (quotient, remainder) = Math.DivRem(checked(numerator * NanometresPerInch), denominator);
        return remainder == 0
            ? new(checked(whole * NanometresPerInch + quotient))
            : throw new ArgumentException($"{numerator}/{denominator} in is no whole number of nanometres");
    }

    /// <summary>Millimetres; tenths, hundredths and so on down to the nanometre are exact.</summary>
    public static Length Millimetre(decimal millimetres) => new((long)Math.Round(millimetres * NanometresPerMillimetre));

    /// <summary>
    /// The nearest whole nanometre to a drawn measure in millimetres, held within twice <see cref="Limit"/> so that sums stay in range;
    /// NaN counts as zero.
    /// </summary>
    public static Length NearestMillimetres(double millimetres) =>
        double.IsNaN(millimetres) ? Zero : new((long)Math.Round(Math.Clamp(millimetres, -2e6, 2e6) * NanometresPerMillimetre));

    /// <summary>The smaller of two lengths.</summary>
    public static Length Min(Length a, Length b) => a.Nanometres <= b.Nanometres ? a : b;

    /// <summary>The larger of two lengths.</summary>
    public static Length Max(Length a, Length b) => a.Nanometres >= b.Nanometres ? a : b;

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(Nanometres));

    /// <summary>
    /// The length times <paramref name="numerator"/>/<paramref name="denominator"/>, to the nearest nanometre, halves away from zero, held
    /// within twice <see cref="Limit"/> so that sums stay in range.
    /// </summary>
    public Length Scale(long numerator, long denominator)
    {
        var product = (Int128)Nanometres * numerator * 2;
        var half = product < 0 == denominator < 0 ? (Int128)denominator : -(Int128)denominator;
        return new((long)Int128.Clamp((product + half) / (2 * (Int128)denominator), -2 * Limit.Nanometres, 2 * Limit.Nanometres));
    }

    /// <inheritdoc/>
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>For debugging: millimetres.</summary>
    public override string ToString() => $"{(decimal)Nanometres / NanometresPerMillimetre} mm";

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => new(checked(a.Nanometres + b.Nanometres));

    /// <summary>Difference.</summary>
    public static Length operator -(Length a, Length b) => new(checked(a.Nanometres - b.Nanometres));

    /// <summary>The opposite direction.</summary>
    public static Length operator -(Length a) => new(-a.Nanometres);

    /// <summary>The length times a whole number.</summary>
    public static Length operator *(Length a, long times) => new(checked(a.Nanometres * times));

    /// <summary>The length divided by a whole number, truncated towards zero; <see cref="Parts.Equal"/> divides without loss.</summary>
    public static Length operator /(Length a, long parts) => new(a.Nanometres / parts);

    /// <summary>Shorter.</summary>
    public static bool operator <(Length a, Length b) => a.Nanometres < b.Nanometres;

    /// <summary>Longer.</summary>
    public static bool operator >(Length a, Length b) => a.Nanometres > b.Nanometres;

    /// <summary>Not longer.</summary>
    public static bool operator <=(Length a, Length b) => a.Nanometres <= b.Nanometres;

    /// <summary>Not shorter.</summary>
    public static bool operator >=(Length a, Length b) => a.Nanometres >= b.Nanometres;
}
