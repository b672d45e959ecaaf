using System.Collections.Immutable;
using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>The built-in patterns; each is drawn at true scale in the colours of its <see cref="PaperLook"/>.</summary>
public enum PaperPattern
{
    /// <summary>One even colour.</summary>
    Plain,

    /// <summary>Cardstock: one colour with a faint tooth.</summary>
    Cardstock,

    /// <summary>Kraft: brown with fibres.</summary>
    Kraft,

    /// <summary>Dots in staggered rows.</summary>
    Dots,

    /// <summary>Upright stripes.</summary>
    Stripes,

    /// <summary>Gingham squares.</summary>
    Gingham,

    /// <summary>Plaid: wide and narrow bands crossing.</summary>
    Plaid,

    /// <summary>Chevrons.</summary>
    Chevron,

    /// <summary>Waves.</summary>
    Waves,

    /// <summary>Scattered stars.</summary>
    Stars,

    /// <summary>Boards with grain.</summary>
    Woodgrain,

    /// <summary>Metal foil with a sheen.</summary>
    Foil,

    /// <summary>Pearl: a soft sheen.</summary>
    Pearl,

    /// <summary>Any leftover: patches of plain tints, not one particular paper.</summary>
    Patches,

    /// <summary>Hatched: an unknown paper, so that it is visibly missing.</summary>
    Hatched,
}

/// <summary>How a paper's side looks.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Ground">The ground colour.</param>
/// <param name="Figures">The colours of the pattern's figures, in order; empty for shades derived from the ground.</param>
public sealed record PaperLook(PaperPattern Pattern, Rgb Ground, ImmutableArray<Rgb> Figures)
{
    /// <summary>A picture of the paper, drawn in place of a pattern; the ground is then its mean colour. Null for none.</summary>
    public PicturedSheet? Pictured { get; init; }

    /// <summary>Whether it has a print, rather than one colour or the look of its material.</summary>
    public bool IsPatterned => Pictured is not null || Pattern is not (PaperPattern.Plain or PaperPattern.Cardstock or PaperPattern.Kraft
        or PaperPattern.Foil or PaperPattern.Pearl or PaperPattern.Patches or PaperPattern.Hatched);

    /// <summary>How an unknown paper is drawn.</summary>
    public static PaperLook Missing { get; } = new(PaperPattern.Hatched, new(236, 236, 236), []);

    /// <summary>An even colour.</summary>
    public static PaperLook Plain(Rgb ground) => new(PaperPattern.Plain, ground, []);

    /// <inheritdoc/>
    public bool Equals(PaperLook? other) =>
        other is not null && Pattern == other.Pattern && Ground == other.Ground && Figures.SequenceEqual(other.Figures)
            && Pictured == other.Pictured;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Pattern, Ground, Figures.Length);
}
