using System.Text;

namespace Sketch.Shapes;

/// <summary>Numbers for SVG: short, with a decimal point, independent of the culture.</summary>
public static class DecimalText
{
    /// <summary>The most decimals supported.</summary>
    public const int MostDecimals = 6;

    /// <summary>The most characters of a number.</summary>
    public const int Longest = 24;

    private const double Largest = 1e12;

    private static readonly int[] Powers = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000];

    /// <summary>
    /// Writes a number with at most <paramref name="decimals"/> decimals (0 to 6), rounded half away from zero, without trailing zeros and
    /// without a zero before the point: <c>12.5</c>, <c>-.25</c>, <c>0</c>. Values beyond ±10^12 are clamped; NaN is written as 0.
    /// </summary>
    public static StringBuilder AppendNumber(this StringBuilder text, double number, int decimals = 4)
    {
        Span<char> room = stackalloc char[Longest];
        return text.Append(Of(number, decimals, room));
    }

    /// <summary>The number by itself.</summary>
    public static string Of(double number, int decimals = 4) => new(Of(number, decimals, stackalloc char[Longest]));

    /// <summary>The number at the end of a room of at least <see cref="Longest"/> characters.</summary>
    public static ReadOnlySpan<char> Of(double number, int decimals, Span<char> room) => room[Write(number, decimals, room)..];

    /// <summary>Fills the span from its end and returns where the number begins.</summary>
    private static int Write(double number, int decimals, Span<char> digits)
    {
        var scale = Powers[decimals];
        var scaled = double.IsNaN(number)
            ? 0 : (long)Math.Round(Math.Clamp(number, -Largest, Largest) * scale, MidpointRounding.AwayFromZero);
        var (whole, part) = Math.DivRem(Math.Abs(scaled), scale);
        var at = digits.Length;
        if (part != 0)
        {
            var left = decimals;
            for (; part % 10 == 0; left--)
            {
                part /= 10;
            }

            for (; left > 0; left--)
            {
                digits[--at] = (char)('0' + part % 10);
                part /= 10;
            }

            digits[--at] = '.';
        }

        for (var isFirst = at == digits.Length; isFirst || whole != 0; isFirst = false)
        {
            digits[--at] = (char)('0' + whole % 10);
            whole /= 10;
        }

        if (scaled < 0)
        {
            digits[--at] = '-';
        }

        return at;
    }
}
