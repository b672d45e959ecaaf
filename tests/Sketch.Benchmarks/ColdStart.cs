using System.Globalization;
using Sketch.Fuzz.Inputs;

namespace Sketch.Benchmarks;

/// <summary>
/// The whole command from a text to a PNG, as a new process each time, alternating with <c>rsvg-convert</c> (librsvg), which makes
/// the same PNG from the finished SVG. Goals: within 1.3 times its time at 150 dpi, and <c>check</c> within 30 ms.
/// </summary>
internal static class ColdStart
{
    private const string Card = "card";
    private const int RandomOnes = 20;

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
            var ratios = new List<double> { Compare(tool, times, folder, "15 pieces", Cards.FifteenPieces, "150") };
            for (var number = 1; number <= RandomOnes; number++)
            {
                ratios.Add(Compare(tool, times, folder, string.Create(CultureInfo.InvariantCulture, $"random card {number}"),
                    RandomCards.Text(number), "150"));
            }

            Compare(tool, times, folder, "15 pieces", Cards.FifteenPieces, "300");
            Clock.Print($"At 150 dpi, ratio of processor of {ratios.Count} cards: median {Clock.Quantile(ratios, 0.5):0.00}, most "
                + $"{ratios.Max():0.00}");
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

    private static double Compare(string tool, int times, string folder, string name, string text, string dpi)
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
        return our.Processor / peer.Processor;
    }

    private static Spent Median(List<Spent> times) =>
        new(Clock.Quantile(times.Select(t => t.Wall), 0.5), Clock.Quantile(times.Select(t => t.Processor), 0.5));
}
