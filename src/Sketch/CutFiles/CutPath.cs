using Sketch.Shapes;

namespace Sketch.CutFiles;

/// <summary>One line that a machine follows without lifting its tool.</summary>
/// <param name="Layer">What it does along it.</param>
/// <param name="Name">What it belongs to, in plain words.</param>
/// <param name="Line">The line, in millimetres from the top left of the page.</param>
/// <param name="IsClosed">Whether it returns to its start.</param>
public sealed record CutPath(CutLayer Layer, string Name, Contour Line, bool IsClosed)
{
    /// <summary>The path under an affine map.</summary>
    public CutPath Transform(Affine by) => this with { Line = new Outline([Line]).Transform(by).Contours[0] };
}
