namespace Sketch.Colours;

/// <summary>
/// How well words stand out from their paper, by the Web Content Accessibility Guidelines 2.2. They are made for screens; on paper
/// the ratio is a guide only, for real inks and papers differ from the colours in a file.
/// </summary>
public static class Contrast
{
    /// <summary>The least ratio for words of usual size (success criterion 1.4.3, level AA).</summary>
    public const double LeastForText = 4.5;

    /// <summary>The least ratio for large words and for shapes that carry meaning (1.4.3 large text, 1.4.11).</summary>
    public const double LeastForLargeText = 3;

    /// <summary>
    /// Relative luminance, from 0 (black) to 1 (white): 0.2126 R + 0.7152 G + 0.0722 B of the linear channels (WCAG 2.2, "relative
    /// luminance").
    /// </summary>
    public static double RelativeLuminance(Rgb colour) =>
        0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);

    /// <summary>
    /// Contrast ratio of two colours, from 1 (the same) to 21 (black and white); the order does not matter (WCAG 2.2, "contrast ratio").
    /// </summary>
    public static double Ratio(Rgb a, Rgb b)
    {
        var (first, second) = (RelativeLuminance(a), RelativeLuminance(b));
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    /// <summary>A channel without the transfer curve of sRGB, from 0 to 1.</summary>
    internal static double Linear(byte channel)
    {
        var c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
