using Sketch.Lettering;
using Sketch.Syntax;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Lettering;

public class LetteringKindsTests
{
    [Fact]
    public void No_two_kinds_share_a_word() =>
        Assert.Equal(LetteringKinds.All.Length, LetteringKinds.All.Select(k => k.Word).Distinct().Count());

    [Fact]
    public void A_kind_is_found_in_capitals_too() => Assert.Equal("Dancing Script", LetteringKinds.Find("SCRIPT")?.Family);

    [Fact]
    public void The_reference_lists_every_kind_with_its_font()
    {
        var reference = File.ReadAllText(Path.Combine(Repository.Root, "sketches/LANGUAGE.md"));
        Assert.All(LetteringKinds.All, k =>
            Assert.Contains($"| `{k.Word}` | {k.Meaning} | {k.Family} |", reference, StringComparison.Ordinal));
    }

    [Fact]
    public void No_kind_has_the_word_of_a_clause() =>
        Assert.DoesNotContain(LetteringKinds.All, k => Vocabulary.ClauseWords.Contains(k.Word));
}
