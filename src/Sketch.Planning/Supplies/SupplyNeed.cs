using System.Collections.Immutable;
using Sketch.Assembly;
using Sketch.Planning.Demand;
using Sketch.Stashes;
using Sketch.Units;

namespace Sketch.Planning.Supplies;

/// <summary>How much of a supply a card of one design takes.</summary>
/// <param name="Design">The design.</param>
/// <param name="PerCard">Nanometres of length, or pieces.</param>
public sealed record DesignShare(Design Design, long PerCard)
{
    /// <summary>For foam, even if counted in pads: length of strips in nanometres.</summary>
    public long Strips { get; init; }

    /// <summary>The length of each piece of a card, for what is cut to length.</summary>
    public ImmutableArray<Length> Lengths { get; init; } = [];
}

/// <summary>How much of one supply a batch needs.</summary>
/// <param name="Kind">What.</param>
/// <param name="Name">Its name; as spelled in the stash if the stash has it.</param>
/// <param name="Measure">Width of line or tape, size of a gem, height of foam; null for the rest.</param>
/// <param name="Size">Size of an envelope, or of a sticker, stamp or die with width and height; null for the rest.</param>
/// <param name="ByLength">Whether it is counted in lengths; otherwise in pieces.</param>
/// <param name="Stock">The stock in the stash; empty if it has none.</param>
public sealed record SupplyNeed(SupplyKind Kind, string Name, Length? Measure, Size? Size, bool ByLength, ImmutableArray<Supply> Stock)
{
    /// <summary>What each design takes.</summary>
    public ImmutableArray<DesignShare> Shares { get; init; } = [];

    /// <summary>
    /// Whether the stash should list it: a card names it, or the stash lists other things of its kind. Otherwise it is not
    /// reported as missing.
    /// </summary>
    public bool IsExpected { get; init; }

    /// <summary>How it is cut from strips of one length; null for what is not counted in strips.</summary>
    public StripPlan? Cutting { get; init; }

    /// <summary>Whether the amount is an estimate by common practice rather than read from the cards.</summary>
    public bool IsEstimate => Kind is SupplyKind.Foam or SupplyKind.Adhesive;

    /// <summary>Nanometres of length, or pieces, over all cards; one piece of a tool.</summary>
    public long Total => Kind.Traits.Count == SupplyCount.Tool ? 1 : Shares.Sum(s => s.PerCard * CardsOf(s.Design));

    /// <summary>The cards of a design for which it is still needed.</summary>
    public int CardsOf(Design design) => Kind == SupplyKind.Envelope ? design.ToEnclose : design.ToGlue;

    /// <summary>Strips, else nanometres of length, or pieces.</summary>
    public long Needed => Cutting?.Plan.Sheets ?? Total;

    /// <summary>The same unit; null if the stash does not give it.</summary>
    public long? OnHand => Cutting is not null ? Cutting.OnHand
        : Stock.IsEmpty ? IsExpected ? 0 : null
        : Stock.All(s => ByLength ? s.Long is not null : s.Pieces is not null)
        ? Stock.Sum(s => ByLength ? s.Long!.Value.Nanometres : s.Pieces!.Value)
        : null;

    /// <summary>The same unit; 0 if the stash does not give the amount on hand.</summary>
    public long Short => OnHand is { } onHand ? Math.Max(0, Needed - onHand) : 0;

    /// <summary>For foam: length of all strips, even if it is counted in pads.</summary>
    public Length Strips => new(Shares.Sum(s => s.Strips * CardsOf(s.Design)));

    /// <summary>For foam: area of all strips in square millimetres.</summary>
    public double StripArea => Strips.Millimetres * Fastening.FoamStrip.Millimetres;
}
