using Sketch.Edits;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Edits;

public class PaintedPieceTests
{
    [Theory]
    [InlineData("  star 1, of red, raised 2 mm # lamp", "gulls", "  star 1, of gulls, raised 2 mm # lamp")]
    [InlineData("  sky: panel 2 x 2 # lamp", "gulls", "  sky: panel 2 x 2, of gulls # lamp")]
    [InlineData("  3 star 1, of red and navy, in turn", "gulls", "  3 star 1, of gulls, in turn")]
    public void The_paper_of_one_line_is_changed(string line, string paper, string painted) =>
        Assert.Equal(Text(painted), TextEdit.Apply(Text(line), [PaintedPiece.Of(new("lamp.card", Text(line)), 4, paper)!]));

    [Theory]
    [InlineData(3, "gulls")]
    [InlineData(4, "two words, here")]
    public void What_cannot_be_written_is_refused(int line, string paper) =>
        Assert.Null(PaintedPiece.Of(new("lamp.card", Text("  star 1")), line, paper));

    private static string Text(string line) => $"card \"Lamp\"\nbase A2, of white\nfront\n{line}\n";
}
