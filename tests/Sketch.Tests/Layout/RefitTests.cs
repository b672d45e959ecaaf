using Sketch.Panels;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>A card refitted to a base of another size, worked out by hand from the language.</summary>
public class RefitTests
{
    private const string Small = """
        card "Small"
        base 4 x 5, fold left, of white
        front
          sea: panel, showing 1/8, of blue
          pic: panel 2 x 1, left 1/2, top 1/4, of cream
            mat, border 1/8, of navy
            mat 2 1/2 x 1 1/2, of white
            2 square 3/8, in a row, gap 1/4, of red
            line 1/16, along top, of silver
        """;

    [Theory]
    [InlineData("front/pic", "4 x 2", "1 1/4, 3/4")] // twice as large; the distances to the outer mat are 1 and 1/2, its border 1/4
    [InlineData("front/pic/mat", "4 1/4 x 2 1/4", "1 1/8, 5/8")] // a border stays
    [InlineData("front/pic/mat2", "4 1/2 x 2 1/2", "1, 1/2")] // only the innermost written size grows, the mats keep their borders
    [InlineData("front/pic/square[1]", "3/4 x 3/4", "2 3/8, 1 3/8")] // 1 1/4 + (4 - 1 3/4)/2: the gap stays 1/4; 3/4 + (2 - 3/4)/2
    [InlineData("front/pic/line", "4 x 1/16", "1 1/4, 3/4")] // a line stays as thick
    [InlineData("front/sea", "7 1/2 x 9 1/2", "1/4, 1/4")] // what shows is a margin
    public void Refit_sizes_on_a_base_twice_as_large_doubles_sizes_and_distances(string path, string size, string place) =>
        From("base 8 x 10\nrefit sizes").HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/pic", "2 x 1", "1 1/4, 3/4")] // distances 1 and 1/2
    [InlineData("front/pic/mat", "2 1/4 x 1 1/4", "1 1/8, 5/8")]
    [InlineData("front/sea", "7 1/2 x 9 1/2", "1/4, 1/4")]
    public void Refit_margins_keeps_sizes(string path, string size, string place) =>
        From("base 8 x 10\nrefit margins").HasSizeAndPlace(path, size, place);

    [Theory]
    [InlineData("front/pic/mat", "4 x 2")]
    [InlineData("front/pic/mat2", "4 1/2 x 2 1/2")] // 1/4 on each side as before
    public void Where_only_mats_have_sizes_the_innermost_is_refitted(string path, string size) => From("base 8 x 10\nrefit sizes", """
        card "Small"
        base 4 x 5, fold left, of white
        front
          pic: panel, of cream
            mat 2 x 1, border 1/8, of navy
            mat 2 1/2 x 1 1/2, of white
        """).HasSize(path, size);

    [Fact]
    public void Refit_all_scales_borders_too() => From("base 8 x 10\nrefit all").ShowsBorder("front/pic/mat", "1/4");

    private const string Lettered = """
        card "Small"
        base 4 x 5, fold left, of white
        front
          words: text "ahoy", on circle 1, letters 1/4
          wish: sentiment "ahoy", letters 1/4, border 1/8, shadow 1/16 of navy, of cream
        """;

    [Fact]
    public void Refit_sizes_scales_a_circle_of_words_with_its_letters() =>
        From("base 8 x 10\nrefit sizes", Lettered).HasSize("front/words", "3 1/4 x 3 1/4"); // 2 and 1.25 times 1/2 on each side

    [Theory]
    [InlineData("sizes", "1/8", "1/16")]
    [InlineData("all", "1/4", "1/8")]
    public void Only_refit_all_scales_the_border_and_shadow_of_a_sentiment(string what, string border, string fall)
    {
        var card = From($"base 8 x 10\nrefit {what}", Lettered);
        var (wish, shadow) = (card.Piece("front/wish"), card.Piece("front/wish/shadow"));
        Assert.Equal(Measure.Length("1/2") + Measure.Length(border) * 2, wish.Box.Height);
        Assert.Equal(Measure.Length(fall), shadow.Box.Left - wish.Box.Left);
    }

    [Theory]
    [InlineData("front/pic", "2 x 1", "1 1/4, 1/2")] // the smaller ratio is 1; left 1/2 becomes 1
    [InlineData("front/pic/square[1]", "3/8 x 3/8", "1 3/4, 13/16")] // 1 1/4 + (2 - 1)/2, 1/2 + (1 - 3/8)/2
    public void A_wider_base_keeps_sizes_and_scales_horizontal_distances(string path, string size, string place) =>
        From("base 8 x 5\nrefit sizes").HasSizeAndPlace(path, size, place);

    [Fact]
    public void Without_refit_all_written_lengths_stay() => From("base 8 x 10").HasSizeAndPlace("front/pic", "2 x 1", "3/4, 1/2");

    [Fact]
    public void Changes_of_the_new_card_are_applied_last() =>
        From("base 8 x 10\nrefit sizes\nchange sea: showing 1/8").HasSize("front/sea", "7 3/4 x 9 3/4");

    [Fact]
    public void Metric_sizes_are_rounded_to_whole_millimetres()
    {
        var text = "card \"New\"\nlike \"small.card\"\nunits mm\nbase 120 x 180\nrefit sizes";
        var small = "card \"Small\"\nunits mm\nbase 100 x 150, fold left, of white\nfront\n  square 34, left 7, top 10, of red";
        Laid.Out(text, new TestWorld().WithText("small.card", small))
            .HasSizeAndPlace("front/square", "41 mm x 41 mm", "8 mm, 12 mm"); // 40.8, 8.4, 12
    }

    [Fact]
    public void Each_change_of_a_refit_is_reported_as_written_in_the_file()
    {
        var world = new TestWorld().WithText("small.card", Small);
        var reported = Compiler.Compile(new SourceText("new.card", "card \"New\"\nlike \"small.card\"\nbase 8 x 10\nrefit sizes"), world)
            .Findings
            .Where(f => f.Code == "SK320").Select(f => f.Message);
        Assert.Equal(
            ["sea: showing 1/8 to 1/4.", "pic: size 2 x 1 to 4 x 2, left 1/2 to 1, top 1/4 to 1/2.",
                "square (line 8 of small.card): size 3/8 to 3/4."],
            reported);
    }

    private static LaidOutCard From(string lines, string card = Small) =>
        Laid.Out($"card \"New\"\nlike \"small.card\"\n{lines}", new TestWorld().WithText("small.card", card));
}
