using Sketch.Units;

namespace Sketch.Templates;

/// <summary>How templates are to be made.</summary>
/// <param name="Page">The paper of the printer.</param>
/// <param name="Scale">How large the printer prints.</param>
/// <param name="Mirror">Whether each placement guide is followed by its mirror image, for tracing from the back.</param>
/// <param name="Hollow">What is left for glue round the hidden part of a layer that is to be cut out; null to leave layers whole.</param>
public sealed record TemplateOptions(PageFormat Page, PrinterScale Scale, bool Mirror = false, Length? Hollow = null)
{
    /// <summary>What is left for glue unless said otherwise: 1/4 in (common practice, no source).</summary>
    public static readonly Length UsualGluing = Length.Inch(0, 1, 4);
}
