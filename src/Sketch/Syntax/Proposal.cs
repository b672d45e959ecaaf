namespace Sketch.Syntax;

/// <summary>What a person probably meant by a word that the language does not have.</summary>
/// <param name="Meanings">What may be typed instead, the likeliest first; at least one.</param>
internal sealed record Proposal(string[] Meanings)
{
    /// <summary>What replaces the word.</summary>
    public string Text => Meanings[0];

    /// <summary>The hint that proposes it.</summary>
    public string Hint => $"Did you mean {string.Join(" or ", Meanings)}?";
}
