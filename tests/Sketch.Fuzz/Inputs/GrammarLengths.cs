using System.Globalization;

namespace Sketch.Fuzz.Inputs;

/// <summary>Random lengths in all ways of writing them.</summary>
/// <param name="draws">The random numbers.</param>
/// <param name="isMetric">Whether a number without a unit is in millimetres.</param>
internal sealed class GrammarLengths(Draws draws, bool isMetric)
{
    private static readonly string[] Strange =
        ["0", "-1/8", "1/64", "1/128", "0.000001 mm", "40 in", "999 m", "1000000000", "1/0", "0.0000000001", "1 1/1", "3 m", "½", "1/3"];

    /// <summary>A length between so many sixteenths of an inch; once in a thousand one at the limits of the language.</summary>
    public string Between(int least, int most)
    {
        var sixteenths = draws.From(least, most);
        return draws.Below(1000) switch
        {
            0 => draws.Any(Strange),
            < 700 => isMetric ? Text(sixteenths * 1.5m) : Fraction(sixteenths),
            < 750 => $"{Fraction(sixteenths)}{draws.Any<string>([" in", "\"", "in"])}",
            < 800 => Text(sixteenths / 16m) + (isMetric ? " in" : ""),
            < 850 => Text(sixteenths * 0.15m) + " cm",
            _ => Text(sixteenths * 1.5875m) + " mm",
        };
    }

    /// <summary>The same, or once in a while a negative one.</summary>
    public string Signed(int least, int most) => draws.OnceIn(8) ? "-" + Between(1, 6) : Between(least, most);

    private string Fraction(int sixteenths)
    {
        var (whole, rest) = Math.DivRem(sixteenths, 16);
        var parts = 16;
        while (rest > 0 && rest % 2 == 0)
        {
            (rest, parts) = (rest / 2, parts / 2);
        }

        return (whole, rest) switch
        {
            (_, 0) => whole.ToString(CultureInfo.InvariantCulture),
            (0, _) when draws.OnceIn(10) && parts == 8 => rest switch { 1 => "⅛", 3 => "⅜", 5 => "⅝", _ => "⅞" },
            (0, _) => $"{rest}/{parts}",
            _ => $"{whole}{(draws.OnceIn(10) ? "-" : " ")}{rest}/{parts}",
        };
    }

    private static string Text(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
