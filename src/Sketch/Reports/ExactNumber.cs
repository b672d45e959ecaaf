using System.Globalization;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>Lengths as decimal numbers of at most 6 decimals, worked out without binary fractions.</summary>
internal static class ExactNumber
{
    private const string Form = "0.######";

    /// <summary>Millimetres; every whole nanometre is exact.</summary>
    public static string Millimetres(Length length) =>
        ((decimal)length.Nanometres / Length.NanometresPerMillimetre).ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>Inches; what has more than 6 decimals is rounded, halves away from zero.</summary>
    public static string Inches(Length length) =>
        Math.Round((decimal)length.Nanometres / Length.NanometresPerInch, 6, MidpointRounding.AwayFromZero).ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>Degrees of a turn; a value too small to show is 0 without a sign.</summary>
    public static string Degrees(double degrees) =>
        ((decimal)Math.Round(degrees, 6)).ToString(Form, CultureInfo.InvariantCulture);
}
