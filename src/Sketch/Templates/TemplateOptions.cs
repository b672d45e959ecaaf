using Sketch.Units;

namespace Sketch.Templates;

/// <summary>Options for making templates.</summary>
/// <param name="Page">The paper of the printer.</param>
/// <param name="Scale">The printer's scale.</param>
/// <param name="Mirror">Whether each placement guide is followed by its mirror image, for tracing from the back.</param>
/// <param name="Hollow">The margin for glue round the hidden part of a layer, which is cut out; null to leave layers whole.</param>
public sealed record TemplateOptions(PageFormat Page, PrinterScale Scale, bool Mirror = false, Length? Hollow = null)
{
    /// <summary>The default margin for glue: 1/4 in (common practice, no source).</summary>
    public static readonly Length UsualGluing = Length.Inch(0, 1, 4);
}
