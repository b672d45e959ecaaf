namespace Sketch.Syntax;

/// <summary>An example line of a stash for each kind of stock, for hints.</summary>
internal static class StockExamples
{
    /// <summary>The line, which is valid in any stash, whatever its units.</summary>
    /// <param name="stock">The kind of stock in lower case: a word of <see cref="Vocabulary.Stock"/>.</param>
    /// <param name="name">Its name, where known.</param>
    public static string Of(string stock, string? name = null) => stock switch
    {
        "cardstock" => $"cardstock {name ?? "navy"}: 12 x 12, 3 sheets",
        "offcut" => $"offcut {name ?? "gulls"}: 6 x 4, 2",
        "gem" => $"gem {name ?? "red"}: 1/8 in, 60 pieces",
        "line" => $"line {name ?? "silver"}: 1/16 in, 40 ft long",
        "foam" => $"foam {name ?? "white"}: 2 mm, 200 pieces",
        "tape" => $"tape {name ?? "sail"}: 1/2 in, 40 ft long",
        "envelope" => $"envelope {name ?? "plain"}: US A2, 50",
        _ => $"paper {name ?? "gulls"}: 12 x 12, 3 sheets",
    };
}
