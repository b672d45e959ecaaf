using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Each tab, printed by the browser.</summary>
public sealed class PrintTests(Browsers browsers) : OnPage(browsers)
{
    private const double PointsPerInch = 72;

    private static readonly string[] Papers = ["Letter", "A4"];

    /// <summary>The printed PDF.</summary>
    public static TheoryData<string> Printed() => ["Picture", "Unfolded", "Papers", "Variants", "Sizes", "Templates", "Stash", "Sheets"];

    [Theory]
    [MemberData(nameof(Printed))]
    public async Task No_page_is_nearly_blank(string tab)
    {
        await Show(tab);
        foreach (var paper in Papers)
        {
            using var pdf = await Print(paper);
            // A twelfth of a page is three lines and a heading.
            Assert.All(pdf.GetPages().Select(page => (paper, page.Number, Ink: HeightOfInk(page) / page.Height)),
                page => Assert.InRange(page.Ink, 1.0 / 12, 1));
        }
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public async Task No_control_is_printed(string tab)
    {
        await Show(tab);
        var controls = await Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('button:not(.swatch, .variant), a[href], select, summary, .choices > label')]
              .filter((c) => !c.closest('fieldset'))
              .filter((c) => c.checkVisibility())
                  .map((c) => c.matches('select') ? c.selectedOptions[0]?.text : c.textContent).filter(Boolean)
            """);
        foreach (var paper in Papers)
        {
            using var pdf = await Print(paper);
            var text = Squeezed(string.Concat(pdf.GetPages().Select(p => p.Text)));
            // The papers of the roles are worth printing. Short words, such as the names of tabs, also occur in sentences.
            Assert.DoesNotContain(controls.Select(Squeezed), c => c.Length > 6 && text.Contains(c, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("Fit to window", 1280)]
    [InlineData("Double size", 1280)]
    [InlineData("Fit to window", 600)]
    public async Task The_picture_is_printed_at_the_size_of_the_card_whatever_its_size_on_the_screen(string size, int width)
    {
        await Page.SetViewportSizeAsync(width, 900);
        await Page.GetByLabel("Size", new() { Exact = true }).SelectOptionAsync(size);
        using var pdf = await Print("Letter");
        Assert.All(pdf.GetPages(), page => Assert.Contains(Drawn(page), d => IsOf(d, 4.25, 5.5)));
    }

    [Theory]
    [InlineData("Letter", "A2", 8.5, 5.5)]
    [InlineData("A4", "A2", 8.5, 5.5)]
    [InlineData("Letter", "5 x 7", 10, 7)]
    [InlineData("A4", "5 x 7", 10, 7)]
    public async Task A_card_wider_than_the_paper_is_printed_in_landscape_one_face_per_page(
        string paper, string card, double width, double height)
    {
        await TypeAll(Card.Replace("base A2", $"base {card}", StringComparison.Ordinal));
        await Page.GetByLabel("Unfolded, with the score line").CheckAsync();
        await Expect(Page.Locator("figcaption").First).ToContainTextAsync("unfolded");
        using var pdf = await Print(paper);
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.All(pdf.GetPages(), page => Assert.Contains(Drawn(page), d => IsOf(d, width, height)));
    }

    [Fact]
    public async Task A_card_that_fits_no_page_is_printed_smaller_with_a_note()
    {
        await TypeAll(Card.Replace("base A2", "base 9 x 10", StringComparison.Ordinal));
        await Page.GetByLabel("Unfolded, with the score line").CheckAsync();
        await Expect(Page.Locator("figcaption").First).ToContainTextAsync("18 x 10");
        using var pdf = await Print("Letter");
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.All(pdf.GetPages(), page => Assert.Contains("Smaller than true size", page.Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_printed_picture_names_its_card_and_face()
    {
        using var pdf = await Print("Letter");
        Assert.Contains(Squeezed("Keepers' watch: Front, 4 1/4 x 5 1/2 in"), Squeezed(pdf.GetPage(1).Text), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Stash")]
    [InlineData("Papers")]
    public async Task Papers_are_printed_with_their_swatches_at_true_size_and_their_names(string tab)
    {
        await Show(tab);
        using var pdf = await Print("Letter");
        var text = Squeezed(string.Concat(pdf.GetPages().Select(p => p.Text)));
        foreach (var name in (string[])["gulls, front", "gulls, back", "night, front", "picnic, back", "white", "navy", "brick", "cream"])
        {
            Assert.Contains(Squeezed(name), text, StringComparison.Ordinal);
        }

        // Each of the ten sides is an inch and a quarter wide.
        Assert.InRange(pdf.GetPages().SelectMany(Drawn).Count(d => IsOf(d, 1.25, 1.25)), 10, int.MaxValue);
    }

    [Theory]
    [InlineData("Papers", "Keepers' watch")]
    [InlineData("Sizes", "Keepers' watch")]
    [InlineData("Stash", "Museum shelf")]
    [InlineData("Sheets", "Lamp day")]
    public async Task Each_printed_tab_has_a_title(string tab, string title)
    {
        await Show(tab);
        using var pdf = await Print("Letter");
        Assert.StartsWith(Squeezed(title), Squeezed(pdf.GetPage(1).Text), StringComparison.Ordinal);
    }

    private async Task Show(string tab)
    {
        switch (tab)
        {
            case "Unfolded":
                await Page.GetByLabel("Unfolded, with the score line").CheckAsync();
                await Expect(Page.Locator("figcaption").First).ToContainTextAsync("unfolded");
                break;
            case "Papers":
                await OpenTab("Papers");
                await Expect(Page.Locator("#panel-papers .swatch")).ToHaveCountAsync(10);
                break;
            case "Variants":
                await OpenTab("Papers");
                await Button("Show the card in many papers").ClickAsync();
                await Expect(Page.Locator(".variant").First).ToBeVisibleAsync();
                break;
            case "Sizes":
                await OpenTab("Sizes");
                await Expect(Page.Locator("#panel-sizes table")).ToBeVisibleAsync();
                break;
            case "Stash":
                await Page.Locator("#file").SelectOptionAsync("museum.stash");
                await Expect(Page.Locator("#panel-stash .swatch")).ToHaveCountAsync(10);
                break;
            case "Sheets":
                await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
                await Button("Plan the sheets").ClickAsync();
                await Expect(Page.Locator(".plan svg").First).ToBeVisibleAsync();
                break;
            default:
                await OpenTab(tab);
                break;
        }
    }

    private async Task<PdfDocument> Print(string paper) => PdfDocument.Open(await Page.PdfAsync(new() { Format = paper }));

    /// <summary>The width and height in inches of each drawing on a page.</summary>
    private static IEnumerable<(double Width, double Height)> Drawn(Page page) => page.Paths
        .Select(p => p.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>()
        .Select(b => (b.Width / PointsPerInch, b.Height / PointsPerInch));

    private static bool IsOf((double Width, double Height) drawn, double width, double height) =>
        Math.Abs(drawn.Width - width) < 0.01 && Math.Abs(drawn.Height - height) < 0.01;

    /// <summary>The distance in points from the top of the highest to the bottom of the lowest letter or drawing.</summary>
    private static double HeightOfInk(Page page)
    {
        var boxes = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).Select(l => l.BoundingBox)
            .Concat(page.Paths.Where(p => p.IsFilled || p.IsStroked).Select(p => p.GetBoundingRectangle())
            .OfType<UglyToad.PdfPig.Core.PdfRectangle>())
            .Where(b => b.Height < page.Height - 1).ToList();
        return boxes.Count == 0 ? 0 : boxes.Max(b => b.Top) - boxes.Min(b => b.Bottom);
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
