using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>A word or two in a box of their own on a diagram.</summary>
/// <param name="Words">The words.</param>
/// <param name="Box">The box.</param>
/// <param name="Target">What a line leads to from it; null where it stands at its place.</param>
internal sealed record Note(string Words, Bounds Box, Point? Target);
