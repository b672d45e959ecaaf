using Sketch.Kinds;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Kinds;

/// <summary>The kinds of piece and their traits.</summary>
public class PieceKindTests
{
    public static TheoryData<PieceKind> Kinds { get; } = [.. Enum.GetValues<PieceKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_with_a_line_of_its_own_is_found_by_its_word(PieceKind kind) =>
        Assert.Equal(kind.Traits.HasLine ? kind : null, PieceKinds.Find(kind.Name));

    [Fact]
    public void Case_does_not_matter() => Assert.Equal(PieceKind.Banner, PieceKinds.Find("Banner"));

    [Fact]
    public void Other_words_are_not_kinds() => Assert.Null(PieceKinds.Find("feather"));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Only_paper_and_ready_made_pieces_take_mats(PieceKind kind) => Assert.Equal(
        kind.Traits.Matter is PieceMatter.Paper or PieceMatter.Ready, kind.Traits.TakesMats);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_shape_has_its_own_outline_or_one_from_a_drawing(PieceKind kind) =>
        Assert.True(!kind.Traits.IsShape || kind.Traits.Shape is not null || kind.Traits.IsDrawing);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Pieces_that_can_wrap_have_straight_sides(PieceKind kind) =>
        Assert.True(!kind.Traits.CanWrap || kind.Traits.HasCorners || kind == PieceKind.Banner
            || kind.Traits is { IsCutToLength: true, Shape: Shape.Rectangle });
}
