using BenchmarkDotNet.Attributes;
using Sketch.Output.Rendering;

namespace Sketch.Benchmarks;

/// <summary>
/// Renders a front from its SVG at 300 dpi, compared with SkiaSharp replaying and writing the recorded picture. Goal: at most 1.2 times as
/// long.
/// </summary>
[MemoryDiagnoser]
[Config(typeof(Pictures))]
public class SvgToPng
{
    private const int Dpi = 300;

    private string _front = "";
    private Func<long> _bare = () => 0;

    [GlobalSetup]
    public void Prepare()
    {
        var card = Cards.Lay(Cards.FifteenPieces, null);
        _front = Drawing.CardDrawing.Draw(card, Panels.FaceKind.Front);
        _bare = new BareSkia(_front, (double)card.Base.Closed.Width.Inches, (double)card.Base.Closed.Height.Inches, Dpi).Png;
    }

    [Benchmark(Baseline = true)]
    public long Peer_bare_SkiaSharp_with_the_recorded_picture() => _bare();

    [Benchmark]
    public long From_SVG()
    {
        using var png = new MemoryStream();
        return SvgRenderer.WritePng(_front, Dpi, png) is { Problem: var problem }
            ? throw new InvalidOperationException(problem) : png.Length;
    }
}
