using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>Tests of everything that a person can see: each tab with content, and each question.</summary>
public abstract class OnEachState(Browsers browsers) : OnPage(browsers)
{
    /// <summary>The names of the states.</summary>
    public static TheoryData<string> States() =>
        ["Picture", "Papers", "Sizes", "Templates", "Stash", "Table", "Sheets", "Count", "batch table", "chosen piece", "moving",
            "findings", "completion", "question", "new card", "putting", "guide", "new file", "new batch", "earlier versions"];

    /// <summary>Brings the page from the newly opened window into a state.</summary>
    protected async Task Show(string state)
    {
        switch (state)
        {
            case "Papers":
                await OpenTab("Papers");
                await Button("Show the card in many papers").ClickAsync();
                await Page.Locator(".variant").First.ClickAsync();
                break;
            case "Stash":
                await Page.Locator("#file").SelectOptionAsync("museum.stash");
                await Expect(Page.Locator("#panel-stash .swatch").First).ToBeVisibleAsync();
                break;
            case "Table":
                await Page.Locator("#file").SelectOptionAsync("museum.stash");
                await OpenTab("Table");
                await Button("More: gulls").ClickAsync();
                await Field("Sheet, gulls").FillAsync("leter");
                await Page.Keyboard.PressAsync("Enter");
                await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("There is no sheet called leter.");
                break;
            case "Sheets":
                await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
                await Button("Plan the sheets").ClickAsync();
                await Expect(Page.Locator(".plan svg").First).ToBeVisibleAsync();
                break;
            case "Count":
                await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
                await OpenTab("Count");
                await Expect(Page.Locator("#panel-count fieldset").First).ToBeVisibleAsync();
                break;
            case "batch table":
                await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
                await OpenTab("Table");
                await Expect(Page.GetByRole(AriaRole.Table, new() { Name = "Loose pieces to cut" })).ToBeVisibleAsync();
                break;
            case "moving":
                await Page.Locator(".stage").First.FocusAsync();
                await Page.Keyboard.PressAsync("Enter");
                await Expect(Page.Locator(".overlay .handle").First).ToBeVisibleAsync();
                var box = (await Page.Locator(".stage").First.BoundingBoxAsync())!;
                await Page.Mouse.MoveAsync(box.X + box.Width * 0.5f, box.Y + box.Height * 0.2f);
                await Page.Mouse.DownAsync();
                await Page.Mouse.MoveAsync(box.X + box.Width * 0.5f, box.Y + box.Height * 0.2f + 12, new() { Steps = 3 });
                await Expect(Page.Locator(".overlay .length").First).ToBeVisibleAsync();
                break;
            case "completion":
                await TypeAt(10, "\nlettering s");
                await Expect(Page.Locator(".cm-tooltip-autocomplete li[aria-selected] .cm-sample path")).ToHaveCountAsync(1);
                break;
            case "chosen piece":
                await Page.Locator(".stage").First.FocusAsync();
                await Page.Keyboard.PressAsync("Enter");
                await Page.GetByText("Paper: sky").ClickAsync();
                break;
            case "findings":
                await TypeAt(9, ", rigth 1/4");
                await TypeAt(8, ", left 3");
                await Page.Keyboard.PressAsync("Escape");
                await Expect(Findings.First).ToContainTextAsync("Line");
                await Page.Locator("summary").First.ClickAsync();
                break;
            case "question":
                await TypeAt(1, " # mine");
                Write("watch.card", Card + "# theirs\n");
                await Expect(Page.Locator(".notice")).ToBeVisibleAsync();
                break;
            case "new card":
                await Button("New card…").ClickAsync();
                await Expect(Page.Locator(".start").First).ToBeVisibleAsync();
                break;
            case "putting":
                await Button("Put something on…").ClickAsync();
                await Button("Heart").ClickAsync();
                await Expect(Button("Put it in the middle")).ToBeFocusedAsync();
                break;
            case "guide":
                await OpenTab("What you can write");
                await Page.GetByLabel("Search").FillAsync("foam");
                break;
            case "new file":
                await Button("New file…").ClickAsync();
                break;
            case "new batch":
                await Button("New file…").ClickAsync();
                await Page.GetByLabel("A batch: which cards, and how many").CheckAsync();
                break;
            case "earlier versions":
                await TypeAt(1, " # mine");
                await Button("Save").ClickAsync();
                await Expect(State).ToHaveTextAsync("Saved");
                await Button("Earlier versions…").ClickAsync();
                await Expect(Page.Locator("#earlier-list")).ToBeVisibleAsync();
                break;
            default:
                await OpenTab(state);
                break;
        }
    }
}
