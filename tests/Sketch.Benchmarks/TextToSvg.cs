using System.Xml.Linq;
using BenchmarkDotNet.Attributes;
using Sketch.Fuzz.Inputs;
using Sketch.Output.Lettering;

namespace Sketch.Benchmarks;

/// <summary>
/// From a text to the pictures of all its faces, compared with one frame of a screen (16 ms). The peer reads the same pictures with
/// System.Xml.Linq and writes them again: a lower bound for handling that much SVG.
/// </summary>
[MemoryDiagnoser]
[Config(typeof(BesideFrame))]
public class TextToSvg
{
    private readonly FontLibrary _fonts = new();
    private readonly string _fifteen = Cards.FifteenPieces;
    private string[] _random = [];
    private string[] _pictures = [];

    [GlobalSetup]
    public void Prepare()
    {
        _pictures = Cards.Draw(_fifteen, _fonts);
        _random = [.. Enumerable.Range(1, Cards.RandomCount).Select(RandomCards.Text)];
        foreach (var text in _random)
        {
            Cards.Draw(text, _fonts);
        }
    }

    [Benchmark(Baseline = true)]
    public int Peer_reads_and_writes_the_same_SVG() => _pictures.Sum(p => XDocument.Parse(p).ToString().Length);

    [Benchmark]
    public int Fifteen_pieces() => Cards.Draw(_fifteen, _fonts).Length;

    [Benchmark]
    public int Fifteen_pieces_with_new_fonts() => Cards.Draw(_fifteen, new()).Length;

    [Benchmark(OperationsPerInvoke = Cards.RandomCount)]
    public int Random_cards_each()
    {
        var pictures = 0;
        foreach (var text in _random)
        {
            pictures += Cards.Draw(text, _fonts).Length;
        }

        return pictures;
    }
}
