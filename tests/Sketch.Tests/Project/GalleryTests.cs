using System.Text.RegularExpressions;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Output.Rendering;
using Sketch.Tests.Cli;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>The gallery shows the sketches as they render now. The command in DEVELOPERS.md makes it again.</summary>
public sealed partial class GalleryTests(GalleryTests.Made made) : IClassFixture<GalleryTests.Made>
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

    public static TheoryData<string> Pages() => new(Directory
        .GetFiles(Repository.PathTo("gallery"), "*.html", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(Repository.PathTo("gallery"), f).Replace('\\', '/')).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_of_the_gallery_is_the_one_that_is_made_now(string page)
    {
        var (kept, now) = (File.ReadAllText(Repository.PathTo("gallery", page)), File.ReadAllText(made.InFolder(page)));
        Assert.Equal(Drawing().Replace(now, "").Split('\n'), Drawing().Replace(kept, "").Split('\n'));
        foreach (var (a, b) in Drawing().Matches(kept).Zip(Drawing().Matches(now)).Where(p => p.First.Value != p.Second.Value))
        {
            Assert.True(Difference(Render(Physical(a.Value)), Render(Physical(b.Value))) <= PixelTolerance,
                $"a drawing on gallery/{page} differs from its text; make the gallery again and look at it");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_on_a_page_leads_somewhere(string page)
    {
        foreach (var link in Link().Matches(Drawing().Replace(File.ReadAllText(made.InFolder(page)), "")).Select(m => m.Groups[1].Value)
            .Where(l => !l.StartsWith("https:", StringComparison.Ordinal)))
        {
            var (file, anchor) = link.Split('#') is [var f, var a] ? (f, a) : (link, null);
            var path = file.Length == 0 ? page : Path.Combine(Path.GetDirectoryName(page)!, file);
            Assert.True(File.Exists(made.InFolder(path)), link);
            Assert.True(
                anchor is null || File.ReadAllText(made.InFolder(path)).Contains($" id=\"{anchor}\"", StringComparison.Ordinal), link);
        }
    }

    [Fact]
    public void No_page_is_missing_in_the_gallery() => Assert.Equal(
        Directory.GetFiles(made.Folder, "*.html", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(made.Folder, f)).Order(),
        Directory.GetFiles(Repository.PathTo("gallery"), "*.html", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Repository.PathTo("gallery"), f)).Order());

    /// <summary>The gallery, made once for all tests by the command in DEVELOPERS.md.</summary>
    public sealed class Made : IDisposable
    {
        private readonly CommandLineRun _run = new();

        public Made()
        {
            var command = MadeBy().Match(File.ReadAllText(Repository.PathTo("DEVELOPERS.md"))).Groups[1].Value;
            Assert.Equal(0, _run.Run("gallery", Repository.PathTo("sketches"), "--out", Folder, "--title", command));
        }

        public string Folder => _run.Folder;

        public string InFolder(string name) => _run.InFolder(name);

        public void Dispose() => _run.Dispose();
    }

    // A picture within a page has its size in pixels.
    private static string Physical(string svg) => Pixels().Replace(svg, " $1=\"$2pt\"", 2);

    [GeneratedRegex("<svg .*?</svg>\n?", RegexOptions.Singleline)]
    private static partial Regex Drawing();

    [GeneratedRegex(" (?:href|src)=\"([^\"]+)\"")]
    private static partial Regex Link();

    [GeneratedRegex(" (width|height)=\"([0-9.]+)\"")]
    private static partial Regex Pixels();

    [GeneratedRegex("gallery sketches --out gallery --title \"(.*)\"")]
    private static partial Regex MadeBy();

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
