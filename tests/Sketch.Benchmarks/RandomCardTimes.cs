using Sketch.Drawing;
using Sketch.Fuzz.Inputs;
using Sketch.Output.Lettering;
using Sketch.Output.Rendering;
using Sketch.Panels;

namespace Sketch.Benchmarks;

/// <summary>
/// The distribution of times over random cards: from the text to the SVG of all faces, and of the front from SVG to PNG at 300 dpi
/// beside bare SkiaSharp.
/// </summary>
internal static class RandomCardTimes
{
    private const int Repeats = 5;
    private const int Dpi = 300;
    private const double FrameMilliseconds = 16;

    /// <summary>Prints quantiles.</summary>
    public static int Run(int count)
    {
        var fonts = new FontLibrary();
        var texts = Enumerable.Range(1, count).Select(RandomCards.Text).ToArray();
        Array.ForEach(texts, text => Cards.Draw(text, fonts));
        var svg = texts.Select(text => Each(Repeats, () => Cards.Draw(text, fonts))).ToArray();
        var pieces = texts.Select(t => (double)Cards.Lay(t, fonts).Pieces.Length + 1).ToArray();
        Clock.Print($"pieces: median {Clock.Quantile(pieces, 0.5):0}, most {pieces.Max():0}; cards that take more than "
            + $"{FrameMilliseconds} ms of processor to SVG: {svg.Count(t => t.Processor > FrameMilliseconds)} of {count}");
        Clock.Print($"| each card | median | 95 % below | most |");
        Clock.Print($"| --- | ---: | ---: | ---: |");
        Print("text to SVG of all faces, ms of processor", [.. svg.Select(t => t.Processor)]);

        var (ours, bare) = (new Spent[count], new Spent[count]);
        for (var i = 0; i < count; i++)
        {
            var card = Cards.Lay(texts[i], fonts);
            var front = CardDrawing.Draw(card, FaceKind.Front);
            using var peer = new BareSkia(front, (double)card.Base.Closed.Width.Inches, (double)card.Base.Closed.Height.Inches, Dpi);
            using var png = new MemoryStream();
            ours[i] = Clock.Time(() => SvgRenderer.WritePng(front, Dpi, png));
            bare[i] = Clock.Time(() => peer.Png());
        }

        Print("SVG to PNG at 300 dpi, ms of processor", [.. ours.Select(t => t.Processor)]);
        Print("bare SkiaSharp, ms of processor", [.. bare.Select(t => t.Processor)]);
        Print("ratio of processor", [.. ours.Zip(bare, (a, b) => a.Processor / b.Processor)]);
        Print("ratio by the clock", [.. ours.Zip(bare, (a, b) => a.Wall / b.Wall)]);
        return 0;
    }

    /// <summary>The mean of a few runs, because the processor clock is coarse.</summary>
    private static Spent Each(int times, Action work)
    {
        var all = Clock.Time(() =>
        {
            for (var i = 0; i < times; i++)
            {
                work();
            }
        });
        return new(all.Wall / times, all.Processor / times);
    }

    private static void Print(string what, double[] values) => Clock.Print(
        $"| {what} | {Clock.Quantile(values, 0.5):0.00} | {Clock.Quantile(values, 0.95):0.00} | {values.Max():0.00} |");
}
