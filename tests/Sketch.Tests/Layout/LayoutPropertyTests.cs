using System.Globalization;
using CsCheck;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Properties of every layout, tested on random cards. Numbers are sixteenths of an inch.</summary>
public class LayoutPropertyTests
{
    private static readonly Gen<int> Border = Gen.Int[1, 8];
    private static readonly Gen<int[]> Borders = Border.Array[0, 5];

    [Fact]
    public void The_outermost_mat_is_the_panel_plus_all_borders() =>
        Gen.Select(Gen.Int[8, 60], Gen.Int[8, 60], Borders).Sample((width, height, borders) =>
        {
            var card = Laid.OnA2($"  pic: panel {In(width)} x {In(height)}, of cream\n{Mats(borders)}");
            var sum = Sixteenths(2 * borders.Sum());
            Assert.Equal(new Sketch.Units.Size(Sixteenths(width) + sum, Sixteenths(height) + sum), card.Pieces[0].Box.Size);
        });

    [Fact]
    public void A_stack_shows_the_written_border() =>
        Gen.Select(Gen.Int[0, 8], Borders.Where(b => b.Sum() < 20)).Sample((showing, borders) =>
        {
            var box = Laid.OnA2($"  pic: panel, showing {In(showing)}, of cream\n{Mats(borders)}").Pieces[0].Box;
            Assert.Equal(new Rect(Sixteenths(showing), Sixteenths(showing), Sixteenths(68 - 2 * showing), Sixteenths(88 - 2 * showing)),
                box);
        });

    [Fact]
    public void The_written_distance_is_that_of_the_outermost_mat() =>
        Gen.Select(Gen.Int[-16, 40], Gen.Int[-16, 40], Borders).Sample((left, bottom, borders) =>
        {
            var box = Laid.OnA2($"  pic: panel 2 x 1, left {In(left)}, bottom {In(bottom)}, of cream\n{Mats(borders)}").Pieces[0].Box;
            Assert.Equal((Sixteenths(left), Sixteenths(88 - bottom)), (box.Left, box.Bottom));
        });

    [Fact]
    public void Equal_parts_and_gaps_fill_the_space_to_the_nanometre() =>
        Gen.Select(Gen.Int[1, 9], Gen.Int[0, 4], Gen.Int[0, 6]).Sample((count, gap, showing) =>
        {
            var parts = Laid.OnA2($"  {count} panel, showing {In(showing)}, in a row, gap {In(gap)}, of red").Pieces;
            var widths = parts.Aggregate(Length.Zero, (sum, p) => sum + p.Box.Width);
            Assert.Equal(Sixteenths(68 - 2 * showing), widths + Sixteenths(gap) * (count - 1));
        });

    [Fact]
    public void Consecutive_parts_are_one_gap_apart() =>
        Gen.Select(Gen.Int[2, 9], Gen.Int[0, 4]).Sample((count, gap) =>
        {
            var parts = Laid.OnA2($"  {count} panel, showing 0, in a column, gap {In(gap)}, of red").Pieces;
            Assert.All(parts.Zip(parts.Skip(1)), pair => Assert.Equal(pair.First.Box.Bottom + Sixteenths(gap), pair.Second.Box.Top));
        });

    [Fact]
    public void Spread_leaves_equal_gaps() =>
        Gen.Int[1, 12].Sample(count =>
        {
            var boxes = Laid.OnA2($"  {count} square 1/4, in a row, spread, of red").Pieces.Select(p => p.Box).ToArray();
            var gaps = boxes.Select((b, i) => b.Left - (i == 0 ? Length.Zero : boxes[i - 1].Right)).Append(Sixteenths(68) - boxes[^1].Right)
                .ToArray();
            Assert.InRange((gaps.Max() - gaps.Min()).Nanometres, 0, 1);
        });

    [Fact]
    public void A_shift_moves_a_piece_with_its_mat_and_the_pieces_on_it() =>
        Gen.Select(Gen.Int[0, 40], Gen.Int[0, 40]).Sample((right, down) =>
        {
            const string Below = ", of cream\n    mat +1/8, of navy\n    square 1/2, top 1/8, of red";
            var still = Laid.OnA2($"  pic: panel 2 x 1{Below}").Pieces;
            var moved = Laid.OnA2($"  pic: panel 2 x 1, shift right {In(right)}, shift down {In(down)}{Below}").Pieces;
            Assert.Equal(still.Select(p => p.Box with { Left = p.Box.Left + Sixteenths(right), Top = p.Box.Top + Sixteenths(down) }),
                moved.Select(p => p.Box));
        });

    [Fact]
    public void Equal_lengths_in_inches_and_millimetres_give_the_same_layout() =>
        Gen.Select(Gen.Int[1, 60], Gen.Int[1, 60], Gen.Int[0, 20], Border).Sample((width, height, left, border) =>
        {
            var inches = Laid.OnA2($"  panel {In(width)} x {In(height)}, left {In(left)}, of cream\n    mat, border {In(border)}, of navy");
            var metric = Laid.Out(
                $"card \"Test\"\nunits mm\nbase A2, fold left, of white\nfront\n  panel {Mm(width)} x {Mm(height)}, left {Mm(left)}, "
                    + $"of cream\n    mat, border {Mm(border)}, of navy");
            Assert.Equal(inches.Pieces.Select(p => p.Box), metric.Pieces.Select(p => p.Box));
        });

    private static string Mats(int[] borders) => string.Concat(borders.Select(b => $"    mat, border {In(b)}, of navy\n"));

    private static string In(int sixteenths) => LengthFormat.Ruler(Sixteenths(sixteenths));

    private static string Mm(int sixteenths) => (sixteenths * 25.4m / 16).ToString(CultureInfo.InvariantCulture);

    private static Length Sixteenths(int count) => Length.Inch(0, count, 16);
}
