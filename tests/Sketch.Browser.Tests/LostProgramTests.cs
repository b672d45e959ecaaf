using System.Diagnostics;
using Microsoft.Playwright;
using Sketch.Preview.Server;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>The page says when the program does not respond, keeps typing in the meantime, and continues when it responds again.</summary>
public sealed class LostProgramTests(Browsers browsers) : OnPage(browsers)
{
    private const string Lost = "Sketch does not answer";
    private const string LostTyping = "Not saved: Sketch does not answer";

    private ILocator Notice => Page.Locator(".notice");

    [Fact]
    public async Task A_program_that_ends_is_noticed_without_typing_and_the_toolbar_stays_one_row()
    {
        await Expect(State).ToHaveTextAsync("Saved");
        await EndServer();
        await Expect(State).ToHaveTextAsync(Lost);
        await Expect(Notice).ToContainTextAsync("Sketch does not answer");
        var (first, last) = (await Button("New card…").BoundingBoxAsync(), await Button("Save").BoundingBoxAsync());
        Assert.Equal(first!.Y, last!.Y);
        Assert.True(last.X + last.Width <= Page.ViewportSize!.Width, "Save lies beyond the window.");
    }

    [Fact]
    public async Task A_program_that_stops_responding_is_noticed_without_typing_and_found_again()
    {
        var isSilent = false;
        await Profile.RouteWebSocketAsync("**/news?*", page => page.ConnectToServer().OnMessage(message =>
        {
            if (!isSilent)
            {
                page.Send(message.Text!);
            }
        }));
        await Page.ReloadAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        isSilent = true;
        await Expect(State).ToHaveTextAsync(Lost);
        isSilent = false;
        await Expect(State).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task Typing_without_the_program_is_kept_by_the_next_one_at_the_same_address()
    {
        await EndServer();
        await Expect(State).ToHaveTextAsync(Lost);
        await TypeAt(1, " # mine");
        await Expect(State).ToHaveTextAsync(LostTyping);
        await StartServerAgain();
        await Expect(State).ToHaveTextAsync("Not saved");
        await Expect(Notice).ToHaveCountAsync(0);
        await Until(() => Drafts().Any(d => d.Contains("# mine", StringComparison.Ordinal)));
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");
        Assert.Contains("# mine", Read("watch.card"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_saved_in_the_meantime_is_shown_when_the_program_is_back()
    {
        await EndServer();
        await Expect(State).ToHaveTextAsync(Lost);
        Write("watch.card", Card + "# by another hand\n");
        await StartServerAgain();
        await Expect(Text).ToContainTextAsync("# by another hand");
        await Expect(State).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_broken_connection_is_restored()
    {
        IWebSocketRoute? line = null;
        await Profile.RouteWebSocketAsync("**/news?*", page =>
        {
            line = page;
            page.ConnectToServer();
        });
        await Page.ReloadAsync();
        await Expect(Picture.First).ToBeVisibleAsync();
        await line!.CloseAsync();
        Write("watch.card", Card + "# by another hand\n");
        await Expect(Text).ToContainTextAsync("# by another hand");
        await Expect(State).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_file_with_typing_that_was_not_sent_stays_open()
    {
        await LoadWithoutSocket();
        // The other file still loads, as if the program ended a moment later.
        await Page.RouteAsync("**/see", route => route.AbortAsync());
        await Page.RouteAsync("**/typed", route => route.AbortAsync());
        await TypeAt(1, " # mine");
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await Expect(Page.Locator("#file")).ToHaveValueAsync("watch.card");
        await Expect(Text).ToContainTextAsync("# mine");
    }

    [Fact]
    public async Task A_program_restarted_at_another_address_does_not_mean_that_the_file_is_deleted()
    {
        await EndServer();
        await Expect(State).ToHaveTextAsync(Lost);
        await using (await PageServer.Start(Folder, "watch.card", Address.Port))
        {
            await TypeAt(1, " # mine");
            await Button("Save").ClickAsync();
            await Expect(Notice).ToHaveCountAsync(1);
            await Expect(Notice).ToContainTextAsync("Sketch does not answer");
            await Expect(State).ToHaveTextAsync(LostTyping);
        }
    }

    [Fact]
    public async Task Leaving_asks_while_typing_was_not_sent()
    {
        await EndServer();
        await Expect(State).ToHaveTextAsync(Lost);
        await TypeAt(1, " # mine");
        await Expect(State).ToHaveTextAsync(LostTyping);
        Assert.True(await LeavingAsks());
    }

    [Fact]
    public async Task A_suspended_program_is_noticed_and_continues()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signals.");
        string[] arguments = [typeof(Sketch.Cli.Program).Assembly.Location, "open", Folder, "--no-browser"];
        using var program = Process.Start(new ProcessStartInfo("dotnet", arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        try
        {
            var printed = await program.StandardOutput.ReadLineAsync(Stop) ?? "";
            await Page.CloseAsync();
            await using var profile = await Page.Context.Browser!.NewContextAsync();
            var page = await profile.NewPageAsync();
            await page.GotoAsync($"{printed[printed.IndexOf("http", StringComparison.Ordinal)..]}#watch.card");
            var state = page.Locator("#state");
            await Expect(PictureOf(page).First).ToBeVisibleAsync();
            await Signal(program, "STOP");
            await Expect(state).ToHaveTextAsync(Lost);
            await page.Locator(".cm-line").First.ClickAsync();
            await page.Keyboard.PressAsync("End");
            await page.Keyboard.TypeAsync(" # mine");
            await Expect(state).ToHaveTextAsync(LostTyping);
            await Signal(program, "CONT");
            await Expect(state).ToHaveTextAsync("Not saved");
            await Until(() => Drafts().Any(d => d.Contains("# mine", StringComparison.Ordinal)));
        }
        finally
        {
            program.Kill();
            await program.WaitForExitAsync(CancellationToken.None);
        }
    }

    private static async Task Signal(Process program, string signal)
    {
        using var kill = Process.Start("kill", [$"-{signal}", $"{program.Id}"]);
        await kill.WaitForExitAsync(Stop);
    }
}
