using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.World;

namespace Sketch.Counts;

/// <summary>A card that a batch makes, as it is counted: all lines that make cards of one title together.</summary>
/// <param name="Title">The title in the card's file; the file's name without its extension if it cannot be read.</param>
/// <param name="Files">The files as the batch names them.</param>
/// <param name="Make">How many the batch makes.</param>
public sealed record CountedCard(string Title, ImmutableArray<string> Files, int Make)
{
    /// <summary>The cards of a batch in its order. Only their titles are read, so that errors elsewhere in a card do not matter.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="path">The path of the batch.</param>
    /// <param name="world">Reads the cards.</param>
    public static ImmutableArray<CountedCard> Of(Batch batch, string path, IWorld world) =>
    [
        .. batch.Makes.Select(m => (Order: m, Title: TitleOf(m.Card.Path, path, world))).GroupBy(m => m.Title, StringComparer.Ordinal)
            .Select(g => new CountedCard(g.Key, [.. g.Select(m => m.Order.Card.Path).Distinct()],
                (int)Math.Min(int.MaxValue, g.Sum(m => (long)m.Order.Count)))),
    ];

    /// <summary>Whether this is the card of a name: its title, or its file with or without the extension.</summary>
    public bool IsCalled(string name) => Title.Equals(name, StringComparison.OrdinalIgnoreCase)
        || Files.Any(f => f.Equals(name, StringComparison.OrdinalIgnoreCase) || Stem(f).Equals(name, StringComparison.OrdinalIgnoreCase));

    private static string TitleOf(string card, string batch, IWorld world) =>
        world.ReadText(card, batch).ValueOrDefault is { } source
            && Parser.Parse(source, new FindingBag()).Lines is [TitleLine { Word: "card" } title, ..]
            && CountEntry.ProblemOf(title.Words.Text) is null ? title.Words.Text : Stem(card);

    private static string Stem(string file) => System.IO.Path.GetFileNameWithoutExtension(file.Replace('\\', '/'));
}
