using System.Globalization;

namespace Sketch.Units;

/// <summary>How lengths are written for people: fractions of an inch as on a ruler, or millimetres.</summary>
public static class RulerText
{
    /// <summary>
    /// The nearest mark of a ruler in inches, ties to the smaller, followed by " +" when the true length is larger and " -" when it is smaller.
    /// </summary>
    /// <param name="length">The length; negative lengths carry a minus sign in front.</param>
    /// <param name="marks">Marks in an inch: 16, 32 or 64.</param>
    public static string Inches(Length length, int marks = 16)
    {
        if (length.Nanometres < 0)
        {
            var positive = Inches(-length, marks);
            return "-" + (positive.EndsWith('+') ? positive[..^1] + "-" : positive.EndsWith('-') ? positive[..^1] + "+" : positive);
        }

        var scaled = (Int128)length.Nanometres * marks;
        var mark = (long)(scaled / Length.NanometresPerInch);
        var rest = (long)(scaled % Length.NanometresPerInch);
        if (rest * 2 > Length.NanometresPerInch)
        {
            mark++;
        }

        var suffix = rest == 0 ? "" : rest * 2 > Length.NanometresPerInch ? " -" : " +";
        return Fraction(mark, marks) + suffix;
    }

    /// <summary>Whether the length stands on a mark of a ruler with so many marks to the inch.</summary>
    public static bool IsOnMark(Length length, int marks) => (Int128)length.Nanometres * marks % Length.NanometresPerInch == 0;

    /// <summary>Millimetres with as many decimals as it takes, at most <paramref name="decimals"/>, such as "69.85 mm".</summary>
    public static string Millimetres(Length length, int decimals = 2) => MillimetreNumber(length, decimals) + " mm";

    /// <summary>Millimetres as a bare number with a point.</summary>
    public static string MillimetreNumber(Length length, int decimals = 2)
    {
        var number = Math.Round((decimal)length.Nanometres / Length.NanometresPerMillimetre, decimals, MidpointRounding.AwayFromZero);
        return number.ToString("0.######", CultureInfo.InvariantCulture);
    }

    private static string Fraction(long mark, int marks)
    {
        var whole = mark / marks;
        var numerator = mark % marks;
        if (numerator == 0)
        {
            return whole.ToString(CultureInfo.InvariantCulture);
        }

        long denominator = marks;
        while (numerator % 2 == 0)
        {
            numerator /= 2;
            denominator /= 2;
        }

        return whole == 0 ? $"{numerator}/{denominator}" : $"{whole} {numerator}/{denominator}";
    }
}
