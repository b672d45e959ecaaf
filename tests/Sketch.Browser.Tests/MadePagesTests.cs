using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;
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

    private const string Guide = """
        # Learn it

        ```card rough next inside
        card "Watch"
        base A2, of white
        front
          lamp: star 2, of gold
        inside
          text "Keep the light"
        ```

        A star shines.

        | Word | Means |
        | --- | --- |
        | `star` | [five points](#learn-it) |
        """;

    private const double PointsPerPixel = 0.75;

    private static readonly string CheatSheet = Path.Combine(RepositoryRoot(), "gallery", "guide", "cheat-sheet.html");

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

    [Theory]
    [InlineData("guide/index.html", ColorScheme.Light)]
    [InlineData("guide/index.html", ColorScheme.Dark)]
    public async Task A_guide_has_no_accessibility_violations(string page, ColorScheme scheme)
    {
        Directory.CreateDirectory(Path.Combine(_folder, "guide"));
        await File.WriteAllTextAsync(Path.Combine(_folder, "guide", "index.md"), Guide, TestContext.Current.CancellationToken);
        Make("gallery", _folder, "--out", _folder);

        await HasNoBarriers(page, scheme);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task The_cheat_sheet_of_the_guide_is_printed_on_one_page(string format)
    {
        var page = await _profile!.NewPageAsync();
        await page.GotoAsync(new Uri(CheatSheet).AbsoluteUri);

        var pdf = Encoding.Latin1.GetString(await page.PdfAsync(new() { Format = format }));

        Assert.Single(Regex.Matches(pdf, @"/Type\s*/Page\b"));
    }

    [Theory]
    [InlineData("p, li, h1, h2")]
    [InlineData("code")]
    public async Task Nothing_on_the_printed_cheat_sheet_is_smaller_than_8_points(string selector)
    {
        var page = await _profile!.NewPageAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.GotoAsync(new Uri(CheatSheet).AbsoluteUri);

        var smallest = await page.EvaluateAsync<double>(
            "s => Math.min(...[...document.querySelectorAll('main :is(' + s + ')')].map(e => parseFloat(getComputedStyle(e).fontSize)))",
            selector);

        Assert.True(smallest * PointsPerPixel >= 8, $"{smallest * PointsPerPixel} points");
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

    private static string RepositoryRoot([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    private static void Make(params string[] args)
    {
        using var error = new StringWriter();
        Assert.True(Cli.Program.Run(args, TextWriter.Null, error, TestContext.Current.CancellationToken) == 0, error.ToString());
    }

    private async Task HasNoBarriers(string name, ColorScheme scheme = ColorScheme.Light)
    {
        var page = await _profile!.NewPageAsync();
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync(new Uri(Path.Combine(_folder, name)).AbsoluteUri);
        var result = await page.RunAxe();

        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help} ({string.Join(", ", v.Nodes.Select(n => n.Html))})"));
        Assert.DoesNotContain(asked, url => url.StartsWith("http", StringComparison.Ordinal));
    }
}
