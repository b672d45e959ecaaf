using System.Globalization;
using System.Text;
using System.Xml.Linq;
using BenchmarkDotNet.Attributes;
using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Benchmarks;

/// <summary>
/// Each stage on a card with many pieces, each with its own line, place and size. Linear growth shows in the column
/// <c>Each piece</c>. The peer reads and writes the finished SVG with System.Xml.Linq, which grows linearly.
/// </summary>
[MemoryDiagnoser]
[Config(typeof(ForEachPiece))]
public class Growth
{
    private readonly FolderFiles _files = new();
    private SourceText _source = new("", "");
    private LaidOutCard? _card;
    private string _svg = "";

    [Params(5, 50, 500)]
    public int Pieces { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _source = new("many.card", Text(Pieces));
        var compilation = Compiler.Compile(_source, _files);
        _card = compilation.Card!;
        _svg = CardDrawing.Draw(_card, FaceKind.Front);
        if (compilation.HasErrors || _card.Pieces.Length != Pieces)
        {
            throw new InvalidOperationException(string.Join('\n', compilation.Findings.Take(3).Select(f => f.Message)));
        }
    }

    [Benchmark(Baseline = true)]
    public int Peer_reads_and_writes_the_same_SVG() => XDocument.Parse(_svg).ToString().Length;

    [Benchmark]
    public FileSyntax Read() => Parser.Parse(_source, new());

    [Benchmark]
    public Compilation Read_lay_out_and_check() => Compiler.Compile(_source, _files);

    [Benchmark]
    public FindingBag Check()
    {
        var findings = new FindingBag();
        FitChecks.Run(_card!, findings);
        return findings;
    }

    [Benchmark]
    public string Draw() => CardDrawing.Draw(_card!, FaceKind.Front);

    /// <summary>Small pieces side by side that fill their base, a hundred per row; every tenth is a star.</summary>
    private static string Text(int pieces)
    {
        var text = new StringBuilder(
            "card \"Many\"\nunits mm\nbase 1000 x 4000, fold left, of white\nrole a: dots #9fc4d8 #ffffff\nrole b: navy\nfront\n");
        for (var i = 0; i < pieces; i++)
        {
            var (left, top) = (i % 100 * 9, i / 100 * 3.5);
            var what = i % 10 == 0 ? "star 3" : $"panel {5 + i % 3} x {2 + i % 2}";
            text.Append(CultureInfo.InvariantCulture, $"  p{i}: {what}, left {left}, top {top}, of {(i % 3 == 0 ? 'a' : 'b')}\n");
        }

        return text.ToString();
    }
}
