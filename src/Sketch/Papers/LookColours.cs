using System.Collections.Immutable;
using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>Which colours a paper shows and how much of each.</summary>
public static class LookColours
{
    /// <summary>
    /// Its colours with their shares of the surface, which add up to 1: the ground first, then the figures. The shares are those of the
    /// drawn patterns, to the nearest twentieth.
    /// </summary>
    public static ImmutableArray<(Rgb Colour, double Share)> Of(PaperLook look)
    {
        ReadOnlySpan<double> figures = look.Pictured is not null ? [] : look.Pattern switch
        {
            PaperPattern.Dots => [0.2],
            PaperPattern.Stripes or PaperPattern.Gingham or PaperPattern.Chevron => [0.5],
            PaperPattern.Plaid => [0.25, 0.15],
            PaperPattern.Waves => [0.25, 0.1],
            PaperPattern.Stars => [0.05, 0.05],
            PaperPattern.Patches => [0.25, 0.25, 0.25],
            _ => [],
        };
        var colours = ImmutableArray.CreateBuilder<(Rgb, double)>();
        var ground = 1.0;
        for (var i = 0; i < figures.Length; i++)
        {
            colours.Add((Shades.Figure(look, i), figures[i]));
            ground -= figures[i];
        }

        colours.Insert(0, (look.Ground, ground));
        return colours.ToImmutable();
    }

    /// <summary>The colour it appears to have from a distance.</summary>
    public static Rgb Mean(PaperLook look)
    {
        var mean = look.Ground;
        var share = 0.0;
        foreach (var (colour, part) in Of(look))
        {
            share += part;
            mean = Shades.Mix(mean, colour, part / share);
        }

        return mean;
    }

    /// <summary>Whether it shows a print, and not only a colour, a tooth or a sheen.</summary>
    public static bool IsPrinted(PaperLook look) =>
        look.Pictured is not null
            || look.Pattern is not (PaperPattern.Plain or PaperPattern.Cardstock or PaperPattern.Kraft or PaperPattern.Foil
            or PaperPattern.Pearl or PaperPattern.Patches);
}
