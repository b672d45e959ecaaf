using Sketch.Lettering;
using Xunit;

namespace Sketch.Tests.Preview.Views;

/// <summary>The samples that the editor shows beside the kinds of lettering.</summary>
public sealed class LetteringSamplesTests : OnOpenedPage
{
    [Fact]
    public async Task Every_kind_of_lettering_has_a_sample_in_letters_of_its_own()
    {
        var (_, json) = await Page.Ask(Page.Read("lettering"));
        var samples = json.GetProperty("samples").EnumerateArray().ToList();
        Assert.Equal(LetteringKinds.All.Select(k => k.Word), samples.Select(s => s.GetProperty("word").GetString()));
        Assert.Equal(samples.Count, samples.Select(s => s.GetProperty("path").GetString()).Distinct().Count());
    }
}
