using Sketch.Output.Folders;
using Sketch.Tests.Project;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Output.Folders;

public sealed class MemoryFilesTests
{
    private const string Lamp = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 2 x 3, of blue\n";

    [Fact]
    public void A_card_is_like_another_in_memory()
    {
        var files = new MemoryFiles().With("cards/base.card", Lamp);

        var compiled = Compiler.Compile(new SourceText("cards/a.card", "card \"Other\"\nlike \"base.card\"\n"), files);

        Assert.Empty(compiled.Findings);
        Assert.Equal("Other", compiled.Card!.Title);
    }

    [Theory]
    [InlineData("../papers/night.stash")]
    [InlineData("..\\papers\\night.stash")]
    [InlineData("./../papers/./night.stash")]
    public void A_name_leads_from_the_folder_of_the_file_that_has_it(string name) =>
        Assert.Equal("papers/night.stash", new MemoryFiles().With("papers/night.stash", "x").ReadText(name, "cards/a.card").Value.Path);

    [Fact]
    public void A_file_that_is_not_there_is_a_problem() =>
        Assert.Equal("there is no such file.", new MemoryFiles().ReadText("none.card", "a.card").Problem);

    [Fact]
    public void Files_beside_are_those_of_the_same_folder() => Assert.Equal(
        ["a.card"], new MemoryFiles().With("cards/a.card", "").With("b.card", "").NamesBeside("cards/c.card"));

    [Fact]
    public void Adding_a_file_leaves_the_files_before_as_they_were()
    {
        var none = new MemoryFiles();
        none.With("a.card", Lamp);
        Assert.NotNull(none.ReadText("a.card", "b.card").Problem);
    }

    [Fact]
    public void Words_are_shaped_by_the_fonts_of_Sketch() =>
        Assert.NotEmpty(new MemoryFiles().ShapeWords("Lamp", "Caveat", "a.card").Value.Outline.Contours);

    [Fact]
    public void A_font_in_memory_shapes_words()
    {
        var caveat = File.ReadAllBytes(Repository.PathTo("src", "Sketch.Output", "Lettering", "Fonts", "Caveat-Regular.ttf"));
        var files = new MemoryFiles().With("mine.ttf", caveat);

        var (named, mine) = (files.ShapeWords("Lamp", "Caveat", "a.card").Value, files.ShapeWords("Lamp", "mine.ttf", "a.card").Value);

        Assert.Equal(named.Outline.Bounds, mine.Outline.Bounds);
    }

    [Fact]
    public void Artwork_is_read_from_memory() => Assert.Equal(
        File.ReadAllText(Repository.PathTo("sketches", "gull.svg")).Length > 0,
        new MemoryFiles().With("gull.svg", File.ReadAllText(Repository.PathTo("sketches", "gull.svg")))
            .ReadArtwork("gull.svg", "a.card").Value.Contours.Length > 0);

    [Fact]
    public void A_picture_is_read_from_memory()
    {
        using var pixels = new SkiaSharp.SKBitmap(20, 10);
        using var png = pixels.Encode(SkiaSharp.SKEncodedImageFormat.Png, 100);
        var files = new MemoryFiles().With("scan.png", png.ToArray());

        Assert.Equal(50, files.ReadPicture("scan.png", "a.stash", Length.Millimetre(100)).Value.Height, 6);
    }
}
