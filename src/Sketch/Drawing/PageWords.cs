using System.Collections.Immutable;
using System.Text;
using Sketch.Lettering;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>Words printed on a page: the one description from which SVG files get outlines and PDF files get text.</summary>
/// <param name="Title">All the words, for readers of the SVG.</param>
/// <param name="Colour">The colour of the letters, as in SVG.</param>
/// <param name="Lines">The lines or single words that they consist of.</param>
public sealed record PageWords(string Title, string Colour, ImmutableArray<PlacedRun> Lines);

/// <summary>A line of words at its place.</summary>
/// <param name="Run">The line.</param>
/// <param name="Left">Where its leftmost ink is, in millimetres.</param>
/// <param name="Baseline">The height of its baseline, in millimetres.</param>
/// <param name="CapHeight">Height of a capital in millimetres.</param>
public readonly record struct PlacedRun(TextRun Run, double Left, double Baseline, double CapHeight)
{
    /// <summary>The outlines of its letters.</summary>
    public Outline Outline => Run.Outline.Transform(Place);

    /// <summary>Appends the outlines to the data of an SVG path.</summary>
    public void AppendSvgPath(StringBuilder path, int decimals) => Run.Outline.AppendSvgPath(path, Place, decimals);

    private Affine Place => Affine.Scale(CapHeight, CapHeight).Then(Affine.Shift(Left, Baseline));

    /// <summary>The line moved.</summary>
    public PlacedRun Shift(double x, double y) => this with { Left = Left + x, Baseline = Baseline + y };

    /// <summary>The line scaled about the origin.</summary>
    public PlacedRun Scale(double by) => new(Run, Left * by, Baseline * by, CapHeight * by);
}
