using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Preview.Samples;
using Sketch.World;

namespace Sketch.Preview.Views;

/// <summary>A sample card to look at.</summary>
/// <param name="Name">The name of its file.</param>
/// <param name="Title">Its title.</param>
/// <param name="Svg">The picture of its front.</param>
internal sealed record SampleView(string Name, string Title, string Svg);

/// <summary>The sample cards to look at.</summary>
/// <param name="Samples">The cards, in the order of their names.</param>
internal sealed record SamplesView(IEnumerable<SampleView> Samples)
{
    private const double DotsPerInch = 48;

    /// <summary>The samples, each in its own colours.</summary>
    public static SamplesView Of(IWorld fonts)
    {
        var files = new SampleFiles(fonts);
        return new([.. SampleFiles.Names.Where(n => n.EndsWith(".card", StringComparison.Ordinal)).AsParallel().AsOrdered().Select(name =>
        {
            var card = Compiler.Compile(SampleFiles.Read(name), files).Card!;
            return new SampleView(name, card.Title, CardDrawing.Draw(card, FaceKind.Front, DotsPerInch));
        })]);
    }
}
