using System.Collections.Concurrent;
using Sketch.Preview.Folder;
using Sketch.Tests.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>The page is notified of changes that other programs make in the folder. Each name is such a change.</summary>
public sealed class WatchTests : IAsyncLifetime
{
    private readonly TemporaryFolder _around = new();
    private readonly ConcurrentQueue<string> _reported = new();
    private FolderWatch? _watch;

    private string At(string name) => _around.At($"cards/{name}");

    public ValueTask InitializeAsync()
    {
        _around.Write("cards/lamp.card", "# a\n");
        _around.Write("cards/day/sky.card", "# a\n");
        _watch = new(new(_around.At("cards")), _reported.Enqueue);
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await _watch!.DisposeAsync();
        _around.Dispose();
    }

    private Task Reported(string name) => OpenedPage.Until(() => _reported.Contains(name));

    [Theory]
    [InlineData("# ab\n")]
    [InlineData("# b\n")]
    public async Task A_file_written_even_with_the_same_length(string text)
    {
        _around.Write("cards/lamp.card", text);
        await Reported("lamp.card");
    }

    [Fact]
    public async Task A_file_replaced_by_an_older_one()
    {
        File.SetLastWriteTimeUtc(_around.Write("old", "# b\n"), DateTime.UnixEpoch);
        File.Move(_around.At("old"), At("lamp.card"), overwrite: true);
        await Reported("lamp.card");
    }

    [Fact]
    public async Task A_new_file_in_a_new_folder()
    {
        _around.Write("cards/new/new.card", "");
        await Reported("new/new.card");
    }

    [Fact]
    public async Task A_deleted_file()
    {
        File.Delete(At("lamp.card"));
        await Reported("lamp.card");
    }

    [Fact]
    public async Task Both_names_of_a_renamed_file()
    {
        File.Move(At("lamp.card"), At("light.card"));
        await Reported("lamp.card");
        await Reported("light.card");
    }

    [Fact]
    public async Task A_renamed_folder()
    {
        Directory.Move(At("day"), At("night"));
        await Reported("day/sky.card");
        await Reported("night/sky.card");
    }

    [Fact]
    public async Task No_hidden_file()
    {
        _around.Write("cards/.sketch/drafts/a.json", "");
        _around.Write("cards/.hidden.card", "");
        _around.Write("cards/seen.card", "");
        await Reported("seen.card");
        Assert.Equal(["seen.card"], _reported);
    }

    [Fact]
    public async Task The_files_of_an_opened_folder_that_disappears_and_comes_back_and_later_writes()
    {
        Directory.Move(_around.At("cards"), _around.At("elsewhere"));
        await Reported("lamp.card");
        Directory.Move(_around.At("elsewhere"), _around.At("cards"));
        await OpenedPage.Until(() => _reported.Count(n => n == "lamp.card") >= 2);
        _around.Write("cards/later.card", "");
        await Reported("later.card");
    }

    [Fact]
    public async Task The_opened_folder_deleted_and_created_again()
    {
        Directory.Delete(_around.At("cards"), recursive: true);
        _around.Write("cards/later.card", "");
        await Reported("later.card");
        _around.Write("cards/later.card", "# more\n");
        await OpenedPage.Until(() => _reported.Count(n => n == "later.card") >= 2);
    }
}
