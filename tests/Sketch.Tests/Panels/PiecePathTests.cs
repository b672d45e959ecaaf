using Sketch.Panels;
using Xunit;

namespace Sketch.Tests.Panels;

/// <summary>The path to a piece.</summary>
public class PiecePathTests
{
    private static readonly PiecePath Mat = PiecePath.On(FaceKind.InsideLeft, "row").Then("gem", 2).Then("mat");

    [Fact]
    public void It_is_written_from_the_face_to_the_piece() => Assert.Equal("inside-left/row/gem[2]/mat", Mat.ToString());

    [Fact]
    public void Within_its_face_it_is_written_without_the_face() => Assert.Equal("row/gem[2]/mat", Mat.WithinFace);

    [Fact]
    public void Its_names_have_no_copy_numbers() => Assert.Equal(["row", "gem", "mat"], Mat.Names);

    [Fact]
    public void Copies_share_the_path_without_their_numbers() =>
        Assert.Equal("inside-left/row/gem/mat", Mat.WithoutCopies.ToString());

    [Fact]
    public void The_piece_beneath_is_the_parent() => Assert.Equal("inside-left/row/gem[2]", Mat.Parent!.ToString());

    [Fact]
    public void A_piece_directly_on_a_face_has_no_parent() => Assert.Null(PiecePath.On(FaceKind.Front, "sky").Parent);

    [Fact]
    public void Two_paths_to_the_same_piece_are_equal() =>
        Assert.Equal(PiecePath.On(FaceKind.Front, "sky").Then("lamp"), PiecePath.On(FaceKind.Front, "sky").Then("lamp"));

    [Fact]
    public void Copies_have_different_paths() =>
        Assert.NotEqual(PiecePath.On(FaceKind.Front, "gem", 1), PiecePath.On(FaceKind.Front, "gem", 2));

    [Fact]
    public void The_base_has_a_path_without_names_on_a_face() => Assert.Equal(
        ("base", "base", 0), (PiecePath.Base.ToString(), PiecePath.Base.WithinFace, PiecePath.Base.Names.Length));
}
