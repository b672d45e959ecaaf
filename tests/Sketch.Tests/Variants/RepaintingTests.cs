using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Tests.Stashes;
using Sketch.Variants;
using Xunit;

namespace Sketch.Tests.Variants;

public class RepaintingTests
{
    private static readonly Stash Shelf = Stashed.Stash(
        "paper gulls: 12 x 12, 3 sheets, front dots #9fc9e8, back stripes #e8dcc0\npaper night: 12 x 12, 3 sheets, front #101c33, back "
            + "#e8dcc0");

    [Theory]
    [InlineData("role sky: white\nfront\n  panel 3 x 4 \"Ahoy\", of sky", "sky=night")]
    [InlineData("role sky: white\nfront\n  panel 3 x 4, of sky\n    text \"Ahoy\"", "sky=night")]
    [InlineData("role sky: white\nrole deep: red\nfront\n  panel 3 x 4 \"Ahoy\", of sky, ink deep\n    mat +1/8, of deep",
        "sky=gulls/back", "deep=night")]
    [InlineData("role sky: white\nfront\n  3 star 1, in a column, of sky and red, alternating\nenvelope, of sky", "sky=gulls")]
    [InlineData("role deep: white\nfront\n  sky: panel 2 x 2, of red, with red as deep", "deep=night")]
    public void A_repainted_card_equals_the_card_laid_out_with_those_papers(string lines, params string[] choices)
    {
        var laidOut = Stashed.Card(lines, Shelf, choices).Card!;
        var filling = new RoleFilling(
            Shelf, [.. choices.Select(c => PaperChoice.TryParse(c, out var choice) ? choice : throw new ArgumentException(c))]);

        var repainted = Repainting.With(Stashed.Card(lines, Shelf).Card!, filling);

        Assert.All(laidOut.Faces.Select(f => f.Kind)
            .Append(FaceKind.Back), face => Assert.Equal(CardDrawing.Draw(laidOut, face), CardDrawing.Draw(repainted, face)));
    }
}
