using Sketch.Preview.Folder;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

public sealed class HiddenPathTests
{
    [Theory]
    [InlineData(".sketch")]
    [InlineData(".sketch/drafts/a.json")]
    [InlineData("day/.old/lamp.card")]
    [InlineData(@"day\.old\lamp.card")]
    [InlineData("day/.lamp.card")]
    public void A_step_that_begins_with_a_point_hides(string path) => Assert.True(OpenedFolder.IsHidden(path));

    [Theory]
    [InlineData("lamp.card")]
    [InlineData("day.old/lamp.card")]
    [InlineData("")]
    public void A_point_elsewhere_does_not(string path) => Assert.False(OpenedFolder.IsHidden(path));
}
