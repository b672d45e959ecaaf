using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>A piece is changed in the picture, and the text says so.</summary>
public sealed class HandTests(Browsers browsers) : OnPage(browsers)
{
    private const string Words = "words: strip 3 1/2 x 1/2 \"Keep the light\", bottom 1/4, of cream";

    protected override BrowserNewContextOptions Setup => new()
    {
        ViewportSize = new() { Width = 1280, Height = 900 },
        HasTouch = true,
    };

    private ILocator Strip => Page.Locator(".picture svg g:has(> title:text-matches('strip'))").First;

    private ILocator Stage => Page.Locator(".stage").First;

    private ILocator Spoken => Page.Locator("#panel-picture .spoken");

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
        await Expect(Text).ToContainTextAsync(new Regex(
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
    public async Task What_is_typed_in_the_form_outlasts_the_answer_to_the_change_before()
    {
        await Choose();
        await Form.GetByLabel("Height", new() { Exact = true }).FillAsync("5/8");
        await Page.Keyboard.PressAsync("Enter");
        await Form.GetByLabel("Words, one line each").FillAsync("Mind the rocks");
        await Expect(Form.Locator(".piece-line")).ToContainTextAsync("strip 3 1/2 x 5/8");
        await Form.GetByLabel("Words, one line each").BlurAsync();
        await Expect(Text).ToContainTextAsync("\"Mind the rocks\"");
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
        await Expect(Form.Locator(".piece-line")).ToContainTextAsync("Mind the rocks");
        await Form.GetByText("Paper: cream").ClickAsync();
        await Form.GetByRole(AriaRole.Button, new() { Name = "deep" }).ClickAsync();
        await Expect(Text).ToContainTextAsync("bottom 1/4, of deep");
        await Form.GetByRole(AriaRole.Button, new() { Name = "sky" }).DragToAsync(
            Page.Locator(".picture svg g:has(> title:text-matches('star'))").First);
        await Expect(Text).ToContainTextAsync("lamp: star 1 1/2, of sky");
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
    public async Task A_finger_moves_the_chosen_piece_and_the_page_does_not_scroll()
    {
        await Choose();
        await Page.EvaluateAsync("() => scrollTo(0, 20)");
        var scrolled = await Page.EvaluateAsync<double>("() => scrollY");
        var (x, y) = await Middle(Strip);
        var pixels = (await Picture.First.BoundingBoxAsync())!.Width / 4.25f;
        var finger = await Profile.NewCDPSessionAsync(Page);
        await Touch("touchStart", 0);
        for (var step = 1; step <= 5; step++)
        {
            await Touch("touchMove", step);
        }

        await finger.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        await Expect(Text).ToContainTextAsync(new Regex("bottom (11/16|3/4|13/16), of cream"));
        Assert.Equal(scrolled, await Page.EvaluateAsync<double>("() => scrollY"));

        Task Touch(string type, int step) => finger.SendAsync("Input.dispatchTouchEvent", new()
        {
            ["type"] = type,
            ["touchPoints"] = new[] { new { x, y = y - step * pixels / 10 } },
        });
    }

    [Fact]
    public async Task The_turn_handle_turns_in_steps_of_five_degrees_and_back_to_none()
    {
        await Choose();
        await Turn(31);
        await Expect(Text).ToContainTextAsync("of cream, turn right 30");
        await Expect(Form.GetByLabel("Turned, degrees")).ToHaveValueAsync("30");
        await Turn(1);
        await Expect(Text).ToContainTextAsync(new Regex("bottom 1/4, of cream\\s*inside"));
    }

    [Fact]
    public async Task Two_windows_that_drag_at_once_keep_both_texts()
    {
        var other = await Window();
        await Choose();
        var star = PictureOf(other).Locator("g:has(> title:text-matches('star'))").First;
        await star.ClickAsync();
        await Expect(other.GetByRole(AriaRole.Region, new() { Name = "The chosen piece" })).ToContainTextAsync("lamp: star");
        var ((x, y), (left, top)) = (await Middle(Strip), await Middle(star));
        await Page.Mouse.MoveAsync(x, y);
        await other.Mouse.MoveAsync(left, top);
        await Page.Mouse.DownAsync();
        await other.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(x, y - 40);
        await other.Mouse.MoveAsync(left, top - 40);
        await other.Mouse.UpAsync();
        await Page.Mouse.UpAsync();
        await Expect(Text).Not.ToContainTextAsync(Words);
        await Expect(other.Locator(".cm-content")).ToContainTextAsync(new Regex("star 1 1/2, [^,]*top"));
        var (mine, theirs) = (await TextOf(Page), await TextOf(other));

        await Button("Save").ClickAsync();
        await Expect(other.Locator(".notice")).ToContainTextAsync("Both texts are kept.");
        Assert.Equal(mine, Read("watch.card"));
        Assert.Equal(theirs, await TextOf(other));
        await other.GetByRole(AriaRole.Button, new() { Name = "Keep my text" }).ClickAsync();
        await other.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Expect(Text).ToContainTextAsync(Words);
        Assert.Equal(theirs, Read("watch.card"));
        Assert.Contains(Directory.GetFiles(Path.Combine(Folder, ".sketch", "earlier"), "*", SearchOption.AllDirectories),
            earlier => File.ReadAllText(earlier) == mine);
    }

    [Fact]
    public async Task A_program_that_is_killed_in_mid_drag_leaves_the_file_whole_and_the_next_one_offers_what_was_unsaved()
    {
        await using var profile = await Profile.Browser!.NewContextAsync(Setup);
        string offered;
        using (var program = Open(out var address))
        {
            Page = await profile.NewPageAsync();
            await Page.GotoAsync($"{await address}#watch.card");
            await Choose();
            await Page.Keyboard.PressAsync("ArrowUp");
            await Expect(Text).ToContainTextAsync("bottom 5/16, of cream");
            await Until(() => Drafts().Any(d => d.Contains("bottom 5/16", StringComparison.Ordinal)));
            offered = await TextOf(Page);
            var (x, y) = await Middle(Strip);
            await Page.Mouse.MoveAsync(x, y);
            await Page.Mouse.DownAsync();
            await Page.Mouse.MoveAsync(x, y - 60);
            program.Kill();
            await program.WaitForExitAsync(Stop);
        }

        await Page.Mouse.UpAsync();
        await Expect(Page.Locator(".notice")).ToContainTextAsync("Sketch does not answer");
        Assert.Equal("", await Strip.EvaluateAsync<string>("group => group.style.translate"));
        Assert.Equal(offered, await TextOf(Page));
        Assert.Equal(Card, Read("watch.card"));

        using (var program = Open(out var address))
        {
            Page = await profile.NewPageAsync();
            await Page.GotoAsync($"{await address}#watch.card");
            await Button("Restore it").ClickAsync();
            Assert.Equal(offered, await TextOf(Page));
            program.Kill();
            await program.WaitForExitAsync(Stop);
        }
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

    /// <summary>Drags the turn handle to that many degrees clockwise.</summary>
    private async Task Turn(double degrees)
    {
        var (x, y) = await Middle(Page.Locator(".overlay .grip[data-turn]"));
        var (left, top) = await Middle(Strip);
        var (reach, angle) = (Math.Sqrt(Math.Pow(x - left, 2) + Math.Pow(y - top, 2)), degrees * Math.PI / 180);
        await Page.Mouse.MoveAsync(x, y);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(left + (float)(reach * Math.Sin(angle)), top - (float)(reach * Math.Cos(angle)), new() { Steps = 4 });
        await Page.Mouse.UpAsync();
    }

    private static async Task<(float X, float Y)> Middle(ILocator part)
    {
        var box = (await part.BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    /// <summary>Starts the program as a process of its own, with the address that it prints.</summary>
    private Process Open(out Task<string> address)
    {
        string[] arguments = [typeof(Sketch.Cli.Program).Assembly.Location, "open", Folder, "--no-browser"];
        var program = Process.Start(new ProcessStartInfo("dotnet", arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        address = Printed();
        return program;

        async Task<string> Printed()
        {
            var line = await program.StandardOutput.ReadLineAsync(Stop) ?? "";
            return line[line.IndexOf("http", StringComparison.Ordinal)..];
        }
    }

    private async Task Choose()
    {
        await Strip.ClickAsync(new() { Position = new() { X = 10, Y = 8 } });
        await Expect(Form).ToContainTextAsync("words: strip");
        await Expect(Page.Locator(".overlay .frame").First).ToBeAttachedAsync();
    }
}
