namespace Sketch.Colours;

/// <summary>
/// How different two colours look: CIEDE2000 (ISO/CIE 11664-6), in the form of Sharma, Wu and Dalal, "The CIEDE2000 color-difference
/// formula", Color Research and Application 30 (2005), with all three weights 1. About 1 is just noticed side by side.
/// </summary>
public static class ColourDifference
{
    /// <summary>The difference of two sRGB colours; 0 for the same.</summary>
    public static double Between(Rgb a, Rgb b) => Between(Lab.FromRgb(a), Lab.FromRgb(b));

    /// <summary>The difference of two colours; the order does not matter.</summary>
    public static double Between(Lab a, Lab b)
    {
        var stretch = 1 + 0.5 * (1 - Saturation((Chroma(a.A, a.B) + Chroma(b.A, b.B)) / 2));
        var (chromaA, chromaB) = (Chroma(a.A * stretch, a.B), Chroma(b.A * stretch, b.B));
        var (hueA, hueB) = (Hue(a.A * stretch, a.B), Hue(b.A * stretch, b.B));
        var colourless = chromaA * chromaB == 0;

        var turn = colourless ? 0 : hueB - hueA;
        turn += turn > 180 ? -360 : turn < -180 ? 360 : 0;
        var hueStep = 2 * Math.Sqrt(chromaA * chromaB) * Math.Sin(Radians(turn / 2));

        var lightness = (a.L + b.L) / 2;
        var chroma = (chromaA + chromaB) / 2;
        var hue = colourless ? hueA + hueB : MeanHue(hueA, hueB);

        var weight = 1 - 0.17 * Cosine(hue - 30) + 0.24 * Cosine(2 * hue) + 0.32 * Cosine(3 * hue + 6) - 0.20 * Cosine(4 * hue - 63);
        var fromMiddle = (lightness - 50) * (lightness - 50);
        var l = (b.L - a.L) / (1 + 0.015 * fromMiddle / Math.Sqrt(20 + fromMiddle));
        var c = (chromaB - chromaA) / (1 + 0.045 * chroma);
        var h = hueStep / (1 + 0.015 * chroma * weight);

        var fromBlue = (hue - 275) / 25;
        var rotation = -2 * Saturation(chroma) * Math.Sin(Radians(60 * Math.Exp(-fromBlue * fromBlue)));
        return Math.Sqrt(Math.Max(0, l * l + c * c + h * h + rotation * c * h));
    }

    private static double Chroma(double a, double b) => Math.Sqrt(a * a + b * b);

    private static double Saturation(double chroma)
    {
        var seventh = Math.Pow(chroma, 7);
        return Math.Sqrt(seventh / (seventh + 6103515625.0)); // 25 to the 7th
    }

    private static double Hue(double a, double b)
    {
        var degrees = a == 0 && b == 0 ? 0 : Math.Atan2(b, a) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double MeanHue(double a, double b) =>
        Math.Abs(a - b) <= 180 ? (a + b) / 2 : a + b < 360 ? (a + b + 360) / 2 : (a + b - 360) / 2;

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double Cosine(double degrees) => Math.Cos(Radians(degrees));
}
