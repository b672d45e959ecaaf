using Sketch.Output.Lettering;
using Sketch.Preview.Sessions;
using Sketch.Stashes;
using Sketch.Tests.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview.Sessions;

/// <summary>A text is compiled once, and again when anything changes that the compilation depends on.</summary>
public sealed class CompilationsTests : IDisposable
{
    private const string Card = "card \"Lamp\"\nbase A2, fold left, of white\nrole sky: navy\nfront\n  lamp: panel 2 x 3, of sky\n";

    private readonly TemporaryFolder _folder = new();
    private readonly Compilations _compilations = new(new CachedFiles(new FontLibrary([])));

    public void Dispose() => _folder.Dispose();

    private Compilation Of(string text, string name = "lamp.card", Stash? stash = null, params PaperChoice[] choices) =>
        _compilations.Of(new(_folder.At(name), text), new(stash, [.. choices]));

    [Fact]
    public void The_same_text_is_compiled_once() => Assert.Same(Of(Card), Of(Card));

    [Fact]
    public void Another_text_is_compiled() => Assert.NotSame(Of(Card), Of(Card + "  star 1, of white\n"));

    [Fact]
    public void The_same_text_in_another_file_is_compiled() => Assert.NotSame(Of(Card), Of(Card, "other.card"));

    [Fact]
    public void Other_papers_compile_again() =>
        Assert.NotSame(Of(Card), Of(Card, choices: new PaperChoice("sky", "cream", Sketch.Panels.PaperSide.Front)));

    [Fact]
    public void Another_stash_compiles_again()
    {
        const string Shelf = "stash \"Museum\"\ncardstock navy: 12 x 12, 3 sheets\n";
        var before = Of(Shelf, "museum.stash").Stash;
        var after = Of(Shelf.Replace("3 sheets", "4 sheets", StringComparison.Ordinal), "museum.stash").Stash;
        Assert.NotSame(Of(Card, stash: before), Of(Card, stash: after));
    }

    [Fact]
    public void A_changed_file_named_by_like_compiles_again_even_with_the_same_length_and_time()
    {
        var time = new DateTime(2024, 5, 1, 0, 0, 0, DateTimeKind.Utc);
        var basis = _folder.Write("lamp.card", Card);
        File.SetLastWriteTimeUtc(basis, time);
        const string Like = "card \"Night\"\nlike \"lamp.card\"\n";
        var before = Of(Like, "night.card");
        Assert.Same(before, Of(Like, "night.card"));
        File.WriteAllText(basis, Card.Replace("2 x 3", "3 x 3", StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(basis, time);
        Assert.Equal(3, (double)Of(Like, "night.card").Card!.Pieces[0].Finished.Width.Millimetres / 25.4, 6);
    }

    [Fact]
    public void Changed_artwork_compiles_again()
    {
        const string Artwork = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0 0H10V10Z\"/></svg>";
        const string Sail = "card \"Sail\"\nbase A2, fold left, of white\nfront\n  sail: outline 1 wide, file \"sail.svg\", of navy\n";
        _folder.Write("sail.svg", Artwork);
        var before = Of(Sail, "sail.card");
        Assert.Same(before, Of(Sail, "sail.card"));
        _folder.Write("sail.svg", Artwork.Replace("H10V10", "H10V20", StringComparison.Ordinal));
        Assert.NotSame(before, Of(Sail, "sail.card"));
    }

    [Fact]
    public void A_missing_file_compiles_again_once_it_exists()
    {
        const string Like = "card \"Night\"\nlike \"lamp.card\"\n";
        Assert.True(Of(Like, "night.card").HasErrors);
        _folder.Write("lamp.card", Card);
        Assert.False(Of(Like, "night.card").HasErrors);
    }

    [Fact]
    public void Only_the_latest_texts_of_a_file_are_kept()
    {
        var other = Of(Card, "other.card");
        var first = Of(Card);
        for (var i = 0; i < Compilations.MostOfOneFile; i++)
        {
            Of($"{Card}# {i}\n");
        }

        Assert.NotSame(first, Of(Card));
        Assert.Same(other, Of(Card, "other.card"));
    }

    [Fact]
    public void Large_compilations_evict_the_least_recently_used()
    {
        var light = Of(Card);
        var heavy = $"{Card}# {new string('x', 32 * Compilations.MostWeight)}\n";
        Assert.Same(Of(heavy, "heavy.card"), Of(heavy, "heavy.card"));
        Assert.NotSame(light, Of(Card));
    }
}
