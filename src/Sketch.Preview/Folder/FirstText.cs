using Sketch.Edits;

namespace Sketch.Preview.Folder;

/// <summary>A card that a new batch makes.</summary>
/// <param name="Card">Its file.</param>
/// <param name="Count">How many.</param>
public sealed record FirstMake(string Card = "", int Count = 0);

/// <summary>The initial text of a new file: something to see at once and to change.</summary>
public static class FirstText
{
    private const int UsualCount = 12;

    /// <summary>The text for a name: a card, a stash or a batch by its extension, titled after the name.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="others">The names of the files beside it; a batch uses the first stash and card among them.</param>
    /// <param name="isMetric">Whether it is in millimetres; otherwise in inches.</param>
    public static string For(string name, IReadOnlyList<string> others, bool isMetric = false) =>
        Path.GetExtension(name).ToLowerInvariant() switch
        {
            ".stash" => StartingText.Stash(TitleOf(name, "My shelf"), isMetric),
            ".batch" => StartingText.Batch(
                TitleOf(name, "New batch"), isMetric, Beside(name, others, ".card").Select(c => (c, UsualCount)),
                Beside(name, others, ".stash").FirstOrDefault()),
            _ => StartingText.Card(TitleOf(name, "New card"), isMetric),
        };

    /// <summary>A stash without papers.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="isMetric">Whether it is in millimetres; otherwise in inches.</param>
    public static string EmptyStash(string name, bool isMetric) => StartingText.EmptyStash(TitleOf(name, "My shelf"), isMetric);

    /// <summary>A batch of chosen cards.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="makes">The cards; none for a comment that shows how to name one.</param>
    /// <param name="stash">The stash; empty for none.</param>
    public static string Batch(string name, IEnumerable<FirstMake> makes, string stash) => StartingText.Batch(
        TitleOf(name, "New batch"), isMetric: false, makes.Select(m => (m.Card, m.Count)), stash.Length == 0 ? null : stash);

    private static string TitleOf(string name, string otherwise) =>
        StartingText.TitleOf(Path.GetFileNameWithoutExtension(name)) is { Length: > 0 } title ? title : otherwise;

    private static IEnumerable<string> Beside(string name, IReadOnlyList<string> others, string ending)
    {
        var folder = name[..(name.LastIndexOf('/') + 1)];
        return others.Where(o => o.StartsWith(folder, StringComparison.Ordinal) && !o[folder.Length..].Contains('/')
            && o.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            .Select(o => o[folder.Length..]).Take(1);
    }
}
