using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Messages;

/// <summary>What is reported of a message in a card.</summary>
public sealed class MessageChecksTests
{
    private const string Head = "card \"A\"\nbase A2, of white\n";

    private static List<string> Codes(string text) =>
        [.. Compiler.Compile(new SourceText("a.card", Head + text), new TestWorld()).Findings.Select(f => f.Code)];

    [Fact]
    public void A_message_that_fits_is_not_reported() =>
        Assert.Empty(Codes("message \"Keep a good light\"\ninside\n  message: group 3 1/2 x 2\n"));

    [Fact]
    public void A_message_without_a_place_is_reported_at_its_line()
    {
        var found = Assert.Single(Compiler.Compile(new SourceText(
            "a.card", Head + "message \"Ahoy\"\ninside\n  panel, showing 1/8, of navy\n"), new TestWorld()).Findings);
        Assert.Equal(("SK447", 3), (found.Code, found.Location.Start.Line));
    }

    [Fact]
    public void A_message_that_runs_out_of_its_place_is_reported() =>
        Assert.Equal(["SK446"], Codes("message \"Keep a good light\"\ninside\n  message: group 3/4 x 1/2\n"));

    [Theory]
    [InlineData("message \"fair winds!\"\n")]
    [InlineData("message \"Ahoy\" \"Fair  winds\"\n")]
    [InlineData("inside\n  text \"Fair winds\", top 1\n")]
    public void Words_of_the_front_are_reported_inside(string inside)
    {
        var message = inside.StartsWith("message", StringComparison.Ordinal) ? inside : "";
        Assert.Equal(["SK445"],
            Codes(message + "front\n  panel 3 x 1 \"Fair winds\", letters 1/4, of cream\n" + (message.Length > 0 ? "" : inside)));
    }

    [Fact]
    public void A_clause_that_a_message_does_not_take_is_an_error() => Assert.Equal(["SK116"], Codes("message \"Ahoy\", raised 2 mm\n"));

    [Fact]
    public void A_card_keeps_the_message_of_the_card_that_it_is_like_unless_it_has_its_own()
    {
        var world = new TestWorld().WithText("a.card", Head + "message \"Ahoy\"\n");
        var like = Compiler.Compile(new SourceText("b.card", "card \"B\"\nlike \"a.card\"\n"), world).Card!;
        var own = Compiler.Compile(new SourceText("c.card", "card \"C\"\nlike \"a.card\"\nmessage \"Land\"\n"), world).Card!;
        Assert.Equal(["Ahoy"], like.Message!.Lines);
        Assert.Equal(["Land"], own.Message!.Lines);
    }
}
