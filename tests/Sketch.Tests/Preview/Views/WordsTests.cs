using Xunit;

namespace Sketch.Tests.Preview.Views;

/// <summary>The words that the editor offers at the start of a line.</summary>
public sealed class WordsTests : OnOpenedPage
{
    private async Task<string?[]> Starts(string kind)
    {
        var (_, json) = await Page.Ask(Page.Read("words"));
        return [.. json.GetProperty("starts").GetProperty(kind).EnumerateArray().Select(w => w.GetString())];
    }

    [Theory]
    [InlineData("card", "panel", "paper")]
    [InlineData("stash", "paper", "panel")]
    [InlineData("stash", "offcut", "base")]
    [InlineData("batch", "make", "panel")]
    public async Task Each_kind_of_file_has_its_own_words(string kind, string own, string other)
    {
        var starts = await Starts(kind);
        Assert.Contains(own, starts);
        Assert.DoesNotContain(other, starts);
    }
}
