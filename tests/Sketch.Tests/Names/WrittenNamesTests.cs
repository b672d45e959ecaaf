using Sketch.Diagnostics;
using Sketch.Names;
using Sketch.Syntax;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Names;

public sealed class WrittenNamesTests
{
    private const string Start = "card \"Lamp\"\nbase A2, of white\n";

    /// <summary>The numbers of the lines on which the same is named as where § stands.</summary>
    private static int[] Lines(string marked)
    {
        var at = marked.IndexOf('§', StringComparison.Ordinal);
        var source = new SourceText("lamp.card", marked.Remove(at, 1));
        var names = WrittenNames.Of(Parser.Parse(source, new FindingBag()));
        return names.At(at) is { } name ? [.. names.SameAs(name).Select(n => source.PositionOf(n.Span.Start).Line)] : [];
    }

    private static string Renamed(string marked, string other)
    {
        var at = marked.IndexOf('§', StringComparison.Ordinal);
        var source = new SourceText("lamp.card", marked.Remove(at, 1));
        var names = WrittenNames.Of(Parser.Parse(source, new FindingBag()));
        var edits = names.Rename(names.At(at)!, other);
        return edits.Problem ?? TextEdit.Apply(source.Content, edits.Value);
    }

    [Fact]
    public void A_role_is_named_where_it_is_declared_and_in_each_clause_of_paper_or_ink() => Assert.Equal(
        [3, 5, 6, 7],
        Lines(Start + "role §sky: waves\nfront\n  panel 3 x 4, of sky\n    text \"ahoy\", of SKY\n    star 1, shadow 1/16 of sky\n"));

    [Fact]
    public void A_colour_word_is_no_name_until_it_is_declared() => Assert.Empty(Lines(Start + "front\n  panel 3 x 4, of na§vy\n"));

    [Fact]
    public void Of_two_pieces_with_one_name_the_sibling_is_meant() => Assert.Equal(
        [6, 7],
        Lines(Start + "front\n  lamp: star 1\n  panel 3 x 4\n    lamp: star 1/2\n    dot 1/8, above la§mp by 1/8\n"));

    [Fact]
    public void A_path_leads_into_the_piece_that_it_names() => Assert.Equal(
        [5, 6], Lines(Start + "front\n  sky: panel 3 x 4\n    lamp: star 1/2\n  dot 1/8, over top of sky/la§mp\n"));

    [Fact]
    public void A_path_leads_into_a_part_where_it_is_used() => Assert.Equal(
        [4, 7], Lines(Start + "part lantern 1 x 2\n  glow: star 1/2\nfront\n  first: use lantern\n  dot 1/8, above first/gl§ow by 1/8\n"));

    [Fact]
    public void A_part_is_named_where_it_is_used() =>
        Assert.Equal([3, 6], Lines(Start + "part §lantern 1 x 2\n  star 1/2\nfront\n  use lantern\n"));

    [Fact]
    public void An_offcut_names_its_paper() =>
        Assert.Equal([2, 3], Lines("stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets\noffcut gu§lls: 3 x 4, 1\n"));

    [Fact]
    public void The_roles_of_a_batch_are_those_of_its_cards_so_it_declares_none() =>
        Assert.Empty(Lines("batch \"Day\"\nmake 2 of \"lamp.card\"\n  role s§ky: gulls\n"));

    [Fact]
    public void Another_name_is_written_everywhere() => Assert.Equal(
        Start + "front\n  sky: panel 3 x 4\n    beacon: star 1/2\n  dot 1/8, over top of sky/beacon\n",
        Renamed(Start + "front\n  sky: panel 3 x 4\n    la§mp: star 1/2\n  dot 1/8, over top of sky/lamp\n", "beacon"));

    [Theory]
    [InlineData("two words", "cannot be a name")]
    [InlineData("star", "is a word of the language")]
    [InlineData("role", "is a word of the language")]
    [InlineData("Glow", "in this file already")]
    [InlineData("", "cannot be a name")]
    public void A_name_that_cannot_be_given_is_refused(string other, string reason) => Assert.Contains(
        reason, Renamed(Start + "front\n  la§mp: star 1/2\n  glow: star 1\n", other), StringComparison.Ordinal);
}
