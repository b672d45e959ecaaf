using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Shapes;

public sealed class StitchingTests
{
    private static readonly Outline Panel = Drawn.Rectangle(0, 0, 100, 60);

    [Fact]
    public void Stitches_lie_that_far_inside_the_edge()
    {
        var inner = new Bounds(3, 3, 97, 57);
        Assert.All(Stitching.Of(Panel, 3).SelectMany(s => s.Segments.Select(e => e.End).Append(s.Start)), p =>
            Assert.Equal(0, new[] { p.X - inner.Left, inner.Right - p.X, p.Y - inner.Top, inner.Bottom - p.Y }.Min(), 1e-9));
    }

    [Fact]
    public void Stitches_and_gaps_share_the_way_round()
    {
        var stitches = Stitching.Of(Panel, 3);
        var pitch = 2 * (94 + 54) / (double)stitches.Length;
        Assert.InRange(pitch, 3.5, 3.9);
        Assert.All(stitches, s => Assert.Equal(pitch * 2.2 / 3.7, Length(s), 1e-6));

        static double Length(Contour stitch) => Drawn.Sample(stitch) is var line
            ? line.Zip(line.Skip(1)).Sum(ends => Drawn.Distance(ends.First, ends.Second)) : 0;
    }

    [Fact]
    public void A_hole_is_stitched_round_as_well()
    {
        var ring = Panel.Subtract(Drawn.Shape(Shape.Circle, 20, 20).Transform(Affine.Shift(40, 20)));
        Assert.True(Stitching.Of(ring, 3).Length > Stitching.Of(Panel, 3).Length + 15);
    }

    [Fact]
    public void Where_no_room_is_left_there_are_no_stitches() => Assert.Empty(Stitching.Of(Panel, 30));

    [Fact]
    public void A_score_line_lies_on_the_paper_only()
    {
        var ring = Panel.Subtract(Drawn.Rectangle(40, 20, 20, 20));
        Assert.Equal(
            [(new Point(0, 30), new Point(40, 30)), (new Point(60, 30), new Point(100, 30))], ring.Sections(isUpright: false, 30));
        Assert.Equal([(new Point(10, 0), new Point(10, 60))], ring.Sections(isUpright: true, 10));
        Assert.Empty(ring.Sections(isUpright: true, 101));
    }
}
