using System.Globalization;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>Lengths written the way their file, or the number in whose place they stand, is written.</summary>
/// <param name="units">The units of bare numbers in the file.</param>
internal sealed class WrittenNumber(UnitSystem units)
{
    private const int MostDecimals = 6;

    /// <summary>A length without its unit, for a new clause.</summary>
    public string New(Length length) => Digits(length, FileUnit, asDecimals: false);

    /// <summary>A length in place of a number: in the unit of that number, as decimals if it has decimals.</summary>
    /// <param name="number">The number in the text.</param>
    /// <param name="length">The new length.</param>
    /// <param name="shared">The unit that is written once for this and a later number; null if there is none.</param>
    public string InPlaceOf(Token number, Length length, Unit? shared = null)
    {
        var written = number.Number!;
        var unit = written.Unit ?? shared ?? FileUnit;
        if (unit is Unit.Foot or Unit.Yard or Unit.Metre)
        {
            return units == UnitSystem.Inches ? Digits(length, Unit.Inch, false) + " in" : Digits(length, Unit.Millimetre, false) + " mm";
        }

        var digits = Digits(length, unit, asDecimals: written is { IsFraction: false, IsWhole: false });
        return written.Unit is null ? digits : digits + UnitAsWritten(number.Text);
    }

    private Unit FileUnit => units switch
    {
        UnitSystem.Millimetres => Unit.Millimetre,
        UnitSystem.Centimetres => Unit.Centimetre,
        _ => Unit.Inch,
    };

    private static string Digits(Length length, Unit unit, bool asDecimals) => unit switch
    {
        Unit.Millimetre => LengthFormat.MillimetreNumber(length, MostDecimals),
        Unit.Centimetre =>
            ((decimal)length.Nanometres / (10 * Length.NanometresPerMillimetre)).ToString("0.#######", CultureInfo.InvariantCulture),
        _ => Inches(length, asDecimals),
    };

    /// <summary>A ruler fraction or exact decimals, else the nearest sixty-fourth.</summary>
    private static string Inches(Length length, bool asDecimals)
    {
        var decimals = LengthFormat.InchNumber(length, MostDecimals);
        var isExact = decimal.Parse(decimals, CultureInfo.InvariantCulture) * Length.NanometresPerInch == length.Nanometres;
        return isExact && (asDecimals || !LengthFormat.IsOnMark(length, LengthFormat.FinestMarks))
            ? decimals : LengthFormat.Ruler(OnMark(length), LengthFormat.FinestMarks);
    }

    private static Length OnMark(Length length) =>
        new((long)Math.Round((decimal)length.Nanometres * LengthFormat.FinestMarks / Length.NanometresPerInch)
            * (Length.NanometresPerInch / LengthFormat.FinestMarks));

    /// <summary>What stands after the digits: <c> mm</c>, <c>"</c>, <c>cm</c>.</summary>
    private static string UnitAsWritten(string number)
    {
        var end = number.Length;
        while (end > 0 && !char.IsNumber(number[end - 1]))
        {
            end--;
        }

        return number[end..];
    }
}
