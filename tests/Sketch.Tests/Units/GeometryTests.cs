using CsCheck;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Units;

public sealed class GeometryTests
{
    private static readonly Gen<Rect> Rects = Gen.Select(Gen.Int[-50, 50], Gen.Int[-50, 50], Gen.Int[0, 50], Gen.Int[0, 50])
        .Select((left, top, width, height) => new Rect(new(left), new(top), new(width), new(height)));

    [Fact]
    public void The_rectangle_round_two_others_touches_one_of_them_on_each_side() => Gen.Select(Rects, Rects).Sample((a, b) =>
    {
        var both = Rect.Cover(a, b);
        Assert.Equal((Length.Min(a.Left, b.Left), Length.Min(a.Top, b.Top)), (both.Left, both.Top));
        Assert.Equal((Length.Max(a.Right, b.Right), Length.Max(a.Bottom, b.Bottom)), (both.Right, both.Bottom));
    });

    [Fact]
    public void A_grown_rectangle_moves_each_edge_by_its_own_amount() => Rects.Sample(rect =>
    {
        var grown = rect.Grow(new(new(1), new(2), new(3), new(4)));
        Assert.Equal((rect.Left - new Length(1), rect.Top - new Length(2)), (grown.Left, grown.Top));
        Assert.Equal((rect.Right + new Length(3), rect.Bottom + new Length(4)), (grown.Right, grown.Bottom));
    });

    [Theory]
    [InlineData(1, 1, 1, 1, true)]
    [InlineData(2, 1, 1, 1, false)]
    [InlineData(1, 2, 1, 1, false)]
    [InlineData(1, 1, 2, 1, false)]
    [InlineData(1, 1, 1, 2, false)]
    [InlineData(1, 2, 1, 2, false)]
    public void Amounts_are_even_if_all_four_are_the_same(int left, int top, int right, int bottom, bool areEven) =>
        Assert.Equal(areEven, new Insets(new(left), new(top), new(right), new(bottom)).IsEven);
}
