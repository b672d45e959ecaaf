using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>The picture and the findings follow typing.</summary>
public sealed class TypingTests(Browsers browsers) : OnPage(browsers)
{
    // Without the frame around the piece of the caret's line.
    private const string Drawing = "svg => { const copy = svg.cloneNode(true); copy.querySelectorAll('.marked').forEach(m => m.remove()); "
        + "return copy.outerHTML; }";

    private ILocator Title(string text) => Page.Locator(".picture svg title", new() { HasText = text });

    [Fact]
    public async Task Typing_shows_the_new_picture()
    {
        await Expect(Title("strip")).ToHaveCountAsync(1);
        await TypeAt(10, "\nheart 3/4, upper right 1/4, of red");
        await Expect(Title("heart")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task All_faces_are_shown_with_their_sizes()
    {
        await TypeAll(Card + "back\n  text \"Made by hand\", bottom 1/2\nenvelope\n  strip full x 1/2, of navy\n");
        await Expect(Page.Locator("figcaption"))
            .ToHaveTextAsync(["Front, 4 1/4 x 5 1/2 in", "Inside, 4 1/4 x 5 1/2 in", "Back, 4 1/4 x 5 1/2 in",
                "Envelope, 5 3/4 x 4 3/8 in"]);
    }

    [Fact]
    public async Task The_base_can_be_shown_unfolded()
    {
        await Page.GetByLabel("Unfolded, with the score line").CheckAsync();
        await Expect(Page.Locator("figcaption"))
            .ToHaveTextAsync(["Outside, unfolded, 8 1/2 x 5 1/2 in", "Inside, unfolded, 8 1/2 x 5 1/2 in"]);
    }

    [Fact]
    public async Task A_picture_can_be_shown_at_true_size()
    {
        await Page.Locator("#scale").SelectOptionAsync("True size");
        // CSS Values and Units 3: 96 px to the inch; the card is 4 1/4 in wide.
        Assert.Equal(4.25 * 96, (await Picture.First.BoundingBoxAsync())!.Width, 0.5);
    }

    [Fact]
    public async Task With_a_mistake_in_the_text_the_last_picture_stays()
    {
        await TypeAt(9, ", rigth 1");
        await Expect(Findings).ToContainTextAsync("rigth");
        await Expect(Picture.First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_missing_line_can_be_inserted()
    {
        await TypeAll("card \"Lamp\"\nbase 105 x 148 mm, fold left, of white\nfront\n  panel 60 x 80 mm, of navy\n");
        await Button("Insert units mm").ClickAsync();
        await Expect(Text).ToContainTextAsync("units mm");
        await Expect(Text).ToContainTextAsync("base 105 x 148 mm");
    }

    [Fact]
    public async Task A_key_is_sent_over_the_open_socket()
    {
        var sent = new TaskCompletionSource();
        Page.WebSocket += (_, socket) => socket.FrameSent += (_, frame) =>
        {
            if (frame.Text?.Contains("# two", StringComparison.Ordinal) == true)
            {
                sent.TrySetResult();
            }
        };
        await Page.ReloadAsync();
        await Expect(Picture.First).ToBeVisibleAsync();
        await TypeAt(1, " # one");
        // While the socket is being opened, keys go as requests.
        await TypeAt(2, " # two");
        await sent.Task.WaitAsync(TimeSpan.FromMinutes(1), Stop);
    }

    [Fact]
    public async Task Without_a_card_the_last_picture_stays_with_a_note()
    {
        await TypeAll(Card.Replace("base", "bsae", StringComparison.Ordinal));
        await Expect(Page.GetByText("Before the error")).ToBeVisibleAsync();
        await Expect(Picture.First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task An_up_to_date_picture_has_no_note()
    {
        await TypeAll(Card.Replace("base", "bsae", StringComparison.Ordinal));
        await Expect(Page.GetByText("Before the error")).ToBeVisibleAsync();
        await TypeAll(Card);
        await Expect(Page.GetByText("Before the error")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task A_key_replaces_only_the_pieces_that_it_changes()
    {
        // The browser repaints only replaced pieces; repainting all would take more than a tenth of a second on a large card.
        await Picture.First.EvaluateAsync("svg => svg.querySelectorAll('g[id]').forEach(g => { g.isOld = true; })");
        await TypeAt(10, "\nheart 3/4, upper right 1/4, of red");
        await Expect(Title("heart")).ToHaveCountAsync(1);
        Assert.True(await Picture.First.EvaluateAsync<bool>("svg => svg.querySelector('[id=front-sky]').isOld"));
    }

    [Theory]
    [InlineData("    lamp:", "    heart 3/4, upper right 1/4, of red\n    lamp:", "a piece before another")]
    [InlineData("    lamp: star 1 1/2, of cream, raised 2 mm\n", "", "a piece less")]
    [InlineData("of sky", "of deep", "another paper of a piece")]
    [InlineData("gulls #9fc9e8", "picnic", "another paper of a role")]
    [InlineData("base A2, fold left", "base A2, fold top", "another fold")]
    [InlineData("    mat +1/8, of deep\n    lamp: star 1 1/2, of cream, raised 2 mm\n",
        "    lamp: star 1 1/2, of cream, raised 2 mm\n      mat +1/8, of deep\n      heart 1/4, of red\n", "a mat of another piece")]
    public async Task An_updated_picture_equals_one_drawn_from_scratch(string was, string now, string change)
    {
        var before = await Drawn();
        await TypeAll(Card.Replace(was, now, StringComparison.Ordinal));
        await Page.WaitForFunctionAsync(
            $"before => ({Drawing})(document.querySelector('.faces .picture').shadowRoot.querySelector('svg')) !== before", before);
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        var renewed = await Drawn();
        await Page.ReloadAsync();
        await Expect(Picture.First).ToBeVisibleAsync();
        Assert.True(await Drawn() == renewed, $"After {change}, the picture differs from one drawn from scratch.");

        Task<string> Drawn() => Picture.First.EvaluateAsync<string>(Drawing);
    }

    [Fact]
    public async Task A_mistake_is_listed_as_a_finding_with_its_line()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings).ToHaveCountAsync(1);
        await Expect(Findings).ToContainTextAsync("Error");
        await Expect(Findings).ToContainTextAsync("Line 9");
        await Expect(Findings).ToContainTextAsync("rigth");
    }

    [Fact]
    public async Task A_mistake_is_marked_in_its_line()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Page.Locator(".cm-lintRange-error")).ToHaveTextAsync("rigth");
    }

    [Fact]
    public async Task The_button_of_a_hint_fixes_the_mistake()
    {
        await TypeAt(9, ", rigth 1/4");
        await Button("Change to right").ClickAsync();
        await Expect(Findings).ToHaveCountAsync(0);
        Assert.Contains("raised 2 mm, right 1/4", await TextOf(Page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_button_of_a_hint_fixes_a_word_that_has_been_completed_since()
    {
        await LoadWithoutSocket();
        await TypeAt(9, ", rigt");
        await Expect(Button("Change to right")).ToBeVisibleAsync();
        var clicked = new TaskCompletionSource();
        await Page.RouteAsync("**/see", async route =>
        {
            await clicked.Task;
            await route.ContinueAsync();
        });
        await Page.Keyboard.TypeAsync("h");
        await Button("Change to right").ClickAsync();
        clicked.SetResult();
        await Expect(Text).ToContainTextAsync("2 mm, right");
    }

    [Fact]
    public async Task A_fix_by_a_button_can_be_undone()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings).ToContainTextAsync("rigth");
        await Button("Change to right").ClickAsync();
        await Expect(Findings).ToHaveCountAsync(0);
        await Button("Undo").ClickAsync();
        await Expect(Findings).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_finding_leads_to_its_line()
    {
        await TypeAt(9, ", rigth 1/4");
        await GoToLine(1);
        await Button("Line 9").ClickAsync();
        await Expect(Page.Locator(".cm-activeLine")).ToContainTextAsync("lamp: star");
    }

    [Fact]
    public async Task A_finding_in_another_file_leads_to_that_file()
    {
        Write("watch.card", Card.Replace("top 1/2", "tpo 1/2", StringComparison.Ordinal));
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await Findings.GetByRole(AriaRole.Button, new() { NameRegex = new("watch.card, line 7") }).First.ClickAsync();
        await Expect(Page.Locator("#file")).ToHaveValueAsync("watch.card");
        await Expect(Page.Locator(".cm-activeLine")).ToContainTextAsync("sky: panel");
    }

    [Fact]
    public async Task A_click_on_a_piece_marks_its_line()
    {
        await Page.Locator(".picture svg g:has(> title:text-matches('star'))").First.ClickAsync();
        await Expect(Page.Locator(".cm-marked")).ToContainTextAsync("lamp: star");
    }

    [Fact]
    public async Task The_piece_of_the_line_with_the_caret_is_marked()
    {
        await Expect(Page.Locator(".picture .marked")).ToHaveCountAsync(0);
        await GoToLine(9);
        await Expect(Page.Locator(".picture .marked").First).ToBeVisibleAsync();
        var star = (await Page.Locator(".picture svg g:has(> title:text-matches('star'))").First.BoundingBoxAsync())!;
        var mark = (await Page.Locator(".picture .marked").First.BoundingBoxAsync())!;
        Assert.True(mark.X <= star.X + star.Width / 2
            && mark.X + mark.Width >= star.X + star.Width / 2, $"{mark.X} + {mark.Width}, {star.X} + {star.Width}");
    }

    [Fact]
    public async Task Pieces_can_be_reached_in_a_list()
    {
        await Page.Locator("summary").First.ClickAsync();
        await Page.Locator(".pieces ol button", new() { HasText = "star" }).ClickAsync();
        await Expect(Page.Locator(".cm-marked")).ToContainTextAsync("lamp: star");
    }

    [Fact]
    public async Task In_a_stash_the_words_of_a_stash_are_offered()
    {
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await Expect(Text).ToContainTextAsync("Museum shelf");
        await TypeAt(8, "\npa");
        await Expect(Page.Locator(".cm-tooltip-autocomplete li")).ToHaveTextAsync(["paper"]);
    }

    [Fact]
    public async Task Each_kind_of_lettering_is_offered_in_its_own_letters()
    {
        await TypeAt(10, "\nlettering s");
        await Expect(Page.Locator(".cm-tooltip-autocomplete li")).ToHaveTextAsync(["script", "serif", "slab", "stencil"]);
        await Expect(Page.Locator(".cm-tooltip-autocomplete li .cm-sample path")).ToHaveCountAsync(4);
        var letters = await Page.Locator(".cm-tooltip-autocomplete li .cm-sample path").EvaluateAllAsync<string[]>(
            "paths => paths.map(path => path.getAttribute('d'))");
        Assert.Equal(4, letters.Distinct().Count());
    }

    [Fact]
    public async Task All_kinds_of_lettering_are_offered_before_a_letter_is_typed()
    {
        await TypeAt(10, "\nlettering ");
        await Expect(Page.Locator(".cm-tooltip-autocomplete li .cm-sample path")).ToHaveCountAsync(11);
    }

    [Theory]
    [InlineData("base ", "A2")]
    [InlineData("dot 1/8, below ", "lamp")]
    public async Task A_size_and_a_name_are_offered_and_taken_with_Enter(string typed, string offer)
    {
        await TypeAt(13, typed);
        await Expect(Page.Locator(".cm-tooltip-autocomplete li", new() { HasTextRegex = new($"^{offer}$") })).ToBeVisibleAsync();
        // A list that has just opened takes no keys yet. At the end of the text the caret then stays, and so does the list.
        var chosen = Page.Locator(".cm-tooltip-autocomplete li[aria-selected]");
        for (var presses = 0; presses < 200 && !(await chosen.AllTextContentsAsync()).Contains(offer); presses++)
        {
            await Page.Keyboard.PressAsync("ArrowDown");
        }

        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".cm-activeLine")).ToHaveTextAsync(typed + offer);
    }

    [Fact]
    public async Task Enter_takes_the_word_that_is_begun()
    {
        await TypeAt(13, "dot 1/8, below la");
        await Expect(Page.Locator(".cm-tooltip-autocomplete li[aria-selected]")).ToHaveTextAsync("lamp");
        // A list that has just opened takes no keys yet.
        await Page.Clock.SetSystemTimeAsync(DateTime.UtcNow.AddSeconds(1));
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".cm-activeLine")).ToHaveTextAsync("dot 1/8, below lamp");
    }

    [Fact]
    public async Task Enter_after_a_complete_word_begins_a_new_line()
    {
        await TypeAt(13, "dot 1/8, below lamp");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".cm-activeLine")).ToHaveTextAsync("");
    }

    [Fact]
    public async Task Tidying_formats_the_text()
    {
        await TypeAt(10, "\n     heart 3/4 upper right 1/4,of red");
        await Button("Tidy the text").ClickAsync();
        await Expect(Text).ToContainTextAsync("heart 3/4, upper right 1/4, of red");
    }

    [Fact]
    public async Task Undo_and_redo_step_through_typing()
    {
        await TypeAt(10, "\nheart 3/4, upper right 1/4, of red");
        await Expect(Title("heart")).ToHaveCountAsync(1);
        while (await State.TextContentAsync() != "Saved")
        {
            await Button("Undo").ClickAsync();
        }

        await Expect(Title("heart")).ToHaveCountAsync(0);
        Assert.Equal(Card, await TextOf(Page));
        await Button("Redo").ClickAsync();
        await Expect(State).ToHaveTextAsync("Not saved");
    }

    [Fact]
    public async Task Typing_works_in_a_card_of_two_hundred_pieces()
    {
        await TypeAll(Card + string.Concat(
            Enumerable.Range(0, 190).Select(i => $"  circle 1/16, left {i % 19} mm, top {i / 19} mm, of red\n")));
        await Expect(Title("circle")).ToHaveCountAsync(190);
        await TypeAt(1, " ");
        await Expect(State).ToHaveTextAsync("Not saved");
    }
}
