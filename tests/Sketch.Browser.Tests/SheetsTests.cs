using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Sizes, templates and sheets, on the screen and in print.</summary>
public sealed class SheetsTests(Browsers browsers) : OnPage(browsers)
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private ILocator Sizes => Page.Locator("#panel-sizes table");

    private ILocator Plan => Page.Locator(".plan");

    private async Task WorkOut()
    {
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await Button("Plan the sheets").ClickAsync();
        await Expect(Plan.Locator("svg").First).ToBeVisibleAsync();
    }

    private static async Task<byte[]> Fetched(ILocator link)
    {
        var address = await link.EvaluateAsync<string>("a => a.href");
        using var client = new HttpClient();
        return await client.GetByteArrayAsync(new Uri(address), Stop);
    }

    [Theory]
    [InlineData("in", "3 1/8 x 4 1/8")]
    [InlineData("mm", "79.38 x 104.78")]
    public async Task Sizes_are_in_ruler_fractions_or_millimetres(string units, string mat)
    {
        // 3 x 4 in with an eighth of mat in total; one inch is 25.4 mm, shown to its hundredth.
        await OpenTab("Sizes");
        await Page.Locator("#units").SelectOptionAsync(units);
        await Expect(Sizes.Locator("tr", new() { HasText = "front/sky/mat" })).ToContainTextAsync(mat);
    }

    [Fact]
    public async Task Sizes_follow_the_typing()
    {
        await OpenTab("Sizes");
        await TypeAt(10, "\nheart 3/4, upper right 1/4, of red");
        await Expect(Sizes).ToContainTextAsync("front/heart");
    }

    [Theory]
    [InlineData("letter", 612, 792)]
    [InlineData("a4", 210 * PointsPerMillimetre, 297 * PointsPerMillimetre)]
    public async Task Templates_are_on_the_chosen_paper(string name, double width, double height)
    {
        await OpenTab("Templates");
        await Page.Locator("#page").SelectOptionAsync(name);
        using var pdf = PdfDocument.Open(await Fetched(Page.GetByRole(AriaRole.Link, new() { Name = "Open the templates (PDF)" })));
        Assert.All(pdf.GetPages(), p => Assert.Equal((width, height), (p.MediaBox.Bounds.Width, p.MediaBox.Bounds.Height), Within(0.001)));
        await Expect(Page.GetByText(Pages(pdf), new() { Exact = true })).ToBeVisibleAsync();
    }

    private static string Pages(PdfDocument pdf) => pdf.NumberOfPages == 1 ? "1 page" : $"{pdf.NumberOfPages} pages";

    [Fact]
    public async Task Templates_have_the_sizes_of_the_text()
    {
        await TypeAll("card \"Test\"\nbase 3 x 4, fold left, of white\nfront\n  field: panel 2 x 3, of blue\n    disc: circle 1 1/2, "
            + "of red\n");
        await Expect(Page.Locator(".picture svg title", new() { HasText = "circle" })).ToHaveCountAsync(1);
        await OpenTab("Templates");
        using var pdf = PdfDocument.Open(await Fetched(Page.GetByRole(AriaRole.Link, new() { Name = "Open the templates (PDF)" })));
        var drawn = pdf.GetPages().SelectMany(p => p.Paths).Where(p => p.IsStroked).Select(p => p.GetBoundingRectangle()!.Value)
            .Select(b => (b.Width / PointsPerMillimetre, b.Height / PointsPerMillimetre)).ToList();
        // In millimetres: 2 x 3 in, 1 1/2 in across, and the base of 6 x 4 in flat, each in either orientation.
        foreach (var (width, height) in new[] { (50.8, 76.2), (38.1, 38.1), (152.4, 101.6) })
        {
            Assert.Contains(drawn, d => Within(0.01).Equals(d, (width, height)) || Within(0.01).Equals(d, (height, width)));
        }
    }

    [Fact]
    public async Task Shortages_are_above_the_diagrams()
    {
        Write("lamp-day.batch", "batch \"Lamp day\"\nstash \"museum.stash\"\nfor \"Cliff ward\", 200 cards\nmake 200 of \"watch.card\"\n");
        await WorkOut();
        var missing = Plan.GetByText("missing", new() { Exact = false }).Or(Plan.GetByText("short", new() { Exact = false })).First;
        await Expect(missing).ToBeVisibleAsync();
        Assert.True((await missing.BoundingBoxAsync())!.Y < (await Plan.Locator("svg").First.BoundingBoxAsync())!.Y);
        await Expect(Findings.Filter(new() { HasText = "Error" }).First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Supplies_are_above_the_diagrams()
    {
        await WorkOut();
        var supplies = Plan.GetByText("foam", new() { Exact = false }).First;
        Assert.True((await supplies.BoundingBoxAsync())!.Y < (await Plan.Locator("svg").First.BoundingBoxAsync())!.Y);
    }

    [Fact]
    public async Task The_progress_of_the_search_is_shown_while_it_runs()
    {
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await Page.EvaluateAsync("""
            () => {
              window.reported = [];
              new MutationObserver(() => window.reported.push(document.querySelector('.progress').textContent))
                  .observe(document.querySelector('.progress'), { childList: true, subtree: true, characterData: true });
            }
            """);
        await Button("Plan the sheets").ClickAsync();
        await Expect(Plan.Locator("svg").First).ToBeVisibleAsync();
        Assert.Contains(await Page.EvaluateAsync<string[]>("() => window.reported"), t => t.Contains("gulls", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_text_changed_during_the_search_is_noted_beside_the_plan()
    {
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await Page.RouteAsync("**/plan", async route =>
        {
            await TypeAt(4, " # more");
            await route.ContinueAsync();
        });
        await Button("Plan the sheets").ClickAsync();
        await Expect(Plan.Locator("svg").First).ToBeVisibleAsync();
        await Expect(Page.GetByText("The text has changed")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Another_batch_can_be_planned_while_the_first_is_still_running()
    {
        Write("second.batch", Read("lamp-day.batch").Replace("Lamp day", "Second day", StringComparison.Ordinal));
        await Expect(Page.Locator("#file option[value='second.batch']")).ToHaveCountAsync(1);
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await Page.RouteAsync("**/plan", _ => Task.CompletedTask);
        await Button("Plan the sheets").ClickAsync();
        await Page.UnrouteAsync("**/plan");
        await Page.Locator("#file").SelectOptionAsync("second.batch");
        await Button("Plan the sheets").ClickAsync();
        await Expect(Plan.Locator("svg").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_end_of_planning_is_announced_to_screen_readers()
    {
        await WorkOut();
        await Expect(Page.GetByRole(AriaRole.Status).GetByText("Done.")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_text_changed_since_is_noted_beside_the_plan()
    {
        await WorkOut();
        await TypeAt(4, " # more");
        await Expect(Page.GetByText("The text has changed")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_workbook_is_a_PDF_with_the_steps_of_each_design()
    {
        await WorkOut();
        using var pdf = PdfDocument.Open(await Fetched(Page.GetByRole(AriaRole.Link, new() { Name = "Open the workbook (PDF)" })));
        await Expect(Page.GetByText($"Open the workbook (PDF) {Pages(pdf)}")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Messages_are_a_PDF_of_their_own()
    {
        Write("lamp-day.batch", Read("lamp-day.batch").TrimEnd() + "\n  message \"Ahoy\"\n");
        await WorkOut();
        using var pdf = PdfDocument.Open(await Fetched(Page.GetByRole(AriaRole.Link, new() { Name = "Messages to print (PDF)" })));
        Assert.Contains("Messages", pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    [Fact]
    public async Task The_remaining_stash_can_be_downloaded()
    {
        await WorkOut();
        var left = await Fetched(Page.GetByRole(AriaRole.Link, new() { Name = "Remaining stash (stash file)" }));
        Assert.Contains("\nstash ", System.Text.Encoding.UTF8.GetString(left), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Picture")]
    [InlineData("Sizes")]
    public async Task A_printed_page_is_legible(string tab)
    {
        await OpenTab(tab);
        await IsLegibleInPrint();
    }

    [Fact]
    public async Task Printed_sheets_are_legible()
    {
        await WorkOut();
        await IsLegibleInPrint(".plan svg");
    }

    [Fact]
    public async Task Only_the_table_is_printed_and_not_the_controls()
    {
        await OpenTab("Sizes");
        await Expect(Sizes).ToBeVisibleAsync();
        using var pdf = PdfDocument.Open(await Page.PdfAsync(new() { Format = "Letter" }));
        var words = pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text).ToList();
        Assert.Contains("inside", words.Select(w => w.Split('/')[0]));
        Assert.DoesNotContain("Save", words);
        Assert.DoesNotContain("Undo", words);
    }

    /// <summary>Checks that letters have 12 points or more and no column is beyond the paper.</summary>
    private async Task IsLegibleInPrint(string? without = null)
    {
        if (without is not null)
        {
            await Page.Locator(without).EvaluateAllAsync<bool>("parts => { parts.forEach((part) => part.remove()); return true; }");
        }
        else
        {
            // Words in the picture have their size on the card.
            await Page.Locator(".picture").EvaluateAllAsync<bool>("parts => { parts.forEach((part) => part.remove()); return true; }");
        }

        using var pdf = PdfDocument.Open(await Page.PdfAsync(new() { Format = "Letter" }));
        Assert.All(pdf.GetPages()
            .SelectMany(p => p.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => (Page: p, Letter: l))), at =>
        {
            Assert.True(at.Letter.PointSize >= 11.95, $"{at.Letter.Value}: {at.Letter.PointSize} pt");
            Assert.InRange(at.Letter.BoundingBox.Right, 0, at.Page.Width);
        });
    }

    private static Tolerance Within(double tolerance) => new(tolerance);

    private sealed class Tolerance(double tolerance) : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) =>
            Math.Abs(x.Item1 - y.Item1) < tolerance && Math.Abs(x.Item2 - y.Item2) < tolerance;

        public int GetHashCode((double, double) obj) => 0;
    }
}
