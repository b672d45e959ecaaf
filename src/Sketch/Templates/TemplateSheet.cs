using System.Collections.Immutable;

namespace Sketch.Templates;

/// <summary>A page before it is drawn.</summary>
/// <param name="Title">What is on it, in plain words.</param>
/// <param name="Blocks">The placed blocks in the drawing area, which begins at the upper left margin; millimetres of the finished
/// card.</param>
public sealed record TemplateSheet(string Title, ImmutableArray<PlacedBlock> Blocks);
