using Sketch.Edits;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Edits;

public class AddedWordTests
{
    private const string Card = """
        card "Lamp"
        base A2, of white
        role sky: blue
        front
          star 1, of sky   # the lamp
        inside
          text "Ahoy"

        """;

    [Theory]
    [InlineData("raised 2 mm", true, 5, "  star 1, of sky, raised 2 mm   # the lamp")]
    [InlineData("role deep: navy", false, 5, "role deep: navy", 4)]
    [InlineData("back", false, 5, "back", 8)]
    [InlineData("heart 1, of red", false, 5, "  heart 1, of red", 8)]
    public void Words_are_put_where_they_belong(string typed, bool isClause, int line, string made, int at = 5)
    {
        var added = AddedWord.Put(new("lamp.card", Card), typed, isClause, line)!;

        var text = new SourceText("lamp.card", TextEdit.Apply(Card, [added.Edit]));
        Assert.Equal((made, at), (text.Line(added.Line - 1), added.Line));
    }

    [Fact]
    public void A_title_takes_no_clause() => Assert.Null(AddedWord.Put(new("lamp.card", Card), "raised 2 mm", true, 1));
}
