using System.Net;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>A named pipe in the folder blocks nothing.</summary>
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
    public async Task Opening_it_is_explained()
    {
        var (status, json) = await Page.Ask(Page.Read($"text?file=pipe.card&window={OpenedPage.Window}"));
        Assert.Equal((HttpStatusCode.UnprocessableEntity,
            "\"pipe.card\" cannot be read: it is not a regular file but a pipe, socket or device."),
                (status, json.GetProperty("problem").GetString()));
    }

    [Fact]
    public async Task Saving_to_it_is_explained()
    {
        var (status, json) = await Page.Save(OpenedPage.Card, "", "pipe.card");
        Assert.Equal(HttpStatusCode.InternalServerError, status);
        Assert.Matches("^\"pipe.card\" is not saved.*not a regular file.*\\.$", json.GetProperty("problem").GetString()!);
    }

    [Fact]
    public async Task It_is_not_read_as_a_draft()
    {
        Directory.CreateDirectory(Page.At(".sketch/drafts"));
        Page.Around.Pipe("cards/.sketch/drafts/pipe.json");
        Assert.Equal(OpenedPage.Card, (await Page.Open()).Text);
    }
}
