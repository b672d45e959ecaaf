using CsCheck;
using Sketch.Diagnostics;
using Sketch.Fuzz.Inputs;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Xunit;
using Size = Sketch.Units.Size;

namespace Sketch.Tests.Layout;

/// <summary>How two ways of writing a random card are related.</summary>
public sealed class LayoutRelationTests
{
    private const int Cards = 100;

    /// <summary>Proportions, centres and equal parts are rounded to nanometres; each level of pieces adds to that.</summary>
    private const long Crumbs = 12;

    private static readonly Gen<int> Number = Gen.Int[1, 1_000_000];

    [Fact]
    public void Twice_the_lengths_give_twice_the_sizes_and_distances() => Number.Sample(number =>
    {
        var (once, twice) = Both(number, CardWriting.Inches, CardWriting.Twice);
        foreach (var (small, large) in once.Pieces.Zip(twice.Pieces))
        {
            Assert.All(Edges(small.Box).Zip(Edges(large.Box)), e => Assert.InRange(2 * e.First - e.Second, -Crumbs, Crumbs));
            Assert.All(Edges(small.Finished).Zip(Edges(large.Finished)), e => Assert.InRange(2 * e.First - e.Second, -Crumbs, Crumbs));
        }
    }, iter: Cards);

    [Fact]
    public void The_same_lengths_in_millimetres_give_the_same_card() => Number.Sample(number =>
    {
        var (inches, metric) = Both(number, CardWriting.Inches, CardWriting.Millimetres);
        Assert.Equal(inches.Base.Flat, metric.Base.Flat);
        Assert.Equal(Measured(inches), Measured(metric));
    }, iter: Cards);

    [Fact]
    public void Names_change_nothing() => Number.Sample(number =>
    {
        var (plain, named) = Both(number, CardWriting.Inches, CardWriting.Inches with { HasNames = true });
        Assert.Equal(Measured(plain), Measured(named));
    }, iter: Cards);

    [Fact]
    public void A_total_border_is_twice_the_border_of_each_side() => Number.Sample(number =>
    {
        var (each, total) = Both(number, CardWriting.Inches, CardWriting.Inches with { WritesTotals = true });
        Assert.Equal(Measured(each), Measured(total));
    }, iter: Cards);

    [Fact]
    public void The_order_of_pieces_that_do_not_refer_to_each_other_changes_no_size_and_no_place() => Number.Sample(number =>
    {
        var (first, last) = Both(number, CardWriting.Inches, CardWriting.Inches with { IsReversed = true });
        Assert.Equal(Sorted(first), Sorted(last));

        static IEnumerable<string> Sorted(LaidOutCard card) => Measured(card).Select(m => m.ToString()).Order(StringComparer.Ordinal);
    }, iter: Cards);

    [Fact]
    public void The_canonical_spelling_of_any_card_has_the_same_sizes() => Number.Sample(number =>
    {
        var text = GrammarCards.Text(new((ulong)number));
        if (Formatter.Format(new("card.card", text), new()) is { } formatted)
        {
            Assert.Equal(Any(text), Any(formatted));
        }

        static (Rect, Size?)[] Any(string text) =>
            [.. Compiler.Compile(new SourceText("card.card", text), LayoutSamples.World()).Card?.Pieces.Select(p => (p.Box, p.Cut)) ?? []];
    }, iter: Cards);

    private static (LaidOutCard, LaidOutCard) Both(int number, CardWriting one, CardWriting other)
    {
        var card = new SizedCards(number);
        var (first, second) = (Compiled(card.Text(one)), Compiled(card.Text(other)));
        Assert.Equal(Errors(first), Errors(second));
        return (first.Card!, second.Card!);

        static Compilation Compiled(string text) => Compiler.Compile(new SourceText("card.card", text), new TestWorld());

        // A piece for which there is no room is left out either way.
        static IEnumerable<string> Errors(Compilation card) =>
            card.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Code).Order(StringComparer.Ordinal);
    }

    private static (PieceKind Kind, Rect Box, Size? Cut, Insets? Border)[] Measured(LaidOutCard card) =>
        [.. card.Pieces.Select(p => (p.Kind, p.Box, p.Cut, p.Border))];

    private static long[] Edges(Rect box) => [box.Left.Nanometres, box.Top.Nanometres, box.Right.Nanometres, box.Bottom.Nanometres];
}
