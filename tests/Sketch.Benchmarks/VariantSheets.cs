using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Variants;

namespace Sketch.Benchmarks;

/// <summary>
/// Variants of the card of 15 pieces as one contact sheet PNG, a new process each time, alternating with as many runs of
/// <c>rsvg-convert</c> (librsvg) that each draw one of the same SVGs as wide as on the sheet. Goal: less time in total, and memory that
/// does not grow with the number of variants.
/// </summary>
internal static class VariantSheets
{
    private const int Dpi = 110;
    private const int TilePixels = 193;

    private static readonly int[] Limits = [25, 100, 400];

    /// <summary>Prints a table.</summary>
    /// <param name="tool">The published program.</param>
    /// <param name="stash">A stash file with enough papers.</param>
    /// <param name="times">How often each runs.</param>
    public static int Run(string tool, string stash, int times)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-variants-").FullName;
        try
        {
            var card = Path.Combine(folder, "measured.card");
            File.WriteAllText(card, Cards.FifteenPieces);
            Clock.Print($"| variants | sketch variants, ms | peak MB | runs of rsvg-convert, ms | ratio |");
            Clock.Print($"| ---: | ---: | ---: | ---: | ---: |");
            foreach (var limit in Limits)
            {
                var svgs = Drawings(stash, limit, folder);
                var (ours, peers, peak) = (new List<double>(), new List<double>(), 0.0);
                for (var i = 0; i < times; i++)
                {
                    var (_, seconds, _, most) = HostileRuns.Measure(
                        tool, "variants", card, "--stash", stash, "--out", folder, "--as", "png", "--dpi", $"{Dpi}", "--limit", $"{limit}");
                    ours.Add(seconds * 1000);
                    peak = Math.Max(peak, most);
                    peers.Add(svgs.Sum(svg =>
                        Clock.TimeProgram("rsvg-convert", "--width", $"{TilePixels}", "--keep-aspect-ratio", "--output", svg + ".png", svg)
                            .Wall));
                }

                var (our, peer) = (Clock.Quantile(ours, 0.5), Clock.Quantile(peers, 0.5));
                Clock.Print($"| {svgs.Count} | {our:0} | {peak:0} | {peer:0} | {our / peer:0.00} |");
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static List<string> Drawings(string stash, int limit, string folder)
    {
        var shelf = Compiler.Compile(FolderFiles.ReadFile(stash).Source!, new FolderFiles()).Stash!;
        var card = Cards.Lay(Cards.FifteenPieces, null);
        var variants = VariantSearch.Find(card, shelf, new([], [], limit));
        var sheet = new ContactSheet(card, FaceKind.Front, new(shelf, []), variants, new FolderFiles());
        return
        [
            .. variants.Best.Select((variant, i) =>
            {
                var path = Path.Combine(folder, $"{i}.svg");
                File.WriteAllText(path, CardDrawing.Draw(sheet.Painted(variant), FaceKind.Front));
                return path;
            }),
        ];
    }
}
