using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>The papers of the stash are shown, tried and saved.</summary>
public sealed class PapersTests(Browsers browsers) : OnPage(browsers)
{
    private ILocator Swatch(string name) => Page.Locator("#panel-papers .swatch", new() { HasText = name });

    private ILocator Role(string name) => Page.Locator("#panel-papers label", new() { HasText = $"{name}:" });

    private async Task<string> Drawn() => await Page.Locator(".picture svg").First.EvaluateAsync<string>("svg => svg.outerHTML");

    private async Task Choose(string role, string paper)
    {
        await OpenTab("Papers");
        await Role(role).ClickAsync();
        await Swatch(paper).ClickAsync();
        await Expect(Swatch(paper)).ToHaveAttributeAsync("aria-pressed", "true");
    }

    [Fact]
    public async Task Swatches_are_at_true_size()
    {
        await OpenTab("Papers");
        // CSS Values and Units 3: 96 px to the inch; a swatch is 1 1/4 in.
        Assert.Equal(1.25 * 96, (await Swatch("gulls, front").Locator("img").BoundingBoxAsync())!.Width, 0.5);
    }

    [Fact]
    public async Task Each_side_of_each_paper_is_shown_once()
    {
        await OpenTab("Papers");
        await Expect(Page.Locator("#panel-papers .swatch")).ToHaveCountAsync(10);
    }

    [Fact]
    public async Task A_chosen_paper_changes_the_picture()
    {
        var before = await Drawn();
        await Choose("sky", "picnic, front");
        await OpenTab("Picture");
        await Expect(Page.Locator(".picture svg title", new() { HasText = "picnic" }).First).ToBeAttachedAsync();
        Assert.NotEqual(before, await Drawn());
    }

    [Fact]
    public async Task A_choice_does_not_change_the_text()
    {
        await Choose("sky", "picnic, front");
        Assert.Equal(Card, await TextOf(Page));
    }

    [Fact]
    public async Task The_sizes_show_the_chosen_paper()
    {
        await Choose("deep", "brick");
        await OpenTab("Sizes");
        await Expect(Page.Locator("#panel-sizes tr", new() { HasText = "front/sky/mat" })).ToContainTextAsync("brick");
    }

    [Fact]
    public async Task Choices_can_be_cancelled()
    {
        await Choose("sky", "picnic, front");
        await Button("Reset to the card’s own papers").ClickAsync();
        await Expect(Role("sky")).ToContainTextAsync("gulls");
    }

    [Fact]
    public async Task Clicking_a_variant_chooses_it()
    {
        await OpenTab("Papers");
        await Button("Show the card in many papers").ClickAsync();
        var variant = Page.Locator(".variant", new() { HasText = "sky picnic" }).First;
        await variant.ClickAsync();
        await Expect(variant).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(Role("sky")).ToContainTextAsync("picnic");
    }

    [Fact]
    public async Task The_variants_say_what_was_tried_and_what_was_left_out()
    {
        await OpenTab("Papers");
        await Button("Show the card in many papers").ClickAsync();
        var tried = Page.GetByRole(AriaRole.List, new() { Name = "What was tried" }).GetByRole(AriaRole.Listitem);
        await Expect(tried.First).ToContainTextAsync("sky: ");
        await Expect(tried.First).ToContainTextAsync(" tried");
    }

    [Fact]
    public async Task Each_variant_has_its_own_picture()
    {
        await OpenTab("Papers");
        await Button("Show the card in many papers").ClickAsync();
        await Expect(Page.Locator(".variant").First).ToBeVisibleAsync();
        var pictures = await Page.Locator(".variant img").EvaluateAllAsync<string[]>("images => images.map(i => i.src)");
        Assert.Equal(pictures.Length, pictures.Distinct().Count());
    }

    [Fact]
    public async Task A_choice_is_written_into_the_card()
    {
        await Choose("sky", "picnic, back");
        await Button("Keep in the card").ClickAsync();
        await Expect(Text).ToContainTextAsync("role sky: picnic");
        await Expect(State).ToHaveTextAsync("Not saved");
        await Expect(Findings).ToHaveCountAsync(0);
        Assert.Equal(Card, Read("watch.card"));
    }

    [Fact]
    public async Task A_choice_is_written_into_the_batch()
    {
        await Choose("sky", "picnic, back");
        await Button("Keep in the batch").ClickAsync();
        await Expect(Page.Locator(".notice")).ToContainTextAsync("lamp-day.batch");
        Assert.Contains("make 12 of \"watch.card\"\n  role sky: picnic, back\n", Read("lamp-day.batch"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Papers_being_tried_survive_a_reload()
    {
        await Choose("sky", "picnic, back");
        await Page.ReloadAsync();
        await OpenTab("Papers");
        await Expect(Swatch("picnic, back")).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(Role("sky")).ToContainTextAsync("picnic, back");
    }

    [Fact]
    public async Task With_an_error_in_the_text_the_Papers_tab_says_why_no_paper_can_be_tried()
    {
        await OpenTab("Papers");
        await TypeAll(Card.Replace("base", "bsae", StringComparison.Ordinal));
        await Expect(Page.GetByText("To try papers, first fix the problems")).ToBeVisibleAsync();
        await Expect(Page.Locator(".trial").GetByText("Before the error")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Typing_does_not_rebuild_the_list_of_stashes()
    {
        // A screen reader would announce a rebuilt list.
        await OpenTab("Papers");
        await Page.EvaluateAsync("() => { document.querySelector('#stash').lastChild.isOld = true; }");
        await TypeAt(10, "\nheart 3/4, upper right 1/4, of red");
        await Expect(Page.Locator(".trial svg title", new() { HasText = "heart" })).ToHaveCountAsync(1);
        Assert.True(await Page.EvaluateAsync<bool>("() => document.querySelector('#stash').lastChild.isOld"));
    }

    [Fact]
    public async Task A_new_make_line_in_a_batch_is_offered()
    {
        await OpenTab("Papers");
        await Expect(Page.Locator("#orders option")).ToHaveCountAsync(1);
        Write("lamp-day.batch", Read("lamp-day.batch") + "make 3 of \"watch.card\"\n");
        await Expect(Page.Locator("#orders option")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task Another_stash_shows_its_papers()
    {
        Write("attic.stash", "stash \"Attic\"\npaper bunting: 12 x 12, 1 sheet, front dots, back plain red\n");
        await Page.ReloadAsync();
        await OpenTab("Papers");
        await Page.Locator("#stash").SelectOptionAsync("attic.stash");
        await Expect(Page.Locator("#panel-papers .swatch")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task A_paper_of_the_stash_leads_to_its_line()
    {
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await Page.Locator("#panel-stash .swatch", new() { HasText = "brick" }).ClickAsync();
        await Expect(Page.Locator(".cm-activeLine")).ToContainTextAsync("cardstock brick");
    }

    [Fact]
    public async Task A_typed_paper_is_shown_at_once()
    {
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await Expect(Page.Locator("#panel-stash .swatch")).ToHaveCountAsync(10);
        await TypeAt(8, "\ncardstock kraft: letter, 3 sheets");
        await Expect(Page.Locator("#panel-stash .swatch", new() { HasText = "kraft" })).ToContainTextAsync("3 sheets");
    }

    [Fact]
    public async Task A_folder_without_a_stash_offers_to_create_one()
    {
        File.Delete(Path.Combine(Folder, "museum.stash"));
        await Expect(Page.Locator("#file option[value='museum.stash']")).ToHaveCountAsync(0);
        await Page.ReloadAsync();
        await OpenTab("Papers");
        await Expect(Page.Locator("#panel-papers")).ToContainTextAsync("role sky: waves");
        await Button("Create a stash").ClickAsync();
        await Expect(Page.Locator("#stash")).ToHaveValueAsync("shelf.stash");
        await Expect(Swatch("waves, front")).ToBeVisibleAsync();
        await Expect(Button("Create a stash")).ToBeHiddenAsync();
        await Expect(Page.Locator(".notice")).ToContainTextAsync("shelf.stash");
        await Button("Open it").ClickAsync();
        Assert.StartsWith("stash \"Shelf\"", Read("shelf.stash"), StringComparison.Ordinal);
        await Expect(Text).ToContainTextAsync("stash \"Shelf\"");
    }

    [Fact]
    public async Task A_created_stash_is_beside_the_card()
    {
        File.Delete(Path.Combine(Folder, "museum.stash"));
        Directory.CreateDirectory(Path.Combine(Folder, "ward"));
        Write("ward/night.card", Card);
        await Expect(Page.Locator("#file option[value='ward/night.card']")).ToHaveCountAsync(1);
        await Expect(Page.Locator("#file option[value='museum.stash']")).ToHaveCountAsync(0);
        await Page.Locator("#file").SelectOptionAsync("ward/night.card");
        await Expect(Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("night.card$"));
        await Expect(State).ToHaveTextAsync("Saved");
        await OpenTab("Papers");
        await Button("Create a stash").ClickAsync();
        await Expect(Page.Locator("#stash")).ToHaveValueAsync("ward/shelf.stash");
    }
}
