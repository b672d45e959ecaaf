namespace Sketch.Colours;

/// <summary>A colour of CIE 1976 L*a*b* under daylight D65.</summary>
/// <param name="L">Lightness, from 0 (black) to 100 (white).</param>
/// <param name="A">From green (negative) to red.</param>
/// <param name="B">From blue (negative) to yellow.</param>
public readonly record struct Lab(double L, double A, double B)
{
    /// <summary>
    /// An sRGB colour in L*a*b*: the matrix of IEC 61966-2-1, white taken as its row sums so that #fff is exactly 100, 0, 0.
    /// </summary>
    public static Lab FromRgb(Rgb colour)
    {
        var (r, g, b) = (Contrast.Linear(colour.Red), Contrast.Linear(colour.Green), Contrast.Linear(colour.Blue));
        var x = Root((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
        var y = Root(0.2126 * r + 0.7152 * g + 0.0722 * b);
        var z = Root((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
        return new(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>CIE 15: the cube root, with a straight line near black.</summary>
    private static double Root(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}
