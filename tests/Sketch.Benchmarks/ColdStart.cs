namespace Sketch.Benchmarks;

/// <summary>
/// The whole command from a text to a PNG, as a new process each time, in turn with <c>rsvg-convert</c> (librsvg), which makes the same PNG
/// from the finished SVG. Goal: within 1.5 times of it.
/// </summary>
internal static class ColdStart
{
    private const string Card = "card";

    /// <summary>Prints medians and ratios.</summary>
    /// <param name="tool">The published program.</param>
    /// <param name="times">How often each runs.</param>
    public static int Run(string tool, int times)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-cold-").FullName;
        try
        {
            Clock.Print($"| picture | sketch draw, ms | rsvg-convert, ms | ratio | quickest of each | ratio |");
            Clock.Print($"| --- | ---: | ---: | ---: | ---: | ---: |");
            foreach (var dpi in (string[])["150", "300"])
            {
                Compare(tool, times, folder, "15 pieces", Cards.FifteenPieces, dpi);
                Compare(tool, times, folder, "random card 1", RandomCards.Text(1), dpi);
                Compare(tool, times, folder, "random card 2", RandomCards.Text(2), dpi);
            }

            var card = Path.Combine(folder, "start.card");
            File.WriteAllText(card, Cards.FifteenPieces);
            var check = Enumerable.Range(0, times).Select(_ => Clock.TimeProgram(tool, "check", card)).ToList();
            Clock.Print($"sketch check, 15 pieces: median {Clock.Quantile(check, 0.5):0} ms, quickest {check.Min():0} ms");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static void Compare(string tool, int times, string folder, string name, string text, string dpi)
    {
        var (card, svg, png) = (Path.Combine(folder, Card + ".card"), Path.Combine(folder, Card + "-front.svg"), Path.Combine(folder, "peer.png"));
        File.WriteAllText(card, text);
        Clock.TimeProgram(tool, "draw", card, "--face", "front", "--out", folder);
        var (ours, peers) = (new List<double>(), new List<double>());
        for (var i = 0; i < times; i++)
        {
            ours.Add(Clock.TimeProgram(tool, "draw", card, "--face", "front", "--out", folder, "--as", "png", "--dpi", dpi));
            peers.Add(Clock.TimeProgram("rsvg-convert", "--dpi-x", dpi, "--dpi-y", dpi, "--output", png, svg));
        }

        var (our, peer) = (Clock.Quantile(ours, 0.5), Clock.Quantile(peers, 0.5));
        Clock.Print($"| {name}, {dpi} dpi | {our:0} | {peer:0} | {our / peer:0.00} | {ours.Min():0} / {peers.Min():0} | {ours.Min() / peers.Min():0.00} |");
    }
}
