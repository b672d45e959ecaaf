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
        "dot" => $"dot {name ?? "navy"}: 3/16 in, 60 pieces",
        "brad" => $"brad {name ?? "brass"}: 1/4 in, 24 pieces",
        "button" => $"button {name ?? "white"}: 1/2 in, 12 pieces",
        "bow" => $"bow {name ?? "red"}: 1 in, 20 pieces",
        "sticker" => $"sticker {name ?? "anchor"}: 1 x 1, 24 pieces",
        "ribbon" => $"ribbon {name ?? "navy"}: 3/8 in, 30 ft long",
        "twine" => $"twine {name ?? "bakers"}: 2 mm, 30 ft long",
        "stamp" => $"stamp {name ?? "lighthouse"}: 2 x 1",
        "die" => $"die {name ?? "small-tag"}: 1 x 2",
        "foam" => $"foam {name ?? "white"}: 2 mm, 200 pieces",
        "tape" => $"tape {name ?? "sail"}: 1/2 in, 40 ft long",
        "envelope" => $"envelope {name ?? "plain"}: US A2, 50",
        _ => $"paper {name ?? "gulls"}: 12 x 12, 3 sheets",
    };
}
