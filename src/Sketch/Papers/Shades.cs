using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>
/// Colours derived from others in perceptually even steps: in the OKLab space (matrices from Björn Ottosson, "A perceptual color space for
/// image processing", bottosson.github.io/posts/oklab, 2020, constants from memory, checked by white being 1, 0, 0).
/// </summary>
public static class Shades
{
    private const double LightGround = 0.62;

    /// <summary>
    /// Lighter (or, with a negative amount, darker) by this share of the way from black (0) to white (1), with its chroma scaled.
    /// </summary>
    public static Rgb Lighten(Rgb colour, double amount, double colourfulness = 1)
    {
        var (l, a, b) = Oklab(colour);
        var lightness = Math.Clamp(l + amount, 0, 1);
        for (var chroma = colourfulness; ; chroma *= 0.9)
        {
            if (FromOklab(lightness, a * chroma, b * chroma) is { } inside)
            {
                return inside;
            }

            if (chroma < 0.01)
            {
                return FromOklab(lightness, 0, 0) ?? colour;
            }
        }
    }

    /// <summary>A colour between two: <paramref name="share"/> 0 is the first, 1 the second.</summary>
    public static Rgb Mix(Rgb from, Rgb to, double share)
    {
        var (l1, a1, b1) = Oklab(from);
        var (l2, a2, b2) = Oklab(to);
        return FromOklab(l1 + (l2 - l1) * share, a1 + (a2 - a1) * share, b1 + (b2 - b1) * share) ?? from;
    }

    /// <summary>How light a colour looks: 0 black, 1 white.</summary>
    public static double Lightness(Rgb colour) => Oklab(colour).L;

    /// <summary>The colour of a figure: as given, or a shade that stands out quietly from the ground.</summary>
    /// <param name="look">The paper.</param>
    /// <param name="index">Which figure colour, from 0; past the ones given, the ones derived from the ground follow.</param>
    public static Rgb Figure(PaperLook look, int index)
    {
        if (index < look.Figures.Length)
        {
            return look.Figures[index];
        }

        var light = Lightness(look.Ground) > LightGround;
        return (light, index % 2) switch
        {
            (true, 0) => Lighten(look.Ground, -0.2, 1.5),
            (true, _) => Lighten(look.Ground, 0.1, 0.5),
            (false, 0) => Lighten(look.Ground, 0.42, 0.7),
            (false, _) => Lighten(look.Ground, 0.16, 0.9),
        };
    }

    private static (double L, double A, double B) Oklab(Rgb colour)
    {
        double r = Linear(colour.Red), g = Linear(colour.Green), b = Linear(colour.Blue);
        var l = Math.Cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
        var m = Math.Cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
        var s = Math.Cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
        return (
            0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
            1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
            0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
    }

    /// <summary>Null when the colour is outside sRGB.</summary>
    private static Rgb? FromOklab(double lightness, double a, double b)
    {
        var l = Cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
        var m = Cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
        var s = Cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
        var red = 4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s;
        var green = -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s;
        var blue = -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s;
        return InRange(red) && InRange(green) && InRange(blue) ? new(Byte(red), Byte(green), Byte(blue)) : null;

        static double Cube(double x) => x * x * x;
        static bool InRange(double x) => x is > -0.002 and < 1.002;
    }

    // Transfer curve of IEC 61966-2-1 (sRGB).
    private static double Linear(byte channel)
    {
        var value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    private static byte Byte(double linear)
    {
        var value = Math.Clamp(linear, 0, 1);
        return (byte)Math.Round(255 * (value <= 0.0031308 ? value * 12.92 : 1.055 * Math.Pow(value, 1 / 2.4) - 0.055));
    }
}
