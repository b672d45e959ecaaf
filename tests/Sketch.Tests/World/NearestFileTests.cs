using Sketch.World;
using Xunit;

namespace Sketch.Tests.World;

public sealed class NearestFileTests
{
    [Theory]
    [InlineData("frist.card", "first.card")]
    [InlineData("first", "first.card")]
    [InlineData("first.card", null)]
    [InlineData("thirst.card", "first.card")]
    public void The_nearest_name_is_offered_only_for_a_missing_file(string written, string? near) =>
        Assert.Equal(near, NearestFile.Find(
            new TestWorld().WithText("first.card", "").WithText("a.card", ""), written, "a.card", ".card"));
}
