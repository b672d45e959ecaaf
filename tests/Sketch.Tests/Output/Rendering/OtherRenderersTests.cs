using System.Diagnostics;
using Sketch.Output.Lettering;
using Sketch.Output.Rendering;
using Sketch.Shapes;
using Sketch.Tests.Output.Files;
using SkiaSharp;
using Xunit;

namespace Sketch.Tests.Output.Rendering;

/// <summary>Compares pictures with those of other renderers. A test is skipped if its renderer is not installed.</summary>
public sealed class OtherRenderersTests
{
    // Each renderer smooths edges a little differently; a picture shifted by one pixel already differs by more than three.
    private const double MostMeanDifference = 1.5;

    [Fact]
    public void A_browser_draws_the_same_picture()
    {
        const string chromium = "/usr/bin/chromium";
        Assert.SkipUnless(File.Exists(chromium), "Chromium is not installed.");
        AssertSame((svg, png, folder) => Run(
            chromium,
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--hide-scrollbars",
                "--force-device-scale-factor=1",
            $"--user-data-dir={folder}/profile", $"--screenshot={png}", "--window-size=408,528", svg));
    }

    [Fact]
    public void Librsvg_draws_the_same_picture()
    {
        const string rsvg = "/usr/bin/rsvg-convert";
        Assert.SkipUnless(File.Exists(rsvg), "rsvg-convert is not installed.");
        AssertSame((svg, png, _) => Run(rsvg, "--dpi-x=96", "--dpi-y=96", $"--output={png}", svg));
    }

    private static void AssertSame(Action<string, string, string> draw)
    {
        using var folder = new TemporaryFolder();
        var svg = Card();
        draw(folder.Write("card.svg", svg), folder.At("theirs.png"), folder.Path);
        using var ours = new MemoryStream();
        SvgRenderer.WritePng(svg, 96, ours);
        Assert.InRange(MeanDifference(SKBitmap.Decode(ours.ToArray()), SKBitmap.Decode(folder.At("theirs.png"))), 0, MostMeanDifference);
    }

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        var reported = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, reported.Result);
    }

    private static string Card()
    {
        var words = new FontLibrary([]).Shape("Fair winds & calm seas", "Inter semibold").Value;
        var path = words.Outline.Transform(Affine.Scale(5, 5).Then(Affine.Shift(8, 100))).ToSvgPath();
        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="4.25in" height="5.5in" viewBox="0 0 107.95 139.7">
              <defs><linearGradient id="sea"><stop stop-color="#9fc9e8"/><stop offset="1" stop-color="#16324f"/></linearGradient></defs>
              <rect width="107.95" height="139.7" fill="#f8f4ea"/>
              <rect x="4.7625" y="4.7625" width="98.425" height="130.175" fill="url(#sea)"/>
              <g transform="rotate(20 60 40)"><path d="M60 10L85 60H35Z" fill="#b3202c" stroke="#fff" stroke-width="1.5"/></g>
              <path d="{path}" fill="#16324f"/>
            </svg>
            """;
    }

    private static double MeanDifference(SKBitmap a, SKBitmap b)
    {
        Assert.Equal((a.Width, a.Height), (b.Width, b.Height));
        var sum = 0L;
        for (var y = 0; y < a.Height; y++)
        {
            for (var x = 0; x < a.Width; x++)
            {
                var (p, q) = (a.GetPixel(x, y), b.GetPixel(x, y));
                sum += Math.Abs(p.Red - q.Red) + Math.Abs(p.Green - q.Green) + Math.Abs(p.Blue - q.Blue);
            }
        }

        return sum / (3.0 * a.Width * a.Height);
    }
}
