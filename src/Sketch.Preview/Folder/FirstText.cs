using System.Globalization;

namespace Sketch.Preview.Folder;

/// <summary>The initial text of a new file: something to see at once and to change.</summary>
public static class FirstText
{
    /// <summary>The text for a name: a card, a stash or a batch by its extension, titled after the name.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="others">The names of the files beside it; a batch uses the first stash and card among them.</param>
    public static string For(string name, IReadOnlyList<string> others) => Path.GetExtension(name).ToLowerInvariant() switch
    {
        ".stash" => Stash(TitleOf(name, "My shelf")),
        ".batch" => Batch(TitleOf(name, "New batch"), Beside(name, others, ".stash"), Beside(name, others, ".card")),
        _ => Card(TitleOf(name, "New card")),
    };

    private static string Card(string title) => $"""
        card "{title}"
        base A2, fold left, of white
        role ground: waves #d8e9ee #8fbccb
        role deep: navy

        front
          ground: panel, showing 1/8, of ground
            mat +1/8, of deep
          words: strip 3 x 3/4 "Thinking of you", bottom 3/4, of white, letters 1/4
            mat +1/8, of deep

        """;

    private static string Stash(string title) => $"""
        stash "{title}"
        paper waves: 12 x 12, 2 sheets, front waves #d8e9ee #8fbccb, back plain #8fbccb
        cardstock white: letter, any sheets
        cardstock navy: letter, 10 sheets

        """;

    private static string Batch(string title, string? stash, string? card) => $"""
        batch "{title}"
        {(stash is null ? "" : $"stash \"{stash}\"\n")}for "Everybody", 12 cards

        {(card is null ? "# make 12 of \"fair-winds.card\"\n" : $"make 12 of \"{card}\"\n")}
        """;

    /// <summary>The words of a name, the first with a capital: <c>keepers-watch.card</c> is titled "Keepers watch".</summary>
    private static string TitleOf(string name, string otherwise)
    {
        // Each of these quotes ends a title.
        var words = Path.GetFileNameWithoutExtension(name)
            .Split([' ', '-', '_', '"', '“', '”', '„'], StringSplitOptions.RemoveEmptyEntries);
        var title = string.Join(' ', words);
        return title.Length == 0 ? otherwise : char.ToUpper(title[0], CultureInfo.InvariantCulture) + title[1..];
    }

    private static string? Beside(string name, IReadOnlyList<string> others, string ending)
    {
        var folder = name[..(name.LastIndexOf('/') + 1)];
        return others.Where(o => o.StartsWith(folder, StringComparison.Ordinal) && !o[folder.Length..].Contains('/')
            && o.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            .Select(o => o[folder.Length..]).FirstOrDefault();
    }
}
