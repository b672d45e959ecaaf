using Sketch.Lettering;
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

    [Fact]
    public async Task Every_kind_of_lettering_has_a_sample_in_letters_of_its_own()
    {
        var (_, json) = await Page.Ask(Page.Read("lettering"));
        var samples = json.GetProperty("samples").EnumerateArray().ToList();
        Assert.Equal(LetteringKinds.All.Select(k => k.Word), samples.Select(s => s.GetProperty("word").GetString()));
        Assert.Equal(samples.Count, samples.Select(s => s.GetProperty("path").GetString()).Distinct().Count());
    }
}
