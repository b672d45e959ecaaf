using Sketch.Messages;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Messages;

/// <summary>A message set in its place. In the world of the tests each character is 0.8 of a capital's height wide.</summary>
public sealed class SetMessageTests
{
    private static SetMessage Set(string message, string place)
    {
        var text = $"card \"A\"\nbase 5 x 7, of white\nmessage {message}\ninside\n  message: {place}\n";
        var card = Compiler.Compile(new SourceText("a.card", text), new TestWorld()).Card!;
        return SetMessage.In(MessagePlace.Of(card)!, card.Message!, card, new TestWorld())!;
    }

    [Fact]
    public void A_short_message_has_the_letters_of_large_print() =>
        Assert.Equal(Length.Inch(0, 3, 16).Millimetres, Set("\"fair winds\"", "group 4 x 2").Letters, 6);

    [Fact]
    public void A_long_line_is_broken_between_words() =>
        Assert.Equal(["and calm seas", "to you"], Set("\"and calm seas to you\"", "group 2 1/2 x 2").Lines);

    [Fact]
    public void Letters_shrink_until_the_message_fits()
    {
        var set = Set("\"calm seas and a good light to you\"", "group 2 x 1");
        Assert.True(set.Fits);
        Assert.InRange(set.Letters, 2, 4.7);
    }

    [Fact]
    public void Letters_do_not_shrink_below_what_older_people_can_read()
    {
        var set = Set("\"calm seas and a good light to you all\"", "group 1 x 1/2");
        Assert.False(set.Fits);
        Assert.True(set.Letters >= 2);
    }

    [Fact]
    public void Written_letters_are_kept_even_if_they_do_not_fit()
    {
        var set = Set("\"fair winds\", letters 1/2", "group 2 x 1");
        Assert.False(set.Fits);
        Assert.Equal(12.7, set.Letters, 6);
    }

    [Fact]
    public void The_ink_stays_within_a_place_that_it_fits()
    {
        var set = Set("\"fair winds\" \"and calm seas\"", "group 3 x 1");
        Assert.True(set.Ink.Bounds.Left >= 3.1 && set.Ink.Bounds.Right <= 76.2 - 3.1 && set.Ink.Bounds.Top >= 3.1);
        Assert.Equal(76.2 / 2, set.Ink.Bounds.Centre.X, 3);
    }

    [Fact]
    public void On_writing_lines_each_line_stands_on_one_of_them() =>
        Assert.Equal(2 * 8.0, Set("\"one\" \"two\"", "ruled 3 x 2, lines 8 mm apart").Ink.Bounds.Bottom, 3);

    [Fact]
    public void More_lines_than_there_are_writing_lines_do_not_fit() =>
        Assert.False(Set("\"one\" \"two\" \"three\"", "ruled 3 x 20 mm, lines 8 mm apart").Fits);

    [Theory]
    [InlineData("ranged left", 3.175)]
    [InlineData("ranged right", 76.2 - 3.175 - 3 * 0.8 * 4.7625)]
    public void Lines_are_aligned_as_written(string clause, double left) =>
        Assert.Equal(left, Set($"\"one\", {clause}", "group 3 x 1").Ink.Bounds.Left, 3);
}
