using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Sketch.Browser.Tests;

/// <summary>A stash or batch is changed by its tables, and the text says so.</summary>
public sealed class TableTests(Browsers browsers) : OnPage(browsers)
{
    [Fact]
    public async Task Cells_and_rows_are_written_into_the_text_and_each_undo_takes_one_back()
    {
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        await OpenTab("Table");
        var before = Read("museum.stash").TrimEnd('\n');
        await Field("On hand, gulls").FillAsync("7");
        await Page.Keyboard.PressAsync("Tab");
        await Expect(Field("On hand, gulls")).ToHaveValueAsync("7 sheets");
        await Expect(Text).ToContainTextAsync("paper gulls: 12 x 12, 7 sheets, front");
        var changed = (await TextOf(Page)).TrimEnd('\n');

        await Field("Name, new paper").FillAsync("rope");
        await Field("Sheet, new paper").FillAsync("12 x 12");
        await Field("On hand, new paper").FillAsync("2");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Field("Name, rope")).ToHaveValueAsync("rope");
        await Expect(Field("Name, new paper")).ToBeFocusedAsync();
        Assert.Contains("\npaper rope: 12 x 12, 2 sheets\n", await TextOf(Page), StringComparison.Ordinal);

        await Button("Delete: night").ClickAsync();
        await Expect(Field("Name, night")).ToHaveCountAsync(0);
        await Button("Undo").ClickAsync();
        await Button("Undo").ClickAsync();
        await Expect(Field("Name, rope")).ToHaveCountAsync(0);
        Assert.Equal(changed, (await TextOf(Page)).TrimEnd('\n'));
        await Button("Undo").ClickAsync();
        await Expect(Field("On hand, gulls")).ToHaveValueAsync("3 sheets");
        Assert.Equal(before, (await TextOf(Page)).TrimEnd('\n'));
    }

    [Fact]
    public async Task What_is_refused_stays_to_be_changed_beside_its_reason()
    {
        await Page.Locator("#file").SelectOptionAsync("lamp-day.batch");
        await OpenTab("Table");
        var before = await TextOf(Page);
        await Field("Cards, Cliff ward").FillAsync("twelve");
        await Page.Keyboard.PressAsync("Enter");
        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("The number of cards for \"Cliff ward\" is missing.");
        await Expect(Field("Cards, Cliff ward")).ToHaveValueAsync("twelve");
        Assert.Equal(before, await TextOf(Page));
        await Page.Keyboard.PressAsync("Escape");
        await Expect(Field("Cards, Cliff ward")).ToHaveValueAsync("12");
        await Expect(Page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_scan_dropped_onto_the_shelf_becomes_a_paper_that_a_drag_puts_onto_a_piece()
    {
        await Page.Locator("#file").SelectOptionAsync("museum.stash");
        var files = await Page.EvaluateHandleAsync("""
            async () => {
              const canvas = new OffscreenCanvas(300, 300);
              canvas.getContext('2d').fillRect(0, 0, 150, 300);
              const picture = new File([await canvas.convertToBlob({ type: 'image/png' })], 'Lamp room.png', { type: 'image/png' });
              const files = new DataTransfer();
              files.items.add(picture);
              return files;
            }
            """);
        await Page.Locator("#panel-stash .swatches").DispatchEventAsync("drop", new { dataTransfer = files });
        await Expect(Field("Name of the paper")).ToHaveValueAsync("lamp-room");
        await Field("Size of a sheet").FillAsync("leter");
        await Button("Add to the stash").ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("There is no sheet called leter.");
        await Field("Size of a sheet").FillAsync("letter");
        await Button("Add to the stash").ClickAsync();
        await Expect(Page.Locator(".notice")).ToContainTextAsync("Its picture is the file Lamp room.png.");
        await Expect(Text).ToContainTextAsync("paper lamp-room: letter, 1 sheet, front \"Lamp room.png\"");
        await Button("Save").ClickAsync();
        await Expect(State).ToHaveTextAsync("Saved");

        await Page.Locator("#file").SelectOptionAsync("watch.card");
        await OpenTab("Papers");
        var swatch = Page.GetByRole(AriaRole.Button, new() { Name = "lamp-room, front" });
        await swatch.DragToAsync(Page.Locator(".trial g:has(> title:text-matches('strip'))").First);
        await Expect(Text).ToContainTextAsync("\"Keep the light\", bottom 1/4, of lamp-room");
        await Button("Undo").ClickAsync();
        Assert.Equal(Card, await TextOf(Page));
    }
}
