using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// The printed length of what should have length 1. Everything drawn is divided by it, so that the print is true to size; the page
/// keeps its size.
/// </summary>
/// <param name="Value">1 for an exact printer, 0.985 for one that prints a hundred millimetres as 98.5.</param>
public readonly record struct PrinterScale(double Value)
{
    /// <summary>Outside this range a print is not slightly off but was scaled to fit another page.</summary>
    private const double Smallest = 0.8;

    private const double Largest = 1.25;

    /// <summary>An exact printer.</summary>
    public static readonly PrinterScale True = new(1);

    /// <summary>The true length of the bar to measure on the print.</summary>
    public static readonly Length Bar = Length.Inch(4);

    /// <summary>Reads a scale such as 0.985.</summary>
    /// <param name="written">As written.</param>
    /// <returns>The scale; a problem says, in sentences, what is wrong and what to write.</returns>
    public static Result<PrinterScale> Read(string written) =>
        double.TryParse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? Checked(value, written)
            : new Failure(
                $"\"{written}\" is not a scale: write a number near 1, such as 0.985 for a printer that prints 100 mm as 98.5 mm.");

    /// <summary>The scale of a printer that prints the 4 in bar as long as measured.</summary>
    /// <param name="written">The measured length as written, in inches unless it has another unit, such as <c>3 15/16</c> or <c>100
    /// mm</c>.</param>
    /// <returns>The scale; a problem says, in sentences, what is wrong and what to write.</returns>
    public static Result<PrinterScale> Measured(string written) =>
        WrittenLength.Read(written, "write the measured length of the 4 in bar, such as \"3 15/16 in\" or \"100 mm\".")
            .Then(length => Checked((double)length.Nanometres / Bar.Nanometres, written));

    private static Result<PrinterScale> Checked(double value, string written) => value is >= Smallest and <= Largest
        ? Result.Of(new PrinterScale(value))
        : new Failure(string.Create(
            CultureInfo.InvariantCulture,
            $"\"{written}\" makes a scale of {value:0.###}: from {Smallest} to {Largest} can be corrected. Print at 100 %, without "
                + $"fitting to the page, and measure again."));
}
