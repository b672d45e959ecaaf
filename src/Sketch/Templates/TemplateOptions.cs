namespace Sketch.Templates;

/// <summary>Options for making templates.</summary>
/// <param name="Page">The paper of the printer.</param>
/// <param name="Scale">The printer's scale.</param>
/// <param name="Mirror">Whether each placement guide is followed by its mirror image, for tracing from the back.</param>
/// <param name="Hollow">The margin for glue round the hidden part of a layer, which is cut out; null to leave layers whole.</param>
/// <param name="OnlyShapes">Whether plain rectangles are left out, since a ruler and their sizes are enough.</param>
public sealed record TemplateOptions(
    PageFormat Page, PrinterScale Scale, bool Mirror = false, GlueMargin? Hollow = null, bool OnlyShapes = false);
