using CsCheck;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Cards with words removed, doubled and swapped: the result is always a card or findings.</summary>
public class ScrambledCardTests
{
    private static readonly string[] Words =
        [.. LayoutSamples.All.SelectMany(c => c.Split(' ', '\n')).Where(w => w.Length > 0).Distinct().Order(StringComparer.Ordinal)];

    private static readonly Gen<string> Spoilt =
        Gen.Select(Gen.Int[0, LayoutSamples.All.Length - 1], Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, 3], Gen.Int[0, Words.Length - 1])
            .Array[1, 4])
            .Select((card, mistakes) =>
                mistakes.Aggregate(LayoutSamples.All[card], (text, m) => Spoil(text, m.Item1, m.Item2, Words[m.Item3])));

    [Fact]
    public void A_card_with_mistakes_gives_a_layout_or_findings() =>
        Spoilt.Sample(text =>
        {
            var compilation = Compiler.Compile(new SourceText("card.card", text), LayoutSamples.World());
            Assert.True(compilation.Card is not null || compilation.HasErrors, text);
        });

    [Fact]
    public void Every_finding_points_into_its_text() =>
        Spoilt.Sample(text => Assert.All(
            Compiler.Compile(new SourceText("card.card", text), LayoutSamples.World()).Findings,
            f => Assert.InRange(f.Location.Span.End, f.Location.Span.Start, f.Location.Source.Content.Length)));

    private static string Spoil(string text, int where, int how, string word)
    {
        var parts = text.Split(' ');
        var at = where % parts.Length;
        return string.Join(' ', how switch
        {
            0 => [.. parts[..at], .. parts[(at + 1)..]],
            1 => [.. parts[..at], parts[at], .. parts[at..]],
            2 => [.. parts[..at], word, .. parts[(at + 1)..]],
            _ => [.. parts[..at], word, .. parts[at..]],
        });
    }
}
