using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>The corners of an outline, by which a gem is cut into facets; two with the same corners are equal.</summary>
/// <param name="Corners">The corners in order, or default for none.</param>
internal readonly record struct Rim(ImmutableArray<Point> Corners)
{
    /// <summary>How far a chord may lie off a curve, as a share of the shorter side: curves get broad facets.</summary>
    private const double Coarse = 0.012;

    /// <summary>No corners.</summary>
    internal static Rim None { get; } = new([]);

    /// <summary>The corners of the first contour of an outline.</summary>
    internal static Rim Of(Outline outline)
    {
        if (outline.IsEmpty)
        {
            return None;
        }

        var tolerance = Coarse * Math.Min(outline.Bounds.Width, outline.Bounds.Height);
        return new([.. outline.Contours[0].Flatten(tolerance)]);
    }

    /// <inheritdoc/>
    public bool Equals(Rim other) => Corners.SequenceEqual(other.Corners);

    /// <inheritdoc/>
    public override int GetHashCode() => Corners.Length;
}
