using Sketch.Guide;
using Sketch.Syntax;
using Xunit;

namespace Sketch.Tests.Guide;

public class WordGuideTests
{
    /// <summary>Words that the part of the reference about stashes and batches explains.</summary>
    private static readonly string[] OfOtherFiles =
        ["blanks", "collection", "hollow", "kerf", "made", "note", "price", "spare", "thick", "trim", "weight"];

    public static TheoryData<string> Words() =>
        [.. Vocabulary.CardLines.Concat(Vocabulary.ClauseWords).Distinct().Except(OfOtherFiles).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Words))]
    public void Each_word_of_a_card_is_explained_and_its_example_has_the_word(string word)
    {
        var entry = WordGuide.Find(word);

        Assert.NotNull(entry);
        Assert.EndsWith(".", entry.Means, StringComparison.Ordinal);
        Assert.Contains(word, entry.Example ?? word, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("star", "Five points, or `6 points` to 60. One number is the width over the tips.")]
    [InlineData("shift", "`shift up 1/8` (`down`, `left`, `right`) applies last and moves the piece from its place.")]
    [InlineData("lined", "`lined up top` aligns copies that differ in size; by default they are centred on each other.")]
    public void The_words_are_those_of_the_reference(string word, string means) => Assert.Equal(means, WordGuide.Find(word)!.Means);
}
