using Sketch.Edits;

namespace Sketch.Preview.Folder;

/// <summary>The initial text of a new file: something to see at once and to change.</summary>
public static class FirstText
{
    /// <summary>The text for a name: a card, a stash or a batch by its extension, titled after the name.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="others">The names of the files beside it; a batch uses the first stash and card among them.</param>
    public static string For(string name, IReadOnlyList<string> others)
    {
        var title = StartingText.TitleOf(Path.GetFileNameWithoutExtension(name));
        return Path.GetExtension(name).ToLowerInvariant() switch
        {
            ".stash" => StartingText.Stash(title.Length == 0 ? "My shelf" : title, isMetric: false),
            ".batch" => StartingText.Batch(
                title.Length == 0 ? "New batch" : title, isMetric: false, Beside(name, others, ".card"), Beside(name, others, ".stash")),
            _ => StartingText.Card(title.Length == 0 ? "New card" : title, isMetric: false),
        };
    }

    private static string? Beside(string name, IReadOnlyList<string> others, string ending)
    {
        var folder = name[..(name.LastIndexOf('/') + 1)];
        return others.Where(o => o.StartsWith(folder, StringComparison.Ordinal) && !o[folder.Length..].Contains('/')
            && o.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            .Select(o => o[folder.Length..]).FirstOrDefault();
    }
}
