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
    public void A_path_with_a_part_that_starts_with_a_dot_is_hidden(string path) => Assert.True(OpenedFolder.IsHidden(path));

    [Theory]
    [InlineData("lamp.card")]
    [InlineData("day.old/lamp.card")]
    [InlineData("")]
    public void A_path_with_a_dot_elsewhere_is_not_hidden(string path) => Assert.False(OpenedFolder.IsHidden(path));
}
