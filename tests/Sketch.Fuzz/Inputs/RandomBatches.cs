using System.Text;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Planning.Demand;
using Sketch.Text;

namespace Sketch.Fuzz.Inputs;

/// <summary>
/// Random batches like those of makers, generated as texts and read like any other. The same number always gives the same batch.
/// </summary>
internal static class RandomBatches
{
    private const int Designs = 5;
    private const int LeastKinds = 15;
    private const int MostKinds = 25;

    private static readonly string[] Bases =
        ["A2, fold left", "A2, landscape, fold top", "US A6, fold left", "5 x 7, fold left", "5 x 5, fold left",
            "slimline, landscape, fold top"];

    private static readonly string[] Trims = ["", ", trim 1/4 bottom", ", trim 1/4 bottom, upright", ", upright"];

    private static readonly int[][] Shares = [[12, 12, 10, 10, 10], [9, 12, 10, 11, 12], [14, 12, 11, 9, 8], [20, 12, 10, 6, 6]];

    /// <summary>54 cards of five designs, 15 to 25 kinds of piece, 6 to 8 papers.</summary>
    public static BatchFiles OfFiveDesigns(int number)
    {
        for (var attempt = 0; ; attempt++)
        {
            var files = FiveDesigns(new Draws((ulong)number * 1000 + (ulong)attempt));
            var orders = OrderBook.Of(files, new FindingBag()).Papers.Where(p => !p.Pieces.IsEmpty).ToList();
            if (orders.Count is >= 6 and <= 8 && Kinds(orders) is >= LeastKinds and <= MostKinds)
            {
                return files;
            }
        }
    }

    /// <summary>Sixty kinds of piece from ten papers, each kind up to three times on every card of its design.</summary>
    public static BatchFiles OfSixtyKinds(int number, int cards)
    {
        const int papers = 10, kinds = 60, designs = 10;
        var draws = new Draws((ulong)number);
        var batch = new StringBuilder("batch \"Large\"\nstash \"shelf.stash\"\n");
        for (var kind = 0; kind < kinds; kind++)
        {
            var count = cards / designs * draws.From(1, 3);
            Line(batch, $"cut {count} of {draws.Sixteenths(10, 90)} x {draws.Sixteenths(24, 112)} from "
                + $"paper{(kind < papers ? kind : draws.Below(papers))}");
        }

        return Read(batch.ToString(), new MemoryFiles(), Shelf(draws, papers));
    }

    /// <summary>The number of different sizes on all papers together.</summary>
    public static int Kinds(IEnumerable<PaperOrder> orders) =>
        orders.Sum(o => o.Pieces.Select(p => p.Size.Width < p.Size.Height ? p.Size : p.Size.Turned()).Distinct().Count());

    private static BatchFiles FiveDesigns(Draws draws)
    {
        var world = new MemoryFiles();
        var papers = draws.From(5, 7);
        var shares = Shares[draws.Below(Shares.Length)];
        var batch = new StringBuilder("batch \"Fifty-four\"\nstash \"shelf.stash\"\n");
        for (var design = 0; design < Designs; design++)
        {
            world = world.With($"{design}.card", Card(draws, design));
            Line(batch, $"make {shares[design]} of \"{design}.card\"");
            foreach (var role in (string[])["sky", "deep", "band", "shape"])
            {
                Line(batch, $"  role {role}: paper{draws.Below(papers)}");
            }
        }

        return Read(batch.ToString(), world, Shelf(draws, papers));
    }

    private static string Card(Draws draws, int number)
    {
        var card = new StringBuilder();
        Line(card, $"card \"Card {number}\"");
        Line(card, $"base {draws.Any(Bases)}, of white");
        foreach (var role in (string[])["sky", "deep", "band", "shape"])
        {
            Line(card, $"role {role}: #9fc4d8");
        }

        Line(card, $"front");
        Line(card, $"  panel, showing {draws.Sixteenths(2, 6)}, of sky");
        Line(card, $"    mat +1/{4 << draws.Below(2)}, of deep");
        if (draws.Below(3) > 0)
        {
            Line(card, $"    strip full x {draws.Sixteenths(8, 28)}, bottom {draws.Sixteenths(8, 16)}, of band");
        }

        if (draws.Below(2) > 0)
        {
            Line(card, $"    {draws.From(1, 3)} tag {draws.Sixteenths(12, 18)} x {draws.Sixteenths(20, 32)}, in a row, gap 1/16, of shape");
            if (draws.Below(2) > 0)
            {
                Line(card, $"      mat +1/8, of deep");
            }
        }

        return card.ToString();
    }

    private static string Shelf(Draws draws, int papers)
    {
        var stash = new StringBuilder("stash \"Shelf\"\ncardstock white: letter, any sheets\n");
        for (var paper = 0; paper < papers; paper++)
        {
            Line(stash, paper % 3 == 2
                ? $"cardstock paper{paper}: letter, any sheets"
                : $"paper paper{paper}: 12 x 12, any sheets{draws.Any(Trims)}");
            if (draws.Below(4) == 0)
            {
                Line(stash, $"offcut paper{paper}: {draws.Sixteenths(48, 96)} x {draws.Sixteenths(60, 176)}, {draws.From(1, 3)}");
            }
        }

        return stash.ToString();
    }

    private static BatchFiles Read(string batch, MemoryFiles world, string shelf)
    {
        var findings = new FindingBag();
        var files = BatchFiles.Read(new SourceText("random.batch", batch), world.With("shelf.stash", shelf), findings);
        return findings.ToImmutable()
            .FirstOrDefault(f => f.Severity == Severity.Error
            && f.Location.Source.Path.EndsWith(".batch", StringComparison.Ordinal)) is { } error
            ? throw new InvalidOperationException(error.Message)
            : files!;
    }

    private static void Line(StringBuilder text, string line) =>
        text.Append(line).Append('\n');
}
