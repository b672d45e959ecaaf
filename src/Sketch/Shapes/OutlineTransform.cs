namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>The empty outline.</summary>
    public static readonly Outline Empty = new([]);

    /// <summary>The outline under an affine map.</summary>
    public Outline Transform(Affine by)
    {
        return new([.. Contours.Select(c => new Contour(by.Apply(c.Start), [.. c.Segments.Select(Moved)]))]);

        Segment Moved(Segment s) => s.IsLine
            ? Segment.Line(by.Apply(s.End))
            : Segment.Curve(by.Apply(s.Control1), by.Apply(s.Control2), by.Apply(s.End));
    }
}
