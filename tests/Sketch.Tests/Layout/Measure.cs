using System.Globalization;
using Sketch.Units;

namespace Sketch.Tests.Layout;

/// <summary>Lengths as written in expectations: inches as <c>2 5/8</c> or <c>23/48</c>, millimetres as <c>35 mm</c>.</summary>
internal static class Measure
{
    public static Length Length(string text)
    {
        if (text.EndsWith(" mm", StringComparison.Ordinal))
        {
            return Sketch.Units.Length.Millimetre(Number(text[..^3]));
        }

        long numerator = 0, denominator = 1;
        var inches = 0m;
        foreach (var part in text.Split(' '))
        {
            if (part.Split('/') is [var above, var below])
            {
                (numerator, denominator) =
                    (long.Parse(above, CultureInfo.InvariantCulture), long.Parse(below, CultureInfo.InvariantCulture));
            }
            else
            {
                inches = Number(part);
            }
        }

        return Sketch.Units.Length.Millimetre(inches * 25.4m) + Sketch.Units.Length.Inch(numerator).Scale(1, denominator);
    }

    /// <summary>Width x height.</summary>
    public static Size Size(string text) => text.Split(" x ") is [var width, var height]
        ? new(Length(width), Length(height))
        : throw new FormatException(text);

    /// <summary>Left, top.</summary>
    public static Place Place(string text) => text.Split(", ") is [var left, var top]
        ? new(Length(left), Length(top))
        : throw new FormatException(text);

    private static decimal Number(string text) => decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture);
}
