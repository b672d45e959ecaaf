using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Output.Rendering;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>The gallery shows the sketches as they render now. The command in DEVELOPERS.md makes it again.</summary>
public class GalleryTests
{
    // The largest difference of a channel in equal pixels, and the largest share of different pixels: fonts and curves are rounded.
    private const int ChannelTolerance = 12;
    private const double PixelTolerance = 0.002;

    public static TheoryData<string> Sketches() =>
        new(Directory.GetFiles(Repository.PathTo("sketches"), "*.card").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Sketches))]
    public void The_gallery_shows_the_sketch_as_it_renders_now(string sketch)
    {
        var path = Repository.PathTo("sketches", sketch);
        var compilation = Compiler.Compile(FolderFiles.ReadFile(path).Source!, new FolderFiles());
        Assert.False(compilation.HasErrors, string.Join('\n', compilation.Findings.Select(f => f.Message)));

        foreach (var face in compilation.Card!.Faces)
        {
            var name = $"{Path.GetFileNameWithoutExtension(sketch)}-{face.Name}.svg";
            var shown = Repository.PathTo("gallery", name);
            Assert.True(File.Exists(shown), $"gallery/{name} is missing; make the gallery again");
            var difference = Difference(Render(File.ReadAllText(shown)), Render(CardDrawing.Draw(compilation.Card, face.Kind)));
            Assert.True(difference <= PixelTolerance,
                $"gallery/{name} differs from its sketch in {difference:P2} of the pixels; make the gallery again and look at it");
        }
    }

    private static Image<Rgba32> Render(string svg)
    {
        using var stream = new MemoryStream();
        Assert.Null(SvgRenderer.WritePng(svg, 72, stream));
        stream.Position = 0;
        return Image.Load<Rgba32>(stream);
    }

    /// <summary>The share of pixels that differ; 1 if the sizes differ.</summary>
    private static double Difference(Image<Rgba32> a, Image<Rgba32> b)
    {
        using (a)
        using (b)
        {
            if (a.Width != b.Width || a.Height != b.Height)
            {
                return 1;
            }

            var different = 0;
            for (var y = 0; y < a.Height; y++)
            {
                for (var x = 0; x < a.Width; x++)
                {
                    var (p, q) = (a[x, y], b[x, y]);
                    if (Math.Abs(p.R - q.R) > ChannelTolerance || Math.Abs(p.G - q.G) > ChannelTolerance
                        || Math.Abs(p.B - q.B) > ChannelTolerance)
                    {
                        different++;
                    }
                }
            }

            return (double)different / (a.Width * a.Height);
        }
    }
}
