using Sketch.Preview.Samples;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Preview.Samples;

public class SampleFilesTests
{
    [Fact]
    public void The_samples_are_the_sketches_of_the_museum()
    {
        var there = Directory.GetFiles(Path.Combine(Repository.Root, "sketches")).Select(f => Path.GetFileName(f))
            .Where(f => !f.EndsWith(".md", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

        Assert.Equal(there, SampleFiles.Names);
    }
}
