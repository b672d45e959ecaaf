using System.Net;
using System.Text.Json;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>
/// An existing file that cannot be read is reported as unreadable; its unsaved typing is not lost and not saved without asking.
/// </summary>
public sealed class UnreadableFileTests : OnOpenedPage
{
    private const string Typed = "card \"Lamp\"\n# typed\n";

    // Not UTF-8 text.
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
    public async Task It_is_not_reported_as_deleted()
    {
        Page.Write("lamp.card", Unreadable);
        var (status, json) = await Opened();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Matches("^\"lamp.card\" cannot be read: .*\\.$", json.GetProperty("problem").GetString());
    }

    [Fact]
    public async Task A_deleted_file_is_reported_as_deleted()
    {
        File.Delete(Page.At("lamp.card"));
        Assert.Equal(HttpStatusCode.NotFound, (await Opened()).Status);
    }

    [Fact]
    public async Task Its_unsaved_typing_is_returned_with_an_explanation()
    {
        await StampOfUnreadable();
        var (_, json) = await Opened();
        Assert.Equal(Typed, json.GetProperty("unsaved").GetProperty("text").GetString());
        Assert.Matches("^\"lamp.card\" cannot be read: .*\\.$", json.GetProperty("problem").GetString());
    }

    [Fact]
    public async Task It_is_not_overwritten()
    {
        var (status, _) = await Page.Save(Typed, await StampOfUnreadable());
        Assert.Equal(HttpStatusCode.InternalServerError, status);
        Assert.Equal(Unreadable, await File.ReadAllBytesAsync(Page.At("lamp.card"), OpenedPage.Stop));
    }

    [Fact]
    public async Task Saving_after_it_becomes_readable_is_a_conflict()
    {
        var stamp = await StampOfUnreadable();
        Page.Write("lamp.card", OpenedPage.Card);
        Assert.Equal(HttpStatusCode.Conflict, (await Page.Save(Typed, stamp)).Status);
    }
}
