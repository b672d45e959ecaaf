using System.Globalization;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Converts a number as written to an exact length.</summary>
internal static class LengthReader
{
    /// <summary>The length, or null with the problem.</summary>
    public static Length? Read(Token token, Unit units, bool signed, out NumberReader.Problem problem)
    {
        problem = new("", "");
        var number = token.Number!;
        var unit = number.Unit ?? units;
        if (number.IsFraction && number.Unit is null && units is Unit.Millimetre or Unit.Centimetre)
        {
            var nearest = Math.Max(1,
                (long)Math.Round(25.4m * Math.Abs(number.Numerator) / number.Denominator / (units == Unit.Centimetre ? 10 : 1)));
            var text = signed ? token.Text : token.Text.TrimStart('-', '−');
            var message = $"This file is in {(units == Unit.Centimetre ? "cm" : "mm")}, so the fraction {token.Text} needs a unit.";
            problem = IsOnRuler(number) ? new(message, $"Write {text} in, or {nearest}.", $"{text} in")
                : new(message, string.Create(CultureInfo.InvariantCulture, $"Write {nearest}."),
                    nearest.ToString(CultureInfo.InvariantCulture));
            return null;
        }

        if (number.IsFraction && unit == Unit.Inch && !IsOnRuler(number))
        {
            var (corrected, mark) = NearestMark(number);
            problem = new($"{token.Text} is not a ruler fraction: its bottom number must be 2, 4, 8, 16, 32 or 64.",
                $"Write {corrected}, the nearest {mark}.", corrected);
            return null;
        }

        var nanometres = (Int128)number.Numerator * Factor(unit);
        if (nanometres < 0 && !signed)
        {
            problem = new($"{token.Text} is negative, which is not allowed here.", "Write it without the minus sign.",
                token.Text.TrimStart('-', '−'));
            return null;
        }

        if (nanometres % number.Denominator != 0)
        {
            problem = new($"{token.Text} is finer than a millionth of a millimetre.", "Write fewer decimals.");
            return null;
        }

        nanometres /= number.Denominator;
        if (Int128.Abs(nanometres) > Length.Limit.Nanometres)
        {
            problem = new($"{token.Text} is more than a kilometre.", "Write a size that fits a sheet of paper.");
            return null;
        }

        return new((long)nanometres);
    }

    private static bool IsOnRuler(Numeral number) => number.Denominator is 2 or 4 or 8 or 16 or 32 or 64;

    private static long Factor(Unit unit) => unit switch
    {
        Unit.Inch => Length.NanometresPerInch,
        Unit.Millimetre => Length.NanometresPerMillimetre,
        Unit.Centimetre => 10 * Length.NanometresPerMillimetre,
        Unit.Foot => 12 * Length.NanometresPerInch,
        Unit.Yard => 36 * Length.NanometresPerInch,
        Unit.Metre => 1000 * Length.NanometresPerMillimetre,
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    // Sixteenths, which every ruler in inches shows; smaller lengths are given in sixty-fourths.
    private static (string Text, string Mark) NearestMark(Numeral number)
    {
        var inches = (decimal)number.Numerator / number.Denominator;
        var marks = Math.Abs(inches) * 2 * LengthFormat.RulerMarks < 1 ? LengthFormat.FinestMarks : LengthFormat.RulerMarks;
        var mark = (long)Math.Round(inches * marks, MidpointRounding.AwayFromZero);
        var text = LengthFormat.Ruler(new(Math.Max(1, Math.Abs(mark)) * (Length.NanometresPerInch / marks)), marks);
        return ((mark < 0 ? "-" : "") + text, marks == LengthFormat.RulerMarks ? "sixteenth" : "sixty-fourth");
    }
}
