using System.Globalization;
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
    /// <param name="problem">What is wrong with it and what to write, in sentences; empty if it can be used.</param>
    public static PrinterScale? Read(string written, out string problem)
    {
        if (!double.TryParse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            problem = $"\"{written}\" is not a scale: write a number near 1, such as 0.985 for a printer that prints 100 mm as 98.5 mm.";
            return null;
        }

        return Checked(value, written, out problem);
    }

    /// <summary>The scale of a printer that prints the 4 in bar as long as measured.</summary>
    /// <param name="written">The measured length as written, in inches unless it has another unit, such as <c>3 15/16</c> or <c>100
    /// mm</c>.</param>
    /// <param name="problem">What is wrong with it and what to write, in sentences; empty if it can be used.</param>
    public static PrinterScale? Measured(string written, out string problem)
    {
        if (WrittenLength.Read(written, "write the measured length of the 4 in bar, such as \"3 15/16 in\" or \"100 mm\".",
            out problem) is not { } length)
        {
            return null;
        }

        return Checked((double)length.Nanometres / Bar.Nanometres, written, out problem);
    }

    private static PrinterScale? Checked(double value, string written, out string problem)
    {
        problem = value is >= Smallest and <= Largest
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"\"{written}\" makes a scale of {value:0.###}: from {Smallest} to {Largest} can be corrected. Print at 100 %, without "
                    + $"fitting to the page, and measure again.");
        return problem.Length == 0 ? new(value) : null;
    }
}
