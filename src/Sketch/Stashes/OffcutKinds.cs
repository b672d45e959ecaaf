using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Papers;

namespace Sketch.Stashes;

/// <summary>
/// Which leftovers <c>any offcut of …</c> takes: those of patterned papers, of cardstock, of the paper of a name, else of papers in a
/// colour. A paper has the colour word whose tone is nearest to the ground of its front, by CIEDE2000.
/// </summary>
public static class OffcutKinds
{
    private const string Patterned = "patterned";
    private const string OfCardstock = "cardstock";

    /// <summary>More tints than this make a patchwork restless.</summary>
    private const int MostTints = 5;

    /// <summary>Fewer than three tints would make stripes.</summary>
    private const int FewestTints = 3;

    /// <summary>The words besides the names of papers.</summary>
    public static ImmutableArray<string> Words { get; } = [Patterned, OfCardstock, .. ColourWords.All];

    /// <summary>Whether a word names a kind of leftover with this stash.</summary>
    public static bool IsKnown(string kind, Stash stash) =>
        Is(kind, Patterned) || Is(kind, OfCardstock) || stash.Find(kind) is not null || ColourWords.TryGet(kind, out _);

    /// <summary>Whether leftovers of a paper will do.</summary>
    /// <param name="kind">The kind; null takes all.</param>
    /// <param name="name">The paper's name.</param>
    /// <param name="isPatterned">Whether it is patterned paper.</param>
    /// <param name="ground">The ground of its front; null where no file describes it.</param>
    public static bool Takes(string? kind, string name, bool isPatterned, Rgb? ground)
    {
        if (kind is null || Is(kind, name))
        {
            return true;
        }

        return Is(kind, Patterned) ? isPatterned
            : Is(kind, OfCardstock) ? !isPatterned
            : ground is { } colour && ColourWords.TryGet(kind, out var tone) && IsNearest(colour, tone.Ground);
    }

    /// <summary>Whether leftovers of a paper of the stash will do.</summary>
    public static bool Takes(string? kind, StockPaper paper) => Takes(
        kind, paper.Name, paper.Kind == StockKind.Patterned, paper.Front.IsDescribed ? paper.Front.Look.Ground : null);

    /// <summary>
    /// How such a piece is drawn: as its paper where there is just one of that name, else as a patchwork of the papers that are likely.
    /// </summary>
    /// <param name="kind">The kind; null for all.</param>
    /// <param name="stash">The stash, or null.</param>
    public static PaperLook Look(string? kind, Stash? stash)
    {
        if (kind is null)
        {
            return BuiltIn.AnyOffcut;
        }

        if (stash?.Find(kind) is { Front: { IsDescribed: true, Look: var own } })
        {
            return own;
        }

        var tints = (stash?.Papers ?? []).Where(p => p.Front.IsDescribed && Takes(kind, p))
            .SelectMany(p => p.Kind == StockKind.Patterned ? p.Front.Look.Figures.Take(1).Prepend(p.Front.Look.Ground)
                : [p.Front.Look.Ground])
            .Distinct().Take(MostTints).ToList();
        if (tints.Count == 0 && ColourWords.TryGet(kind, out var tone))
        {
            tints.Add(tone.Ground);
        }

        if (tints.Count == 0)
        {
            return BuiltIn.AnyOffcut;
        }

        for (var i = 1; tints.Count < FewestTints; i++)
        {
            tints.Add(Shades.Lighten(tints[0], i % 2 == 0 ? -0.05 * i : 0.08 * i));
        }

        return new(PaperPattern.Patches, tints[0], [.. tints.Skip(1)]);
    }

    private static bool IsNearest(Rgb colour, Rgb tone) => ColourWords.All
        .Select(w => ColourWords.TryGet(w, out var look) ? look.Ground : tone)
        .All(other => ColourDifference.Between(colour, tone) <= ColourDifference.Between(colour, other));

    private static bool Is(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
