using System.Net;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>A named pipe in the folder keeps nobody waiting.</summary>
public sealed class PipeTests : OnOpenedPage
{
    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Page.Around.Pipe("cards/pipe.card");
    }

    [Fact]
    public async Task It_is_not_listed()
    {
        var (_, json) = await Page.Ask(Page.Read("files"));
        Assert.Equal(["lamp.card"], json.GetProperty("files").EnumerateArray().Select(f => f.GetString()));
    }

    [Fact]
    public async Task Opening_it_gives_a_sentence()
    {
        var (status, json) = await Page.Ask(Page.Read($"text?file=pipe.card&window={OpenedPage.Window}"));
        Assert.Equal((HttpStatusCode.UnprocessableEntity,
            "\"pipe.card\" cannot be read: it is not a regular file but a pipe, socket or device."),
                (status, json.GetProperty("problem").GetString()));
    }

    [Fact]
    public async Task Saving_into_it_gives_a_sentence()
    {
        var (status, json) = await Page.Save(OpenedPage.Card, "", "pipe.card");
        Assert.Equal(HttpStatusCode.InternalServerError, status);
        Assert.Matches("^\"pipe.card\" is not saved.*not a regular file.*\\.$", json.GetProperty("problem").GetString()!);
    }

    [Fact]
    public async Task As_a_draft_it_is_none()
    {
        Directory.CreateDirectory(Page.At(".sketch/drafts"));
        Page.Around.Pipe("cards/.sketch/drafts/pipe.json");
        Assert.Equal(OpenedPage.Card, (await Page.Open()).Text);
    }
}
