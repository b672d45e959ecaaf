using Sketch.Lettering;
using Sketch.Output.Lettering;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Output.Lettering;

public sealed class OwnFontTests
{
    private static readonly FontLibrary Fonts = new([]);

    public static TheoryData<string> Kinds => [.. LetteringKinds.All.Select(k => k.Word)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_of_lettering_comes_with_the_tool(string word) =>
        Assert.Null(Fonts.Shape("ahoy", LetteringKinds.Find(word)!.Family).Problem);

    [Theory]
    [MemberData(nameof(Kinds))]
    [InlineData("script", "bold")]
    [InlineData("serif", "italic")]
    [InlineData("serif", "bold italic")]
    [InlineData("typewriter", "italic")]
    public void Every_kind_has_the_letters_of_western_and_central_European_languages(string word, string style = "") =>
        Assert.Equal("", Fonts.Shape("Zażółć AEIOU äöüß éèêç ñ å ø 0123456789 & ! ? ’ “ ”",
            $"{LetteringKinds.Find(word)!.Family} {style}".Trim()).Value.MissingCharacters);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_licence_of_every_family_lies_beside_its_files(string word)
    {
        var family = LetteringKinds.Find(word)!.Family.Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1",
            File.ReadAllText(Path.Combine(Repository.Root, $"src/Sketch.Output/Lettering/Fonts/{family}-OFL.txt")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void No_letter_of_the_stencil_has_a_middle_that_falls_out()
    {
        const string letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&";
        Assert.All(letters, letter =>
        {
            var outline = Fonts.Shape(letter.ToString(), "Saira Stencil One").Value.Outline;
            Assert.Equal(outline.WithoutHoles().Area, outline.Area, 6);
        });
    }

    [Fact]
    public void A_style_that_a_family_lacks_is_refused_with_those_that_it_has()
    {
        var problem = Fonts.Shape("ahoy", "Caveat italic").Problem;
        Assert.Equal("Caveat has no italic; it has regular, bold.", problem);
    }
}
