using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>A photograph or scan becomes a paper of a stash.</summary>
public sealed class ScanTests : OnOpenedPage
{
    private const string Stash = "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front waves\n";

    [Theory]
    [InlineData("scan.tif", 1000, "Save it as JPEG, PNG or WebP")]
    [InlineData("scan.png", 200_000_000, "larger than 100 MB")]
    public async Task What_cannot_be_a_paper_is_refused_before_it_is_sent(string name, long bytes, string sentence)
    {
        var (status, answer) = await Page.Ask(Page.Read($"scan-allowed?name={name}&bytes={bytes}"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains(sentence, answer.GetProperty("problem").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(300, "sea-gulls", "12 x 12", "8 1/2")]
    [InlineData(200, "sea-gulls", "12 3/4 x 16 1/2", "")]
    [InlineData(72, "sea-gulls", "12 x 12", "")]
    public async Task Its_size_follows_from_its_resolution(double density, string name, string sheet, string width)
    {
        Page.Write("shelf.stash", Stash);
        var (_, scan) = await Page.Ask(Send("scan-size", "Sea Gulls.png", Picture(2550, 3300, density), ""));
        Assert.Equal((name, sheet, width), (Of(scan, "name"), Of(scan, "sheet"), Of(scan, "width")));
    }

    [Fact]
    public async Task It_is_copied_beside_the_stash_and_never_over_another_file()
    {
        Page.Write("shelf.stash", Stash);
        Page.Write("Sea.png", "mine");
        var picture = Picture(300, 300, 300);
        var (_, done) = await Page.Ask(Send("scan", "Sea.png", picture, "&paper=sea&sheet=12%20x%2012&width=1&stock=2"));
        Assert.Equal(Stash + "paper sea: 12 x 12, 2 sheets, front \"Sea-2.png\" 1 wide\n", Of(done, "text"));
        Assert.Equal("mine", await File.ReadAllTextAsync(Page.At("Sea.png"), OpenedPage.Stop));
        Assert.Equal(picture, await File.ReadAllBytesAsync(Page.At("Sea-2.png"), OpenedPage.Stop));
        Assert.Equal("sea is added. Its picture is the file Sea-2.png.", Of(done, "said"));
    }

    [Theory]
    [InlineData("&paper=gulls&sheet=12%20x%2012&stock=1", "There is already a paper called gulls")]
    [InlineData("&paper=sea&sheet=leter&stock=1", "There is no sheet called leter.")]
    [InlineData("&paper=sea&sheet=12%20x%2012&stock=", "The number of sheets of sea is missing.")]
    public async Task A_paper_that_is_refused_leaves_no_file(string values, string sentence)
    {
        Page.Write("shelf.stash", Stash);
        var (_, done) = await Page.Ask(Send("scan", "Sea.png", Picture(30, 30, 300), values));
        Assert.Contains(sentence, Of(done, "refused"), StringComparison.Ordinal);
        Assert.Equal(Stash, Of(done, "text"));
        Assert.DoesNotContain(Directory.GetFiles(Page.Root), f => f.EndsWith(".png", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_damaged_picture_leaves_no_file()
    {
        Page.Write("shelf.stash", Stash);
        var (_, done) = await Page.Ask(Send("scan", "Sea.png", Picture(300, 300, 300)[..^200], "&paper=sea&sheet=12%20x%2012&stock=1"));
        Assert.Contains("The picture \"Sea.png\" cannot be used", Of(done, "refused"), StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.GetFiles(Page.Root), f => f.EndsWith(".png", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_only_has_the_ending_of_a_picture_is_refused()
    {
        Page.Write("shelf.stash", Stash);
        var (status, answer) = await Page.Ask(Send("scan-size", "Sea.png", "card"u8.ToArray(), ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Equal("\"Sea.png\" cannot be used: it is not a valid JPEG, PNG or WebP picture.", Of(answer, "problem"));
    }

    private static string Of(JsonElement answer, string name) => answer.GetProperty(name).GetString()!;

    private HttpRequestMessage Send(string address, string name, byte[] picture, string values)
    {
        var content = new ByteArrayContent(picture);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/octet-stream");
        return Page.Say($"{address}?file=shelf.stash&window={OpenedPage.Window}&name={Uri.EscapeDataString(name)}{values}", content);
    }

    private static byte[] Picture(int width, int height, double density)
    {
        using var picture = new Image<Rgb24>(width, height, new Rgb24(120, 160, 200));
        picture.Metadata.ResolutionUnits = PixelResolutionUnit.PixelsPerInch;
        (picture.Metadata.HorizontalResolution, picture.Metadata.VerticalResolution) = (density, density);
        using var file = new MemoryStream();
        picture.SaveAsPng(file);
        return file.ToArray();
    }
}
