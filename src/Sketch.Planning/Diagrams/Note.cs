using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>A short text in its own box on a diagram.</summary>
/// <param name="Words">The words.</param>
/// <param name="Box">The box.</param>
/// <param name="Target">Where its leader line ends; null if it is at its place.</param>
internal sealed record Note(string Words, Bounds Box, Point? Target);
