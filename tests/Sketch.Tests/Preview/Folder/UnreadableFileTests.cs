using System.Net;
using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>
/// A file that is there and cannot be read is told as that, and what is typed in it is neither lost nor saved over it unasked.
/// </summary>
public sealed class UnreadableFileTests : OnOpenedPage
{
    private const string Typed = "card \"Lamp\"\n# typed\n";

    // No text in UTF-8.
    private static readonly byte[] Unreadable = [0xff, 0xfe, 0x00];

    private async Task<(HttpStatusCode Status, JsonElement Json)> Opened() =>
        await Page.Ask(Page.Read($"text?file=lamp.card&window={OpenedPage.Window}"));

    private async Task<string> StampOfUnreadable()
    {
        await Page.Status(Page.See(Typed));
        Page.Write("lamp.card", Unreadable);
        return (await Opened()).Json.GetProperty("stamp").GetString()!;
    }

    [Fact]
    public async Task It_is_not_reported_as_gone()
    {
        Page.Write("lamp.card", Unreadable);
        var (status, json) = await Opened();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Matches("^\"lamp.card\" cannot be read: .*\\.$", json.GetProperty("problem").GetString());
    }

    [Fact]
    public async Task One_that_is_gone_is()
    {
        File.Delete(Page.At("lamp.card"));
        Assert.Equal(HttpStatusCode.NotFound, (await Opened()).Status);
    }

    [Fact]
    public async Task What_was_typed_in_it_is_handed_over_with_a_sentence()
    {
        await StampOfUnreadable();
        var (_, json) = await Opened();
        Assert.Equal(Typed, json.GetProperty("unsaved").GetProperty("text").GetString());
        Assert.Matches("^\"lamp.card\" cannot be read: .*\\.$", json.GetProperty("problem").GetString());
    }

    [Fact]
    public async Task It_is_not_saved_over()
    {
        var (status, _) = await Page.Save(Typed, await StampOfUnreadable());
        Assert.Equal(HttpStatusCode.InternalServerError, status);
        Assert.Equal(Unreadable, await File.ReadAllBytesAsync(Page.At("lamp.card"), OpenedPage.Stop));
    }

    [Fact]
    public async Task When_it_can_be_read_again_a_saving_is_asked_about()
    {
        var stamp = await StampOfUnreadable();
        Page.Write("lamp.card", OpenedPage.Card);
        Assert.Equal(HttpStatusCode.Conflict, (await Page.Save(Typed, stamp)).Status);
    }
}
