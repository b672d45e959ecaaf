using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sketch.Assembly;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Tests.Templates;
using Xunit;

namespace Sketch.Tests.Assembly;

/// <summary>The order in which a card is put together; common practice, no source.</summary>
public sealed class AssemblyOrderTests
{
    private const string Head = "card \"Harbour\"\nbase A2, fold left, of white\nfront\n";

    private static readonly Lazy<ImmutableArray<LaidOutCard>> Cards = new(() =>
        [.. Printed.Samples(), .. Enumerable.Range(0, 150).Select(seed => Printed.Lay(RandomCard(seed)))]);

    private static IEnumerable<string> Names(string lines) =>
        AssemblyOrder.Of(Printed.Lay(Head + lines)).Where(s => !s.Pieces.IsEmpty).Select(s => s.Pieces[0].Path.WithinFace);

    [Fact]
    public void The_base_is_scored_first() =>
        Assert.Equal((1, AssemblyAction.Score),
            AssemblyOrder.Of(Printed.Lay(Head)).Select(s => (s.Number, s.Action)).Single());

    [Fact]
    public void A_stack_is_finished_before_it_is_glued_down() =>
        Assert.Equal(["sky/star", "sky", "sky/mat"], Names("  sky: panel 3 x 4, of blue\n    mat +1/8, of navy\n    star 1, of gold\n"));

    [Fact]
    public void A_strip_with_wraps_comes_before_the_flat_layers_on_the_same_piece() =>
        Assert.Equal(["sky/strip", "sky/square", "sky"],
            Names("  sky: panel 3 x 4, of blue\n    square 1, top 0, of red\n    strip full x 1/2, bottom 0, wrap 1/2, of cream\n"));

    [Fact]
    public void Flat_layers_come_before_foam_and_ready_made_things_last() =>
        Assert.Equal(["low", "high", "star", "gem"],
            Names("  gem 1/8, top 0, of red\n  star 1/2, bottom 0, raised 2 mm, of gold\n  low: square 1, left 0, of red\n"
                + "  high: square 1, right 0, of red\n"));

    [Fact]
    public void A_ready_made_thing_that_a_flat_layer_covers_comes_before_foam() =>
        Assert.Equal(["sky/line", "sky/square", "sky", "sky/star"],
            Names("  sky: panel 3 x 4, of blue\n    line 1/16, along top, shift down 1/4, of gold\n    square 1, top 0, of red\n"
                + "    star 1, bottom 0, raised 2 mm, of gold\n"));

    [Fact]
    public void What_lies_beneath_is_attached_first_even_on_foam() =>
        Assert.Equal(["star", "band"],
            Names("  star 2, top 1, raised 2 mm, of gold\n  band: strip full x 1/2, top 2, of red\n"));

    [Fact]
    public void Ink_comes_before_the_pieces_that_are_glued() =>
        Assert.Equal(["text", "square"], Names("  square 1, left 0, of red\n  text \"ahoy\", right 0\n"));

    [Fact]
    public void Copies_of_a_line_are_one_step()
    {
        var step = AssemblyOrder.Of(Printed.Lay(Head + "  3 star 1/2, in a row, gap 1/8, of gold\n"))[1];
        Assert.Equal(["front/star[1]", "front/star[2]", "front/star[3]"], step.Pieces.Select(p => p.Path.ToString()));
    }

    [Fact]
    public void Every_piece_that_is_seen_is_attached_once()
    {
        foreach (var card in Cards.Value)
        {
            var seen = card.Pieces.Where(p => p.Matter is not (PieceMatter.Hole or PieceMatter.Unseen) && !p.Outline.IsEmpty);
            Assert.Equal(
                seen.Select(p => p.Path.ToString()).Order(StringComparer.Ordinal),
                AssemblyOrder.Of(card).SelectMany(s => s.Pieces).Select(p => p.Path.ToString()).Order(StringComparer.Ordinal));
        }
    }

    /// <summary>A flat piece is pressed down on a table, not on a card with foam in it.</summary>
    [Fact]
    public void What_is_inked_or_glued_flat_on_a_piece_comes_before_that_piece()
    {
        foreach (var card in Cards.Value)
        {
            var numbers = Numbers(card);
            foreach (var piece in card.Pieces.Where(p => numbers.ContainsKey(p) && p.LiesOn >= 0 && !p.IsReadyMade && p.Foam == default))
            {
                Assert.True(numbers[piece] <= numbers[card.Pieces[piece.LiesOn]], $"{card.Title}: {piece.Path}");
            }
        }
    }

    /// <summary>
    /// A piece is in its place once it and all that it lies on are attached. Of two pieces that overlap, the lower one is in its place
    /// first; what both lie on does not count.
    /// </summary>
    [Fact]
    public void Nothing_must_be_slipped_beneath_another_piece()
    {
        foreach (var card in Cards.Value)
        {
            var numbers = Numbers(card);
            var pieces = card.Pieces.Where(numbers.ContainsKey).ToArray();
            for (var upper = 1; upper < pieces.Length; upper++)
            {
                foreach (var lower in pieces[..upper].Where(p => p.Face == pieces[upper].Face
                    && p.TurnedOutline.Bounds.Overlaps(pieces[upper].TurnedOutline.Bounds)))
                {
                    var (below, above) = (Stack(card, lower), Stack(card, pieces[upper]));
                    if (!below.Contains(pieces[upper]) && !above.Contains(lower))
                    {
                        Assert.True(below.Except(above).Max(p => numbers[p]) <= above.Except(below).Max(p => numbers[p]),
                            $"{card.Title}: {lower.Path} beneath {pieces[upper].Path}");
                    }
                }
            }
        }
    }

    private static Dictionary<Piece, int> Numbers(LaidOutCard card) =>
        AssemblyOrder.Of(card).SelectMany(s => s.Pieces.Select(p => (p, s.Number))).ToDictionary(
            p => p.p, p => p.Number, (IEqualityComparer<Piece>)ReferenceEqualityComparer.Instance);

    private static List<Piece> Stack(LaidOutCard card, Piece piece)
    {
        var stack = new List<Piece> { piece };
        while (stack[^1].LiesOn >= 0)
        {
            stack.Add(card.Pieces[stack[^1].LiesOn]);
        }

        return stack;
    }

    private static string RandomCard(int seed)
    {
        var random = new Random(seed);
        var text = new StringBuilder(Head);
        var depth = 0;
        for (var i = 0; i < 14; i++)
        {
            var size = (8 - Math.Min(depth, 6)) / 4.0;
            var place = string.Create(
                CultureInfo.InvariantCulture, $"left {random.Next(0, 9) / 8.0}, top {random.Next(0, 9) / 8.0}");
            text.Append(' ', 2 * depth + 2).Append(random.Next(6) switch
            {
                0 => string.Create(CultureInfo.InvariantCulture, $"square {size}, {place}, raised 2 mm, of red\n"),
                1 => $"gem 1/8, {place}, of red\n",
                2 => $"text \"ahoy\", {place}\n",
                3 => $"strip full x 1/4, top {random.Next(0, 5)}/8, wrap 1/4, of cream\n",
                4 => string.Create(CultureInfo.InvariantCulture, $"star {size}, {place}, of gold\n"),
                _ => string.Create(CultureInfo.InvariantCulture, $"square {size}, {place}, of blue\n"),
            });
            var isGround = !text.ToString().TrimEnd().Split('\n')[^1].Contains("text", StringComparison.Ordinal)
                && !text.ToString().TrimEnd().Split('\n')[^1].Contains("gem", StringComparison.Ordinal);
            depth = random.Next(0, depth + (isGround ? 2 : 1));
        }

        return text.ToString();
    }
}
