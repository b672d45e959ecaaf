using System.Globalization;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>How lengths are written in the sentences of findings.</summary>
internal static class LengthText
{
    /// <summary>
    /// Millimetres in metric files; in others inches: a fraction where the length stands on a mark of a ruler down to 1/64, else decimals.
    /// </summary>
    public static string Of(Length length, UnitSystem units) =>
        units != UnitSystem.Inches ? RulerText.Millimetres(length)
        : RulerText.IsOnMark(length, 64) ? RulerText.Inches(length, 64) + " in"
        : ((decimal)length.Nanometres / Length.NanometresPerInch).ToString("0.####", CultureInfo.InvariantCulture) + " in";
}
