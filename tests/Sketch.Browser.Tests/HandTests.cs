using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>A piece is changed in the picture, and the text says so.</summary>
public sealed class HandTests(Browsers browsers) : OnPage(browsers)
{
    private const string Words = "words: strip 3 1/2 x 1/2 \"Keep the light\", bottom 1/4, of cream";

    private ILocator Strip => Page.Locator(".picture svg g:has(> title:text-matches('strip'))").First;

    private ILocator Stage => Page.Locator(".stage").First;

    private ILocator Spoken => Page.Locator(".spoken");

    private ILocator Form => Page.GetByRole(AriaRole.Region, new() { Name = "The chosen piece" });

    [Fact]
    public async Task Arrow_keys_move_the_chosen_piece_and_one_undo_takes_each_back()
    {
        await Choose();
        await Page.Keyboard.PressAsync("ArrowUp");
        await Expect(Text).ToContainTextAsync("bottom 5/16, of cream");
        await Expect(Spoken).ToHaveTextAsync("words: in the middle from left to right, 5/16 in from the bottom.");
        await Page.Keyboard.PressAsync("Shift+ArrowUp");
        await Expect(Text).ToContainTextAsync("bottom 9/16, of cream");
        await Page.Keyboard.PressAsync("Control+ArrowLeft");
        await Expect(Text).ToContainTextAsync("strip 3 7/16 x 1/2");
        for (var times = 0; times < 3; times++)
        {
            await Page.Keyboard.PressAsync("Control+Z");
        }

        await Expect(Text).ToContainTextAsync(Words);
        Assert.Equal(Card.TrimEnd(), (await TextOf(Page)).TrimEnd());
    }

    [Fact]
    public async Task A_drag_moves_the_picture_at_once_and_writes_one_distance()
    {
        await Choose();
        var box = (await Strip.BoundingBoxAsync())!;
        var pixels = (await Picture.First.BoundingBoxAsync())!.Width / 4.25f;
        await Page.Mouse.MoveAsync(box.X + 20, box.Y + box.Height / 2);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(box.X + 20, box.Y + box.Height / 2 - pixels * 0.3f);
        Assert.NotEqual("", await Strip.EvaluateAsync<string>("group => group.style.translate"));
        await Expect(Page.Locator(".overlay .length").First).ToBeVisibleAsync();
        await Expect(Text).ToContainTextAsync(Words);
        await Page.Mouse.UpAsync();
        await Expect(Text).ToContainTextAsync(new System.Text.RegularExpressions.Regex(
            "strip 3 1/2 x 1/2 \"Keep the light\", bottom (1/2|9/16|5/8), of cream"));
        await Button("Undo").ClickAsync();
        await Expect(Text).ToContainTextAsync(Words);
    }

    [Fact]
    public async Task A_handle_changes_the_size()
    {
        await Choose();
        var grip = (await Page.Locator(".overlay .grip[data-end='1 0']").BoundingBoxAsync())!;
        var pixels = (await Picture.First.BoundingBoxAsync())!.Width / 4.25f;
        await Page.Mouse.MoveAsync(grip.X + grip.Width / 2, grip.Y + grip.Height / 2);
        await Page.Mouse.DownAsync();
        await Page.Keyboard.DownAsync("Alt");
        await Page.Mouse.MoveAsync(grip.X + grip.Width / 2 - pixels * 0.5f, grip.Y + grip.Height / 2);
        await Page.Mouse.UpAsync();
        await Page.Keyboard.UpAsync("Alt");
        // Centred, so it becomes smaller on both sides.
        await Expect(Text).ToContainTextAsync("words: strip 2 1/2 x 1/2");
    }

    [Fact]
    public async Task The_form_writes_into_the_line_of_the_piece()
    {
        await Choose();
        await Form.GetByLabel("Height", new() { Exact = true }).FillAsync("5/8");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Text).ToContainTextAsync("strip 3 1/2 x 5/8");
        await Form.GetByLabel("Words, one line each").FillAsync("Mind the rocks");
        await Form.GetByLabel("Words, one line each").BlurAsync();
        await Expect(Text).ToContainTextAsync("\"Mind the rocks\"");
        await Form.GetByText("Paper: cream").ClickAsync();
        await Form.GetByRole(AriaRole.Button, new() { Name = "deep" }).ClickAsync();
        await Expect(Text).ToContainTextAsync("bottom 1/4, of deep");
    }

    [Fact]
    public async Task What_cannot_be_resized_says_why_and_offers_to_let_go()
    {
        await TypeAll(Card.Replace("panel 3 x 4, top 1/2", "panel, showing 1/4", StringComparison.Ordinal));
        await Expect(Page.Locator(".picture svg title", new() { HasText = "sky: panel, 3 5/8" })).ToHaveCountAsync(1);
        await Stage.FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Form).ToContainTextAsync("Its size follows from what shows round it.");
        await Form.GetByRole(AriaRole.Button, new() { Name = "Give it a width of its own" }).First.ClickAsync();
        await Expect(Text).ToContainTextAsync("sky: panel 3 5/8 x 4 7/8, of sky");
    }

    [Fact]
    public async Task A_finger_moves_the_chosen_piece()
    {
        await Choose();
        var drag = await Page.EvaluateAsync<bool>("""
            () => {
              const stage = document.querySelector('.stage');
              const piece = stage.querySelector('.picture').shadowRoot.getElementById('front-words');
              const box = piece.getBoundingClientRect();
              const inch = stage.getBoundingClientRect().width / 4.25;
              const touch = (type, y) => piece.dispatchEvent(new PointerEvent(type, {
                pointerId: 7, pointerType: 'touch', isPrimary: true, button: 0, bubbles: true, composed: true, cancelable: true,
                clientX: box.left + 9, clientY: box.top + 9 + y }));
              stage.setPointerCapture = () => {};
              touch('pointerdown', 0);
              touch('pointermove', -inch / 2);
              touch('pointerup', -inch / 2);
              return getComputedStyle(stage).touchAction === 'none';
            }
            """);
        Assert.True(drag);
        await Expect(Text).ToContainTextAsync(new System.Text.RegularExpressions.Regex("bottom (11/16|3/4|13/16), of cream"));
    }

    [Fact]
    public async Task A_program_that_stops_in_mid_drag_leaves_text_and_picture_as_they_were()
    {
        await Choose();
        var box = (await Strip.BoundingBoxAsync())!;
        await Page.Mouse.MoveAsync(box.X + 20, box.Y + box.Height / 2);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(box.X + 20, box.Y - 60);
        await EndServer();
        await Page.Mouse.UpAsync();
        await Expect(Page.Locator(".notice")).ToContainTextAsync("Sketch does not answer");
        await Expect(Text).ToContainTextAsync(Words);
        Assert.Equal("", await Strip.EvaluateAsync<string>("group => group.style.translate"));
    }

    [Fact]
    public async Task Tab_goes_through_the_pieces_and_Escape_lets_go()
    {
        await Stage.FocusAsync();
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Spoken).ToContainTextAsync("sky: panel");
        await Page.Keyboard.PressAsync("Tab");
        await Expect(Spoken).ToContainTextAsync("lamp: star");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Form.GetByLabel("Width")).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("Escape");
        await Expect(Stage).ToBeFocusedAsync();
        await Page.Keyboard.PressAsync("Escape");
        await Expect(Page.Locator(".overlay .frame")).ToHaveCountAsync(0);
        await Expect(Stage).ToBeFocusedAsync();
    }

    private async Task Choose()
    {
        await Strip.ClickAsync(new() { Position = new() { X = 10, Y = 8 } });
        await Expect(Form).ToContainTextAsync("words: strip");
        await Expect(Page.Locator(".overlay .frame").First).ToBeAttachedAsync();
    }
}
