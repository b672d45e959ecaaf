using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// What is kept together on a page: a piece with its label, a tile, a note. Its box begins at 0, 0; millimetres of the finished card.
/// </summary>
/// <param name="Width">Width of its box.</param>
/// <param name="Height">Height of its box.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Texts">Its words.</param>
public sealed record TemplateBlock(double Width, double Height, ImmutableArray<TemplateLine> Lines, ImmutableArray<TemplateText> Texts)
{
    /// <summary>The block shifted; its box keeps its size.</summary>
    public TemplateBlock Shift(double x, double y) => this with
    {
        Lines = [.. Lines.Select(l => l.Transform(Affine.Shift(x, y)))],
        Texts = [.. Texts.Select(t => t.Shift(x, y))],
    };

    /// <summary>Square millimetres of its box.</summary>
    public double Area => Width * Height;
}
