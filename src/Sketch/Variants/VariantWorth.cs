using System.Collections.Immutable;
using Sketch.Papers;

namespace Sketch.Variants;

/// <summary>
/// How good variants look, from 0 to 1: each pair of neighbours is scored once for all papers, so that hundreds of thousands of variants
/// can be compared.
/// </summary>
internal sealed class VariantWorth
{
    // Two roles in one paper are possible, but show less of the stash.
    private const double CostOfRepeats = 0.2;

    // Patterned papers are bought for the large piece; one colour there is possible, but rarely wanted (chosen by
    // eye).
    private const double CostOfPlain = 0.25;

    // Prints that are not made to go together may still do so; those that are come first (chosen by eye).
    private const double CostOfMixing = 0.3;

    private readonly ImmutableArray<ImmutableArray<Candidate>> _candidates;
    private readonly int _largest;
    private readonly ImmutableArray<bool> _isPrinted;
    private readonly ImmutableArray<Pair> _layers;
    private readonly ImmutableArray<Pair> _words;

    /// <summary>Scores all pairs.</summary>
    /// <param name="neighbours">What lies on what.</param>
    /// <param name="candidates">What may fill each role.</param>
    /// <param name="largest">The role of the largest piece.</param>
    public VariantWorth(Neighbours neighbours, ImmutableArray<ImmutableArray<Candidate>> candidates, int largest)
    {
        (_candidates, _largest) = (candidates, largest);
        _isPrinted = [.. candidates[largest].Select(c => LookColours.IsPrinted(c.Look))];
        _layers = [.. neighbours.Layers.Where(l => l.Upper.Role >= 0 || l.Lower.Role >= 0).Select(l =>
            Pair.Of(l.Upper.Role, l.Lower.Role, LooksOf(l.Upper), LooksOf(l.Lower), Legibility.OfLayers))];
        _words = [.. neighbours.Words.Select(w =>
            Pair.Of(w.Ink.Role, w.Paper.Role, LooksOf(w.Ink), LooksOf(w.Paper), Legibility.OfWords))];

        ImmutableArray<PaperLook> LooksOf(Surface surface) =>
            surface.Role < 0 ? [surface.Fixed.Look] : [.. candidates[surface.Role].Select(c => c.Look)];
    }

    /// <summary>0 if a layer vanishes; else half the worst plus half the mean of the layers, minus the shortfall of the words.</summary>
    /// <param name="chosen">The index of each role's candidate.</param>
    /// <param name="different">How many different papers are among them.</param>
    public double Of(int[] chosen, int different)
    {
        double worst = 1, sum = 0, words = 1;
        foreach (var layer in _layers)
        {
            var worth = layer.Of(chosen);
            if (worth == 0)
            {
                return 0;
            }

            worst = Math.Min(worst, worth);
            sum += worth;
        }

        foreach (var pair in _words)
        {
            words = Math.Min(words, pair.Of(chosen));
        }

        var mean = _layers.IsEmpty ? 1 : sum / _layers.Length;
        return (worst + mean) / 2 * words * words * (1 - CostOfRepeats * (chosen.Length - different) / chosen.Length)
            * (_isPrinted[chosen[_largest]] ? 1 : 1 - CostOfPlain) * (1 - CostOfMixing * Mixed(chosen));
    }

    /// <summary>The share of pairs of patterned papers that are not made to go together.</summary>
    private double Mixed(int[] chosen)
    {
        var (pairs, mixed) = (0, 0);
        for (var a = 0; a < chosen.Length; a++)
        {
            var one = _candidates[a][chosen[a]];
            for (var b = one.Character == PaperCharacter.Patterned ? a + 1 : chosen.Length; b < chosen.Length; b++)
            {
                if (_candidates[b][chosen[b]] is { Character: PaperCharacter.Patterned } other)
                {
                    pairs++;
                    mixed += one.GoesWith(other) ? 0 : 1;
                }
            }
        }

        return pairs == 0 ? 0 : (double)mixed / pairs;
    }

    private sealed record Pair(int Upper, int Lower, double[,] Worth)
    {
        public static Pair Of(int upper, int lower, ImmutableArray<PaperLook> uppers, ImmutableArray<PaperLook> lowers, Func<PaperLook,
            PaperLook, double> judge)
        {
            var worth = new double[uppers.Length, lowers.Length];
            for (var u = 0; u < uppers.Length; u++)
            {
                for (var l = 0; l < lowers.Length; l++)
                {
                    worth[u, l] = judge(uppers[u], lowers[l]);
                }
            }

            return new(upper, lower, worth);
        }

        public double Of(int[] chosen) => Worth[Upper < 0 ? 0 : chosen[Upper], Lower < 0 ? 0 : chosen[Lower]];
    }
}
