using Sketch.Kinds;
using Xunit;

namespace Sketch.Tests.Kinds;

/// <summary>The kinds of piece and their traits.</summary>
public class PieceKindTests
{
    public static TheoryData<PieceKind> Kinds { get; } = [.. Enum.GetValues<PieceKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_is_found_by_its_word(PieceKind kind) => Assert.Equal(kind, PieceKinds.Find(kind.Name));

    [Fact]
    public void Capitals_do_not_matter() => Assert.Equal(PieceKind.Banner, PieceKinds.Find("Banner"));

    [Fact]
    public void Other_words_are_no_kind() => Assert.Null(PieceKinds.Find("ribbon"));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_mat_lies_only_under_what_is_cut_or_stuck_on(PieceKind kind) => Assert.Equal(
        kind.Traits.Matter is PieceMatter.Paper or PieceMatter.Ready, kind.Traits.TakesMats);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_shape_has_an_outline_of_its_own_or_from_a_drawing(PieceKind kind) =>
        Assert.True(!kind.Traits.IsShape || kind.Traits.Shape is not null || kind.Traits.IsDrawing);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_wraps_or_has_corners_to_round_runs_straight(PieceKind kind) =>
        Assert.True(!kind.Traits.CanWrap || kind.Traits.HasCorners || kind == PieceKind.Banner);
}
