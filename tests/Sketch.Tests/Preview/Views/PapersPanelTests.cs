using System.Net;
using Xunit;

namespace Sketch.Tests.Preview.Views;

public sealed class PapersPanelTests : OnOpenedPage
{
    private static readonly string[] Chosen = ["sky=gulls"];

    private const string Batch = "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 2 of \"lamp.card\"\n";

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Page.Write("shelf.stash", "stash \"Shelf\"\npaper gulls: 12 x 12, 1 sheet, front waves, back plain red\n");
        Page.Write("lamp.card", "card \"Lamp\"\nbase A2, fold left, of white\nrole sky: navy\nfront\n  lamp: panel 2 x 3, of sky\n");
        Page.Write("lamp-day.batch", Batch);
        await Page.Status(Page.Say("see", new
        {
            file = "lamp.card",
            window = OpenedPage.Window,
            text = await File.ReadAllTextAsync(Page.At("lamp.card"), OpenedPage.Stop),
            stamp = "known",
            saved = true,
            stash = "shelf.stash",
            choices = Chosen,
        }));
    }

    private async Task<HttpStatusCode> Keep(int line) =>
        (await Page.Ask(Page.Say("keep", new { file = "lamp.card", window = OpenedPage.Window, batch = "lamp-day.batch", line }))).Status;

    [Fact]
    public async Task Papers_are_saved_under_the_make_line_of_the_card()
    {
        Assert.Equal(HttpStatusCode.OK, await Keep(3));
        Assert.Equal(Batch + "  role sky: gulls\n", await File.ReadAllTextAsync(Page.At("lamp-day.batch"), OpenedPage.Stop));
    }

    [Fact]
    public async Task A_line_that_no_longer_makes_the_card_is_explained()
    {
        Page.Write("lamp-day.batch", "# one line more\n" + Batch);
        Assert.Equal(HttpStatusCode.Conflict, await Keep(3));
    }
}
