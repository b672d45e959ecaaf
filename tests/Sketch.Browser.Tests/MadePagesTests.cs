using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace Sketch.Browser.Tests;

/// <summary>The pages that the tool writes as files, opened from disk and checked by axe-core; they have no scripts of their own.</summary>
public sealed class MadePagesTests(Browsers browsers) : IAsyncLifetime
{
    private const string Card = """
        card "Keepers' watch"
        note "# Before you cut" "See [the list](list.html) and **this**:" "" "| Paper | Sheets |" "| --- | --- |" "| gulls | 2 |"
        base A2, fold left, of white
        role sky: gulls #9fc9e8
        role deep: navy
        front
          panel 3 x 4, of sky
            mat +1/8, of deep
          text "Keep the light", bottom 1/2, of deep
        """;

    private const string Stash = """
        stash "Shelf"
        paper gulls: 12 x 12, 3 sheets, front waves, back stripes
        cardstock navy: letter, 3 sheets
        cardstock red: letter, 3 sheets
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("sketch-pages-").FullName;
    private IBrowserContext? _profile;

    public async ValueTask InitializeAsync()
    {
        _profile = await browsers.Browser.NewContextAsync();
        await File.WriteAllTextAsync(Path.Combine(_folder, "watch.card"), Card, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(Path.Combine(_folder, "shelf.stash"), Stash, TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task A_gallery_has_no_accessibility_violations()
    {
        Make("gallery", _folder, "--out", _folder);

        await HasNoBarriers("index.html");
    }

    [Fact]
    public async Task A_page_of_variants_has_no_accessibility_violations()
    {
        Make("variants", Path.Combine(_folder, "watch.card"), "--stash", Path.Combine(_folder, "shelf.stash"), "--out", _folder, "--as",
            "html");

        await HasNoBarriers("watch-variants.html");
    }

    public async ValueTask DisposeAsync()
    {
        if (_profile is not null)
        {
            await _profile.DisposeAsync();
        }

        Directory.Delete(_folder, recursive: true);
    }

    private static void Make(params string[] args)
    {
        using var error = new StringWriter();
        Assert.True(Cli.Program.Run(args, TextWriter.Null, error, TestContext.Current.CancellationToken) == 0, error.ToString());
    }

    private async Task HasNoBarriers(string name)
    {
        var page = await _profile!.NewPageAsync();
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync(new Uri(Path.Combine(_folder, name)).AbsoluteUri);
        var result = await page.RunAxe();

        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help} ({string.Join(", ", v.Nodes.Select(n => n.Html))})"));
        Assert.DoesNotContain(asked, url => url.StartsWith("http", StringComparison.Ordinal));
    }
}
