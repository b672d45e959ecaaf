using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>A role that no piece is made of is reported, unless a line that could not be read may be the one that uses it.</summary>
public sealed class RoleUseTests
{
    private const string Unused = "No piece is made of sky.";

    [Theory]
    [InlineData("square 1, of red", true)]
    [InlineData("square 1, of sky", false)]
    [InlineData("sky: square 1", false)]
    [InlineData("square 1, of", false)]
    public void A_role_is_used_by_a_paper_or_a_name(string piece, bool isReported) => Assert.Equal(isReported, Found.In(
        $"card \"Test\"\nrole sky: #9fc9e8\nbase A2, fold left, of white\nfront\n  {piece}\n").Any(f => f.Message == Unused));
}
