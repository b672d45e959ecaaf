using System.Net;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>The opened folder is renamed: the page says so, keeps unsaved typing, and continues when the folder is back.</summary>
public sealed class GoneFolderTests : OnOpenedPage
{
    private const string Typed = "card \"Lamp\"\n# typed\n";

    private void TakeAway() => Directory.Move(Page.Root, Page.Around.At("elsewhere"));

    private void PutBack() => Directory.Move(Page.Around.At("elsewhere"), Page.Root);

    [Fact]
    public async Task The_list_of_files_is_an_explanation_until_the_folder_is_back()
    {
        TakeAway();
        var (status, json) = await Page.Ask(Page.Read("files"));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, status);
        Assert.Matches("no longer there\\. Put it back.*\\.$", json.GetProperty("problem").GetString()!);
        PutBack();
        Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Read("files")));
    }

    [Fact]
    public async Task A_file_in_it_is_not_reported_as_deleted()
    {
        var (_, stamp) = await Page.Open();
        TakeAway();
        var (status, json) = await Page.Ask(Page.Read("text?file=lamp.card"));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, status);
        Assert.Matches("^\"lamp.card\" cannot be read: .*Put it back.*\\.$", json.GetProperty("problem").GetString()!);
        PutBack();
        Assert.Equal(stamp, (await Page.Open()).Stamp);
    }

    [Theory]
    [InlineData("orders?file=lamp.card")]
    [InlineData("shelf?stash=museum.stash")]
    [InlineData("earlier?file=lamp.card")]
    [InlineData("sizes?file=lamp.card")]
    public async Task No_request_fails_with_a_server_error_meanwhile(string address)
    {
        TakeAway();
        Assert.InRange((int)await Page.Status(Page.Read(address)), 200, 499);
    }

    [Fact]
    public async Task Nothing_is_saved_meanwhile_and_no_folder_is_created()
    {
        var (_, stamp) = await Page.Open();
        TakeAway();
        foreach (var known in (string[])[stamp, ""])
        {
            var (_, json) = await Page.Save(Typed, known);
            Assert.Matches("^\"lamp.card\" is not saved: .*Put it back.*\\.$", json.GetProperty("problem").GetString()!);
        }

        Assert.False(Directory.Exists(Page.Root));
    }

    [Fact]
    public async Task Typing_in_the_meantime_is_on_the_disk_when_the_folder_is_back()
    {
        TakeAway();
        Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.See(Typed)));
        await Page.Status(Page.Read("text?file=lamp.card&window=window0000000002"));
        Assert.False(Directory.Exists(Page.Root));
        PutBack();
        await OpenedPage.Until(() => Page.Keeps(".json", Typed));
    }
}
