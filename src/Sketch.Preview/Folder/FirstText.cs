namespace Sketch.Preview.Folder;

/// <summary>What a new file begins with: something that can be seen at once and changed.</summary>
public static class FirstText
{
    private const string Card = """
        card "New card"
        base A2, fold left, of white
        role ground: waves #d8e9ee #8fbccb
        role deep: navy

        front
          ground: panel, showing 1/8, of ground
            mat +1/8, of deep
          words: strip 3 x 3/4 "Thinking of you", bottom 3/4, of white, letters 1/4
            mat +1/8, of deep

        """;

    private const string Stash = """
        stash "My shelf"
        paper waves: 12 x 12, 2 sheets, front waves #d8e9ee #8fbccb, back plain #8fbccb
        cardstock white: letter, any sheets
        cardstock navy: letter, 10 sheets

        """;

    private const string Batch = """
        batch "New batch"
        {0}for "Everybody", 12 cards

        {1}
        """;

    /// <summary>The text for a name: by its ending a card, a stash or a batch.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="others">The names of the files beside it, of which a batch takes the first stash and card.</param>
    public static string For(string name, IReadOnlyList<string> others) => Path.GetExtension(name).ToLowerInvariant() switch
    {
        ".stash" => Stash,
        ".batch" => Batch
            .Replace("{0}", Beside(name, others, ".stash") is { } stash ? $"stash \"{stash}\"\n" : "", StringComparison.Ordinal)
            .Replace("{1}", Beside(name, others, ".card") is { } card ? $"make 12 of \"{card}\"\n" : "# make 12 of \"fair-winds.card\"\n", StringComparison.Ordinal),
        _ => Card,
    };

    private static string? Beside(string name, IReadOnlyList<string> others, string ending)
    {
        var folder = name[..(name.LastIndexOf('/') + 1)];
        return others.Where(o => o.StartsWith(folder, StringComparison.Ordinal) && !o[folder.Length..].Contains('/') && o.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            .Select(o => o[folder.Length..]).FirstOrDefault();
    }
}
