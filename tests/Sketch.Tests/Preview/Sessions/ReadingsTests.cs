using Sketch.Diagnostics;
using Sketch.Output.Lettering;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Tests.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview.Sessions;

/// <summary>All views of a window share one compilation.</summary>
public sealed class ReadingsTests : IDisposable
{
    private const string Window = "window0000000001";
    private const string Card = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  lamp: panel 2 x 3, of navy\n";

    private readonly TemporaryFolder _folder = new();
    private readonly UnsavedTexts _drafts;
    private readonly OpenWindows _windows;
    private readonly Readings _readings;

    public ReadingsTests()
    {
        _folder.Write("museum.stash", "stash \"Museum\"\ncardstock navy: 12 x 12, 3 sheets\n");
        _folder.Write("lamp.card", Card);
        var folder = new OpenedFolder(_folder.At(""));
        _drafts = new(folder.Own);
        _windows = new(_drafts);
        _readings = new(folder, _windows, new(new FontLibrary([])));
    }

    public void Dispose()
    {
        _drafts.Dispose();
        _folder.Dispose();
    }

    private Reading Type(string file, string text)
    {
        var shown = new OpenText(file, text, "", file.EndsWith(".card", StringComparison.Ordinal) ? "museum.stash" : null, []);
        _windows.Put(Window, shown, isSaved: false);
        return _readings.Of(_folder.At(file), shown);
    }

    [Fact]
    public void The_picture_and_the_open_tab_share_one_compilation()
    {
        var picture = Type("lamp.card", Card);
        Assert.Same(picture.Compilation, _readings.Find(Window, "lamp.card")!.Compilation);
    }

    [Fact]
    public void A_key_in_a_card_does_not_compile_its_stash_again()
    {
        var before = Type("lamp.card", Card).Filling.Stash;
        Assert.NotNull(before);
        Assert.Same(before, Type("lamp.card", Card + "  star 1, of white\n").Filling.Stash);
    }

    [Fact]
    public void A_key_in_a_batch_does_not_compile_its_cards_and_its_stash_again()
    {
        const string Batch = "batch \"Lamp day\"\nstash \"museum.stash\"\nmake 3 of \"lamp.card\"\n";
        var before = _readings.Batch(Type("day.batch", Batch), new FindingBag())!;
        var after = _readings.Batch(Type("day.batch", Batch.Replace("make 3", "make 4", StringComparison.Ordinal)), new FindingBag())!;
        Assert.Equal(4, after.Cards);
        // Texts are compared by identity, because each comes from the compilation that was used.
        Assert.Equal(before.Files.Skip(1), after.Files.Skip(1));
        Assert.Same(before.Stash, after.Stash);
    }
}
