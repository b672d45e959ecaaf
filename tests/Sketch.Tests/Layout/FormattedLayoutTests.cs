using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>The canonical spelling of a card has the same layout as the card.</summary>
public class FormattedLayoutTests
{
    public static readonly TheoryData<string> Cards = [.. LayoutSamples.All];

    [Theory]
    [MemberData(nameof(Cards))]
    public void The_canonical_spelling_has_the_same_layout(string text)
    {
        var formatted = Formatter.Format(new SourceText("card.card", text), new FindingBag());
        Assert.Equal(Measures(Laid.Out(text, LayoutSamples.World())), Measures(Laid.Out(formatted!, LayoutSamples.World())));
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void The_canonical_spelling_is_stable(string text)
    {
        var once = Formatter.Format(new SourceText("card.card", text), new FindingBag());
        Assert.Equal(once, Formatter.Format(new SourceText("card.card", once!), new FindingBag()));
    }

    private static IEnumerable<object?> Measures(LaidOutCard card) =>
        card.Pieces.Select(p => (p.Path, p.Kind, p.Box, p.Wrap, p.Border, p.Turn, p.Raised, p.Paint.Role, p.Words?.Text) as object);
}
