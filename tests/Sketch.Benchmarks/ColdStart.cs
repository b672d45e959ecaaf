using Sketch.Fuzz.Inputs;

namespace Sketch.Benchmarks;

/// <summary>
/// The whole command from a text to a PNG, as a new process each time, alternating with <c>rsvg-convert</c> (librsvg), which makes
/// the same PNG from the finished SVG. Goal: within 1.5 times its time.
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
            Clock.Print($"| median of {times} | sketch draw: ms, ms of processor | rsvg-convert: ms, ms of processor | ratio | ratio "
                + "of processor |");
            Clock.Print($"| --- | ---: | ---: | ---: | ---: |");
            foreach (var dpi in (string[])["150", "300"])
            {
                Compare(tool, times, folder, "15 pieces", Cards.FifteenPieces, dpi);
                Compare(tool, times, folder, "random card 1", RandomCards.Text(1), dpi);
                Compare(tool, times, folder, "random card 2", RandomCards.Text(2), dpi);
            }

            var card = Path.Combine(folder, "start.card");
            File.WriteAllText(card, Cards.FifteenPieces);
            var check = Median([.. Enumerable.Range(0, times).Select(_ => Clock.TimeProgram(tool, "check", card))]);
            Clock.Print($"sketch check, 15 pieces: {check.Wall:0} ms, {check.Processor:0} ms of processor");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static void Compare(string tool, int times, string folder, string name, string text, string dpi)
    {
        var (card, svg, png) = (Path.Combine(folder, Card + ".card"), Path.Combine(folder, Card + "-front.svg"),
            Path.Combine(folder, "peer.png"));
        File.WriteAllText(card, text);
        Clock.TimeProgram(tool, "draw", card, "--face", "front", "--out", folder);
        var (ours, peers) = (new List<Spent>(), new List<Spent>());
        for (var i = 0; i < times; i++)
        {
            ours.Add(Clock.TimeProgram(tool, "draw", card, "--face", "front", "--out", folder, "--as", "png", "--dpi", dpi));
            peers.Add(Clock.TimeProgram("rsvg-convert", "--dpi-x", dpi, "--dpi-y", dpi, "--output", png, svg));
        }

        var (our, peer) = (Median(ours), Median(peers));
        Clock.Print($"| {name}, {dpi} dpi | {our.Wall:0}, {our.Processor:0} | {peer.Wall:0}, {peer.Processor:0} | "
            + $"{our.Wall / peer.Wall:0.00} | {our.Processor / peer.Processor:0.00} |");
    }

    private static Spent Median(List<Spent> times) =>
        new(Clock.Quantile(times.Select(t => t.Wall), 0.5), Clock.Quantile(times.Select(t => t.Processor), 0.5));
}
