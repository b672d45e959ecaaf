using Sketch.Panels;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Worked out by hand from the language. The maker's mark is 20 x 10 mm, the gull 40 x 20 mm: both half as high as wide.</summary>
public class InsideAndOutTests
{
    internal const string Text = """
        card "10 Inside and out"
        base A2, fold left, of white
        role scrap: any offcut
        inside
          low: strip full x 1/2, bottom 1/4, of scrap
          wish: text "Thinking of you", above low by 1/4, of navy
          ruled 3 1/2 x 2 1/2, lines 5/16 apart, above wish by 1/4, of grey
        back
          stamp 3/4 wide, file "maker.svg", bottom 1/2, of grey
        envelope US A2, flap 2, of white
          stamp 1 1/4 wide, file "gull.svg", lower left 3/8, of navy
        envelope back
          tape full x 1/2, over bottom of flap, of blue
        """;

    private readonly LaidOutCard _card =
        Laid.Out(Text, new TestWorld().WithTriangle("maker.svg", 20, 10).WithTriangle("gull.svg", 40, 20));

    [Theory]
    [InlineData("inside/low", "4 1/4 x 1/2", "0, 4 3/4")] // 5 1/2 - 1/4 - 1/2
    [InlineData("back/stamp", "3/4 x 3/8", "1 3/4, 4 5/8")] // (4 1/4 - 3/4)/2, 5 1/2 - 1/2 - 3/8
    [InlineData("envelope/stamp", "1 1/4 x 5/8", "3/8, 3 3/8")] // the envelope is 4 3/8 high: less 3/8, less 5/8
    [InlineData("envelope-back/tape", "5 3/4 x 1/2", "0, 1 3/4")] // the flap ends at 2, the middle of the tape
    public void Each_piece_has_its_size_and_place(string path, string size, string place) => _card.HasSizeAndPlace(path, size, place);

    [Fact]
    public void The_wish_ends_a_quarter_above_the_strip() => Assert.Equal(Measure.Length("4 1/2"), _card.Piece("inside/wish").Box.Bottom);

    [Fact]
    public void The_wish_is_centred_on_the_strip()
    {
        var wish = _card.Piece("inside/wish").Box;
        Assert.InRange((wish.Left + wish.Right - Measure.Length("4 1/4")).Nanometres, -2, 2);
    }

    [Fact]
    public void The_writing_lines_are_as_large_as_written() => _card.HasSize("inside/ruled", "3 1/2 x 2 1/2");

    [Fact]
    public void The_writing_lines_end_a_quarter_above_the_wish() =>
        Assert.Equal(_card.Piece("inside/wish").Box.Top - Measure.Length("1/4"), _card.Piece("inside/ruled").Box.Bottom);

    [Fact]
    public void The_writing_lines_are_centred_on_the_wish() =>
        Assert.InRange((_card.Piece("inside/ruled").Box.Left - Measure.Length("3/8")).Nanometres, -2, 2); // 2 1/8 - 1 3/4

    [Theory]
    [InlineData("inside/low", "4 1/4 x 1/2")]
    [InlineData("inside/wish", null)]
    [InlineData("inside/ruled", null)]
    [InlineData("back/stamp", null)]
    [InlineData("envelope-back/tape", null)]
    public void Only_the_strip_is_cut_from_paper(string path, string? cut) => _card.IsCut(path, cut);

    [Fact]
    public void The_strip_takes_any_offcut() => Assert.True(_card.Piece("inside/low").Paint.AnyOffcut);

    [Fact]
    public void The_envelope_lies_landscape() => Assert.Equal(Measure.Size("5 3/4 x 4 3/8"), _card.Find(FaceKind.Envelope)?.Size);

    [Fact]
    public void The_flap_is_on_the_back_of_the_envelope() => Assert.Equal(Measure.Length("2"), _card.Find(FaceKind.EnvelopeBack)?.Flap);

    [Fact]
    public void A_flap_written_on_the_back_of_the_envelope_counts_there()
    {
        var card = Laid.Out("card \"x\"\nbase A2, fold left, of white\nenvelope US A2, flap 2, of white\nenvelope back, flap 1 1/2\n"
            + "  star 1, of navy\n");
        Assert.Equal(Measure.Length("1 1/2"), card.Find(FaceKind.EnvelopeBack)?.Flap);
    }

    [Fact]
    public void An_envelope_that_needs_a_size_leaves_the_rest_of_the_card()
    {
        var compilation = Compiler.Compile(new SourceText("a.card",
            "card \"x\"\nbase 11 x 11, fold left, of white\nfront\n  circle 1, of red\nenvelope, of white\n  star 1, of navy\n"),
            new TestWorld());
        Assert.Contains(compilation.Findings, f => f.Message == "No named envelope fits this card, so the envelope needs a size.");
        Assert.Equal([FaceKind.Front], compilation.Card!.Faces.Select(f => f.Kind));
    }

    [Fact]
    public void Nothing_is_on_the_front() => Assert.Empty(_card.On(FaceKind.Front));
}
