using Sketch.Drawing;
using Sketch.Output.Lettering;
using Sketch.Output.Rendering;
using Sketch.Panels;

namespace Sketch.Benchmarks;

/// <summary>How times spread over random cards: each from its text to the SVG of all faces, and its front from SVG to PNG at 300 dpi beside bare SkiaSharp.</summary>
internal static class RandomCardTimes
{
    private const int Repeats = 5;
    private const int Dpi = 300;
    private const double FrameMilliseconds = 16;

    /// <summary>Prints quantiles; each time is the quickest of a few.</summary>
    public static int Run(int count)
    {
        var fonts = new FontShelf();
        var texts = Enumerable.Range(1, count).Select(RandomCards.Text).ToArray();
        Array.ForEach(texts, text => Cards.Draw(text, fonts));
        var svg = texts.Select(text => Quickest(Repeats, () => Cards.Draw(text, fonts))).ToArray();
        Print("text to SVG of all faces, ms", svg);
        Clock.Print($"pieces: median {Clock.Quantile(texts.Select(t => (double)Cards.Lay(t, fonts).Pieces.Length + 1), 0.5):0}; cards slower than {FrameMilliseconds} ms: {svg.Count(ms => ms > FrameMilliseconds)} of {count}");

        var (ours, bare) = (new double[count], new double[count]);
        for (var i = 0; i < count; i++)
        {
            var card = Cards.Lay(texts[i], fonts);
            var front = CardDrawing.Draw(card, FaceKind.Front);
            using var peer = new BareSkia(front, (double)card.Base.Closed.Width.Inches, (double)card.Base.Closed.Height.Inches, Dpi);
            using var png = new MemoryStream();
            // In turn, so that what else the machine does falls on both.
            ours[i] = bare[i] = double.MaxValue;
            for (var turn = 0; turn < 2; turn++)
            {
                png.SetLength(0);
                ours[i] = Math.Min(ours[i], Clock.Time(() => SvgRenderer.WritePng(front, Dpi, png, out _)));
                bare[i] = Math.Min(bare[i], Clock.Time(() => peer.Png()));
            }
        }

        Print("SVG to PNG at 300 dpi, ms", ours);
        Print("bare SkiaSharp, ms", bare);
        Print("ratio of the two", [.. ours.Zip(bare, (a, b) => a / b)]);
        return 0;
    }

    private static double Quickest(int times, Action work) => Enumerable.Range(0, times).Min(_ => Clock.Time(work));

    private static void Print(string what, double[] values) => Clock.Print(
        $"{what}: median {Clock.Quantile(values, 0.5):0.00}, 95 % below {Clock.Quantile(values, 0.95):0.00}, most {values.Max():0.00}");
}
