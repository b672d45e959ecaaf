using System.Diagnostics;
using System.Globalization;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>A page as drawn by pdftoppm, in the plainest of formats: PGM, three numbers and then a byte a pixel.</summary>
internal sealed class GreyPicture
{
    private const int Dark = 160;

    private readonly byte[] _bytes;
    private readonly int _start;
    private readonly double _perMillimetre;

    private GreyPicture(byte[] bytes, double dpi)
    {
        (_bytes, _perMillimetre) = (bytes, dpi / 25.4);
        var at = 0;
        var words = Enumerable.Range(0, 4).Select(_ => Word()).ToArray();
        Assert.Equal("P5", words[0]);
        (Width, Height) = (int.Parse(words[1], CultureInfo.InvariantCulture), int.Parse(words[2], CultureInfo.InvariantCulture));
        _start = at;

        string Word()
        {
            var from = at;
            while (!char.IsWhiteSpace((char)bytes[at]))
            {
                at++;
            }

            return System.Text.Encoding.ASCII.GetString(bytes, from, at++ - from);
        }
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>The brightness of a pixel, 0 for black and 255 for white.</summary>
    public byte this[int x, int y] => _bytes[_start + y * Width + x];

    /// <summary>Draws one page of a PDF, counted from 1.</summary>
    public static GreyPicture Of(string poppler, string pdf, int page, int dpi)
    {
        var (stem, number) = (Path.ChangeExtension(pdf, null), page.ToString(CultureInfo.InvariantCulture));
        string[] arguments =
            ["-r", dpi.ToString(CultureInfo.InvariantCulture), "-gray", "-f", number, "-l", number, "-singlefile", pdf, stem];
        using var process = Process.Start(new ProcessStartInfo(poppler, arguments) { RedirectStandardError = true })!;
        var reported = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, reported);
        return new(File.ReadAllBytes(stem + ".pgm"), dpi);
    }

    /// <summary>The box around all dark pixels in a part of the page, in millimetres.</summary>
    public Bounds Ink(Bounds part)
    {
        var (left, top, right, bottom) = (int.MaxValue, int.MaxValue, 0, 0);
        for (var y = (int)(part.Top * _perMillimetre); y < part.Bottom * _perMillimetre; y++)
        {
            for (var x = (int)(part.Left * _perMillimetre); x < part.Right * _perMillimetre; x++)
            {
                if (this[x, y] < Dark)
                {
                    (left, right) = (Math.Min(left, x), Math.Max(right, x + 1));
                    (top, bottom) = (Math.Min(top, y), Math.Max(bottom, y + 1));
                }
            }
        }

        return new(left / _perMillimetre, top / _perMillimetre, right / _perMillimetre, bottom / _perMillimetre);
    }
}
