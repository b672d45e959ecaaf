using Sketch.Output.Handbook;
using Xunit;

namespace Sketch.Tests.Output.Handbook;

public class HandbookPageTests
{
    private static readonly Dictionary<string, string> Files = new()
    {
        ["guide/index.md"] = "# Learn *it*\n\n[b](b.md), [a](a.md#part), [words](../WORDS.md), [gone](gone.md), [out](../../secret.md)\n",
        ["guide/a.md"] = "# A\n\n[back](index.md) and [elsewhere](https://club.example/x.md)\n",
        ["guide/b.md"] = "# B\n\n[list](list.csv) [c](c.md)\n",
        ["guide/c.md"] = "no heading",
        ["WORDS.md"] = "# `words`\n",
        ["../secret.md"] = "# Secret\n",
    };

    [Fact]
    public void The_pages_are_those_that_are_named_in_the_order_of_their_names() => Assert.Equal(
        ["guide/index.md", "guide/b.md", "guide/a.md", "WORDS.md", "guide/c.md"],
        HandbookPage.ReadAll("guide/index.md", Files.GetValueOrDefault).Select(p => p.Name));

    [Fact]
    public void The_title_of_a_page_is_its_first_heading_else_its_name() => Assert.Equal(
        ["Learn it", "B", "A", "words", "guide/c.md"],
        HandbookPage.ReadAll("guide/index.md", Files.GetValueOrDefault).Select(p => p.Title));

    [Fact]
    public void Without_the_first_page_there_are_none() => Assert.Empty(HandbookPage.ReadAll("index.md", Files.GetValueOrDefault));
}
