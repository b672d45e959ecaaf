using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Sketch.Stashes;

/// <summary>What the line of a supply measures.</summary>
public enum SupplyMeasure
{
    /// <summary>One length: a width or a thickness.</summary>
    One,

    /// <summary>One length, or width and height.</summary>
    OneOrTwo,

    /// <summary>The size of an envelope.</summary>
    Envelope,
}

/// <summary>How a supply is used up.</summary>
public enum SupplyCount
{
    /// <summary>Piece by piece.</summary>
    Pieces,

    /// <summary>By length.</summary>
    Length,

    /// <summary>Not at all: one is enough for every card.</summary>
    Tool,
}

/// <summary>What distinguishes a kind of supply.</summary>
/// <param name="Word">Its word in the stash.</param>
/// <param name="Measure">What its line measures.</param>
/// <param name="Count">How it is used up.</param>
public sealed record SupplyTraits(string Word, SupplyMeasure Measure, SupplyCount Count)
{
    /// <summary>Whether it has a look of its own that a card shows, which its line may describe.</summary>
    public bool HasLook { get; init; } = true;
}

/// <summary>The table of all kinds of supply.</summary>
public static class SupplyKinds
{
    private static readonly FrozenDictionary<SupplyKind, SupplyTraits> Table = new Dictionary<SupplyKind, SupplyTraits>
    {
        [SupplyKind.Line] = new("line", SupplyMeasure.One, SupplyCount.Length),
        [SupplyKind.Gem] = new("gem", SupplyMeasure.One, SupplyCount.Pieces),
        [SupplyKind.Dot] = new("dot", SupplyMeasure.One, SupplyCount.Pieces),
        [SupplyKind.Brad] = new("brad", SupplyMeasure.One, SupplyCount.Pieces),
        [SupplyKind.Button] = new("button", SupplyMeasure.One, SupplyCount.Pieces),
        [SupplyKind.Bow] = new("bow", SupplyMeasure.One, SupplyCount.Pieces),
        [SupplyKind.Sticker] = new("sticker", SupplyMeasure.OneOrTwo, SupplyCount.Pieces),
        [SupplyKind.Tape] = new("tape", SupplyMeasure.One, SupplyCount.Length),
        [SupplyKind.Ribbon] = new("ribbon", SupplyMeasure.One, SupplyCount.Length),
        [SupplyKind.Twine] = new("twine", SupplyMeasure.One, SupplyCount.Length),
        [SupplyKind.Stamp] = new("stamp", SupplyMeasure.OneOrTwo, SupplyCount.Tool) { HasLook = false },
        [SupplyKind.Die] = new("die", SupplyMeasure.OneOrTwo, SupplyCount.Tool) { HasLook = false },
        [SupplyKind.Envelope] = new("envelope", SupplyMeasure.Envelope, SupplyCount.Pieces) { HasLook = false },
        [SupplyKind.Foam] = new("foam", SupplyMeasure.One, SupplyCount.Pieces) { HasLook = false },
        [SupplyKind.Adhesive] = new("adhesive", SupplyMeasure.One, SupplyCount.Length) { HasLook = false },
    }.ToFrozenDictionary();

    /// <summary>All kinds that a stash has lines for.</summary>
    public static ImmutableArray<SupplyKind> Lines { get; } = [.. Table.Keys.Where(k => k != SupplyKind.Adhesive).Order()];

    private static readonly FrozenDictionary<string, SupplyKind> Named =
        Lines.ToFrozenDictionary(k => Table[k].Word, k => k, StringComparer.OrdinalIgnoreCase);

    /// <summary>The kind of a stash line by its word, which is also the word of the piece that it becomes; null for no kind.</summary>
    public static SupplyKind? Find(string word) => Named.TryGetValue(word, out var kind) ? kind : null;

    extension(SupplyKind kind)
    {
        /// <summary>What distinguishes the kind.</summary>
        public SupplyTraits Traits => Table[kind];
    }
}
