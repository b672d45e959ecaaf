using System.Collections.Immutable;

namespace Sketch.Templates;

/// <summary>A page before it is drawn.</summary>
/// <param name="Title">What is on it, in plain words.</param>
/// <param name="Blocks">What stands where in the area for drawing, which begins at the upper left margin; millimetres of the finished
/// card.</param>
public sealed record TemplateSheet(string Title, ImmutableArray<PlacedBlock> Blocks);
