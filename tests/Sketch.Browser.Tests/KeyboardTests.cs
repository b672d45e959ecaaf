using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Everything can be done without a mouse.</summary>
public sealed class KeyboardTests(Browsers browsers) : OnPage(browsers)
{
    private const string Describe = """
        () => {
          const at = document.activeElement;
          return at === document.body ? '' : at.id || at.getAttribute('aria-label')
              || at.textContent.trim().slice(0, 40) || at.value || at.tagName;
        }
        """;

    /// <summary>All controls that Tab reaches from the top of the page until it returns to the top.</summary>
    private async Task<List<string>> Reached(Func<Task>? atEach = null)
    {
        // Forward and back, because a focus set by a script is not always shown.
        await Page.Locator(".skip").FocusAsync();
        await Page.Keyboard.PressAsync("Tab");
        await Page.Keyboard.PressAsync("Shift+Tab");
        var reached = new List<string>();
        for (var name = await Page.EvaluateAsync<string>(Describe); reached.Count < 200; name = await Page.EvaluateAsync<string>(Describe))
        {
            if (name.Length == 0 || name == reached.FirstOrDefault())
            {
                return reached;
            }

            reached.Add(name);
            if (atEach is not null)
            {
                await atEach();
            }

            await Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"Tab never comes round: {string.Join(", ", reached.TakeLast(12))}");
        return reached;
    }

    /// <summary>The visible, enabled controls; of a row of tabs or radio buttons only the selected one.</summary>
    private Task<string[]> Controls() => Page.EvaluateAsync<string[]>("""
        () => [...document.querySelectorAll('a[href], button, select, input, textarea, summary, [contenteditable=true]')]
          .filter((c) => !c.disabled && c.tabIndex >= 0 && c.checkVisibility() && !(c.type === 'radio' && !c.checked))
          .map((at) => at.id || at.getAttribute('aria-label') || at.textContent.trim().slice(0, 40) || at.value || at.tagName)
        """);

    [Theory]
    [InlineData("Picture")]
    [InlineData("Papers")]
    [InlineData("Sizes")]
    [InlineData("Templates")]
    public async Task Tab_reaches_every_control_and_leaves_the_editor(string tab)
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings.First).ToContainTextAsync("rigth");
        await Page.Keyboard.PressAsync("Escape");
        await OpenTab(tab);
        if (tab == "Papers")
        {
            await Expect(Button("Keep in the batch")).ToBeDisabledAsync();
        }

        var controls = await Controls();
        Assert.Empty(controls.Except(await Reached()));
    }

    [Fact]
    public async Task Shift_Tab_leaves_the_editor_too()
    {
        await Text.FocusAsync();
        await Page.Keyboard.PressAsync("Shift+Tab");
        await Expect(Text).Not.ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_focus_is_always_visible()
    {
        await OpenTab("Papers");
        var unseen = new List<string>();
        await Reached(async () =>
        {
            var seen = await Page.EvaluateAsync<bool>("""
                async () => {
                  const at = document.activeElement;
                  const drawn = (style) => style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
                  const editor = at.closest('.cm-editor');
                  const isSeen = () => {
                    const frame = editor && getComputedStyle(editor, '::after');
                    const box = at.getBoundingClientRect();
                    return (drawn(getComputedStyle(at)) || Boolean(frame && parseFloat(frame.borderTopWidth) >= 2))
                      && box.width > 0 && box.bottom > 0 && box.top < innerHeight && box.right > 0;
                  };
                  // The editor draws its frame a moment later.
                  for (const until = performance.now() + 2000; !isSeen() && performance.now() < until;)
                      await new Promise(requestAnimationFrame);
                  return isSeen();
                }
                """);
            if (!seen)
            {
                unseen.Add(await Page.EvaluateAsync<string>(Describe));
            }
        });
        Assert.Empty(unseen);
    }

    [Fact]
    public async Task The_first_Tab_offers_to_skip_to_the_text()
    {
        await Page.Keyboard.PressAsync("Tab");
        await Page.Keyboard.PressAsync("Enter");
        await Page.Keyboard.PressAsync("Tab");
        await Expect(Text).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Arrow_keys_move_through_the_tabs()
    {
        await Page.GetByRole(AriaRole.Tab, new() { Name = "Picture" }).FocusAsync();
        await Page.Keyboard.PressAsync("ArrowRight");
        await Expect(Page.GetByRole(AriaRole.Tab, new() { Name = "Papers" })).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("End");
        await Expect(Page.GetByRole(AriaRole.Tab, new() { Name = "What you can write" })).ToHaveAttributeAsync("aria-selected", "true");
        await Page.Keyboard.PressAsync("ArrowRight");
        await Expect(Page.GetByRole(AriaRole.Tab, new() { Name = "Picture" })).ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_paper_is_chosen_by_keyboard_and_keeps_the_focus()
    {
        await OpenTab("Papers");
        var paper = Page.Locator("#panel-papers .swatch", new() { HasText = "picnic, front" });
        await paper.FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(paper).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(paper).ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_role_is_chosen_by_keyboard()
    {
        await OpenTab("Papers");
        await Page.Locator("#panel-papers input[value=sky]").FocusAsync();
        await Page.Keyboard.PressAsync("ArrowDown");
        await Expect(Page.Locator("#panel-papers input[value=deep]")).ToBeCheckedAsync();
        await Expect(Page.Locator("#panel-papers input[value=deep]")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Fixing_a_finding_does_not_lose_the_focus()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings.First).ToContainTextAsync("rigth");
        await Button("Change to right").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Findings).ToHaveCountAsync(0);
        Assert.NotEqual("", await Page.EvaluateAsync<string>(Describe));
    }

    [Fact]
    public async Task The_link_of_a_finding_moves_the_focus_to_its_line()
    {
        await TypeAt(9, ", rigth 1/4");
        await Button("Line 9").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Text).ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_explanation_of_a_finding_opens_and_closes()
    {
        await TypeAt(9, ", rigth 1/4");
        await Expect(Findings.First).ToContainTextAsync("rigth");
        await Page.Keyboard.PressAsync("F8");
        await Expect(Page.Locator(".cm-tooltip")).ToBeVisibleAsync();
        await Page.Locator("#file").FocusAsync();
        await Expect(Page.Locator(".cm-tooltip")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Arrow_keys_move_through_the_papers()
    {
        await OpenTab("Papers");
        await Expect(Page.Locator("#panel-papers .swatch")).ToHaveCountAsync(10);
        await Page.Locator("#panel-papers .swatch").First.FocusAsync();
        await Page.Keyboard.PressAsync("End");
        await Expect(Page.Locator("#panel-papers .swatch").Last).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("ArrowLeft");
        await Expect(Page.Locator("#panel-papers .swatch").Nth(8)).ToBeFocusedAsync();
    }

    [Theory]
    [InlineData("Show the card in many papers")]
    [InlineData("Keep in the card")]
    [InlineData("Keep in the batch")]
    [InlineData("Reset to the card’s own papers")]
    public async Task A_button_of_the_Papers_tab_keeps_the_focus(string name)
    {
        await OpenTab("Papers");
        await Page.Locator("#panel-papers .swatch", new() { HasText = "picnic, front" }).ClickAsync();
        await Expect(Button("Keep in the card")).ToBeEnabledAsync();
        await Button(name).FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(name.StartsWith("Show", StringComparison.Ordinal)
            ? Page.Locator(".variant").First : Button("Keep in the card")).ToBeVisibleAsync();
        await Expect(Button(name)).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Planning_the_sheets_does_not_lose_the_focus()
    {
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await Button("Plan the sheets").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.GetByText("Done.")).ToBeVisibleAsync();
        await Expect(Button("Plan the sheets")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task An_answered_question_returns_the_focus()
    {
        await TypeAt(1, " # mine");
        Write("watch.card", Card + "# theirs\n");
        await Button("Keep my text").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator(".notice")).ToHaveCountAsync(0);
        await Expect(Text).ToBeFocusedAsync();
    }

    [Theory]
    [InlineData("Control+z", "rigth")]
    [InlineData("Control+y", "right")]
    public async Task Undo_and_redo_work_outside_the_text_too(string last, string expected)
    {
        await TypeAt(9, ", rigth 1/4");
        await Button("Change to right").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Text).ToContainTextAsync("right 1/4");
        await Page.Keyboard.PressAsync("Control+z");
        await Expect(Text).ToContainTextAsync("rigth 1/4");
        await Expect(Button("Change to right")).ToBeVisibleAsync();
        if (last != "Control+z")
        {
            await Page.Keyboard.PressAsync(last);
        }

        await Expect(Text).ToContainTextAsync($"{expected} 1/4");
    }

    [Fact]
    public async Task A_dialog_traps_the_focus_and_returns_it()
    {
        await Button("New file…").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        for (var i = 0; i < 8; i++)
        {
            Assert.True(await Page.EvaluateAsync<bool>(
                "() => document.activeElement === document.body || document.activeElement.closest('dialog') !== null"));
            await Page.Keyboard.PressAsync("Tab");
        }

        await Page.Keyboard.PressAsync("Escape");
        await Expect(Button("New file…")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Enter_creates_a_new_file()
    {
        await Button("New file…").FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Page.Keyboard.PressAsync("Control+A");
        await Page.Keyboard.TypeAsync("porthole.card");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.Locator("#file")).ToHaveValueAsync("porthole.card");
        await Expect(Text).ToBeFocusedAsync();
    }
}
