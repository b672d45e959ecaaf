using Sketch.Drawing;
using Xunit;

namespace Sketch.Tests.Drawing;

/// <summary>The ids of one picture among others.</summary>
public sealed class SvgIdsTests
{
    [Fact]
    public void An_id_made_of_another_has_the_prefix_once()
    {
        var ids = new SvgIds("second-");
        Assert.Equal("second-front-gem", ids.Claim("front/gem"));
        Assert.Equal("second-front-gem-cut", ids.Claim("second-front-gem-cut"));
    }
}
