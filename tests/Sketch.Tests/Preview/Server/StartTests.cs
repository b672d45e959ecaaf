using System.Net;
using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>Beginning a card from a layout, and copying a sample.</summary>
public sealed class StartTests : OnOpenedPage
{
    private static readonly object Asked = new { layout = "square", title = "Keepers' night", size = "5 x 5", fold = "left" };

    [Fact]
    public async Task A_begun_card_is_written_under_a_name_after_its_title()
    {
        Assert.Equal("keepers-night.card", await FileOf(Page.Say("start", Asked)));
        Assert.StartsWith("card \"Keepers' night\"\nbase 5 x 5, fold left, of white\n",
            await File.ReadAllTextAsync(Page.At("keepers-night.card"), OpenedPage.Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_card_of_the_same_title_gets_a_number_and_the_first_stays()
    {
        Page.Write("keepers-night.card", "mine");

        Assert.Equal("keepers-night-2.card", await FileOf(Page.Say("start", Asked)));
        Assert.Equal("mine", await File.ReadAllTextAsync(Page.At("keepers-night.card"), OpenedPage.Stop));
    }

    [Fact]
    public async Task A_card_begun_with_the_sample_stash_is_made_in_its_papers()
    {
        await FileOf(Page.Say("start", new { layout = "square", title = "Night", size = "5 x 5", fold = "left", shelf = true }));

        Assert.StartsWith("# What lies on the shelf", await File.ReadAllTextAsync(Page.At("shelf.stash"), OpenedPage.Stop),
            StringComparison.Ordinal);
        Assert.DoesNotContain("role ground: stars #24395a", await File.ReadAllTextAsync(Page.At("night.card"), OpenedPage.Stop),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("square", "A2", "left")]
    [InlineData("square", "5 x 5", "gate")]
    [InlineData("no such layout", "5 x 5", "left")]
    public async Task What_a_layout_does_not_offer_is_refused(string layout, string size, string fold)
    {
        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            await Page.Status(Page.Say("start", new { layout, title = "Night", size, fold })));
        Assert.Equal(["lamp.card"], Directory.GetFiles(Page.Root).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Looking_at_a_sample_writes_nothing()
    {
        await Page.Send(Page.Read("samples"));
        await Page.Send(Page.Read("sample?name=wide-view.card"));

        Assert.Equal(["lamp.card"], Directory.GetFiles(Page.Root).Select(Path.GetFileName));
    }

    [Fact]
    public async Task A_copied_sample_comes_with_the_drawing_that_it_names()
    {
        Assert.Equal("wide-view.card", await FileOf(Page.Say("copy", new { sample = "wide-view.card" })));
        Assert.True(File.Exists(Page.At("boat.svg")));
    }

    private async Task<string> FileOf(HttpRequestMessage request)
    {
        var answer = await Page.Send(request);
        var text = await answer.Content.ReadAsStringAsync(OpenedPage.Stop);
        Assert.True(answer.IsSuccessStatusCode, text);
        return JsonDocument.Parse(text).RootElement.GetProperty("file").GetString()!;
    }
}
