using System.Collections.Immutable;
using Sketch.Lettering;
using Sketch.Shapes;
using Sketch.Tests.Shapes;
using Xunit;

namespace Sketch.Tests.Lettering;

/// <summary>A line of five square letters, each one cap height wide with a gap of a half, set in several ways.</summary>
public class TypesettingTests
{
    private const double Pitch = 1.5;

    private static readonly ShapedWords Line = Squares(5);

    [Fact]
    public void A_straight_line_without_spacing_stays_as_it_is() => Assert.Same(Line, Typesetting.Set(Line, default));

    [Fact]
    public void Spacing_adds_the_same_room_between_all_letters()
    {
        var set = Typesetting.Set(Line, new(0.25, 0));
        Assert.Equal(Line.Outline.Bounds.Width + 4 * 0.25, set.Outline.Bounds.Width, 6);
        Assert.All(set.Glyphs.Zip(set.Glyphs.Skip(1)), pair => Assert.Equal(Pitch + 0.25, pair.Second.Middle - pair.First.Middle, 6));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(180)]
    [InlineData(-90)]
    public void The_foot_of_each_letter_stands_on_the_circle(double degrees)
    {
        var set = Typesetting.Set(Line, new(0, degrees));
        var radius = Math.Abs(Line.Outline.Bounds.Width / (degrees * Math.PI / 180));
        Assert.All(set.Glyphs, glyph => Assert.Equal(radius, Distance(FootOf(glyph), set.CircleCentre), 3));
    }

    [Theory]
    [InlineData(60)]
    [InlineData(-60)]
    public void Letters_follow_each_other_at_equal_angles(double degrees)
    {
        var set = Typesetting.Set(Line, new(0, degrees));
        var angles = set.Glyphs.Select(g => FootOf(g)).Select(f =>
            Math.Atan2(f.X - set.CircleCentre.X, Math.Sign(degrees) * (set.CircleCentre.Y - f.Y)) * 180 / Math.PI).ToList();
        var each = Math.Abs(degrees) * Pitch / Line.Outline.Bounds.Width;
        Assert.All(angles.Zip(angles.Skip(1)), pair => Assert.Equal(each, pair.Second - pair.First, 3));
    }

    [Fact]
    public void Bending_changes_no_letter() =>
        Assert.Equal(Line.Outline.Area, Typesetting.Set(Line, new(0, 45)).Outline.Area, 3);

    [Fact]
    public void A_set_line_begins_at_its_leftmost_ink() =>
        Assert.Equal(0, Typesetting.Set(Line, new(0.1, 120)).Outline.Bounds.Left, 6);

    [Fact]
    public void Letters_set_apart_are_parted_by_non_joiners() => Assert.Equal("f\u200ci", Typesetting.Apart("fi"));

    /// <summary>The middle of the edge that was on the baseline: the first and last corner of each square.</summary>
    private static Point FootOf(ShapedGlyph glyph)
    {
        var contour = glyph.Outline.Contours[0];
        var (a, b) = (contour.Start, contour.Segments[0].End);
        return new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
    }

    private static double Distance(Point a, Point b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private static ShapedWords Squares(int count)
    {
        ImmutableArray<ShapedGlyph> glyphs = [.. Enumerable.Range(0, count).Select(i => i * Pitch)
            .Select(x => new ShapedGlyph(Drawn.Polygon(new(x, 0), new(x + 1, 0), new(x + 1, -1), new(x, -1)), x + 0.5))];
        return new(Outline.Union(glyphs.Select(g => g.Outline)), "") { Glyphs = glyphs };
    }
}
