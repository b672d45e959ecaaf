using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>A line on a template, in millimetres of the finished card, x right and y down.</summary>
/// <param name="Kind">What it means.</param>
/// <param name="Name">What it belongs to, in plain words; the ids of the SVG are derived from it.</param>
/// <param name="Contours">Its parts.</param>
/// <param name="IsClosed">Whether each part returns to its start.</param>
public sealed record TemplateLine(LineKind Kind, string Name, ImmutableArray<Contour> Contours, bool IsClosed)
{
    /// <summary>The box around it.</summary>
    public Bounds Bounds => new Outline(Contours).Bounds;

    /// <summary>The edge of an area, with its holes.</summary>
    public static TemplateLine Around(LineKind kind, string name, Outline outline) => new(kind, name, outline.Contours, true);

    /// <summary>An open line from point to point.</summary>
    public static TemplateLine Through(LineKind kind, string name, params ReadOnlySpan<Point> points)
    {
        var ends = ImmutableArray.CreateBuilder<Segment>();
        foreach (var point in points[1..])
        {
            ends.Add(Segment.Line(point));
        }

        return new(kind, name, [new(points[0], ends.ToImmutable())], false);
    }

    /// <summary>The line under an affine map.</summary>
    public TemplateLine Transform(Affine by) => this with { Contours = new Outline(Contours).Transform(by).Contours };
}
