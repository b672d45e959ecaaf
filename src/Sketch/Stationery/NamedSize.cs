using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Stationery;

/// <summary>A size that has a name in the trade.</summary>
/// <param name="Name">The name as a file writes it without ambiguity, such as <c>US A6</c>, <c>A2</c> or <c>letter</c>.</param>
/// <param name="Size">Cards and sheets upright, envelopes lying landscape.</param>
public sealed record NamedSize(string Name, Size Size)
{
    /// <summary>For a card: the name of the envelope it is usually sent in; null for other things and where there is none.</summary>
    public string? Envelope { get; init; }
}

/// <summary>The outcome of looking up a name.</summary>
public enum LookupOutcome
{
    /// <summary>There is one such size.</summary>
    Found,

    /// <summary>There is none.</summary>
    Unknown,

    /// <summary>Two sizes share the name, so it needs <c>US</c> or <c>ISO</c> in front.</summary>
    Ambiguous,
}

/// <summary>The result of looking up a name.</summary>
/// <param name="Found">The size, or null.</param>
/// <param name="Offers">
/// For an ambiguous name: the names to choose from. For an unknown one: the most similar name, if any is similar. Otherwise empty.
/// </param>
/// <param name="Outcome">The outcome.</param>
public sealed record SizeLookup(NamedSize? Found, ImmutableArray<string> Offers, LookupOutcome Outcome)
{
    internal static SizeLookup Of(NamedSize size) => new(size, [], LookupOutcome.Found);

    internal static SizeLookup Between(IEnumerable<string> names) => new(null, [.. names], LookupOutcome.Ambiguous);

    internal static SizeLookup Unknown(IEnumerable<string> nearest) => new(null, [.. nearest], LookupOutcome.Unknown);
}
