using System.Collections.Immutable;

namespace Sketch.Shapes;

public sealed partial record Contour
{
    /// <summary>The smallest upright box around the line itself.</summary>
    public Bounds Bounds
    {
        get
        {
            var bounds = new Bounds(Start.X, Start.Y, Start.X, Start.Y);
            var from = Start;
            foreach (var segment in Segments)
            {
                bounds = bounds.With(segment.BoundsFrom(from));
                from = segment.End;
            }

            return bounds;
        }
    }

    /// <summary>Square millimetres enclosed, by Green's formula; positive where the line runs clockwise as seen (y down).</summary>
    public double SignedArea
    {
        get
        {
            var doubled = 0.0;
            var from = Start;
            foreach (var segment in Segments)
            {
                doubled += segment.SweptFrom(from, Start);
                from = segment.End;
            }

            return doubled / 2;
        }
    }

    /// <summary>The same line in the other direction.</summary>
    public Contour Reverse()
    {
        var segments = ImmutableArray.CreateBuilder<Segment>(Segments.Length + 1);
        var start = Segments.IsEmpty ? Start : Segments[^1].End;
        for (var i = Segments.Length - 1; i >= 0; i--)
        {
            var end = i == 0 ? Start : Segments[i - 1].End;
            var segment = Segments[i];
            segments.Add(segment.IsLine ? Segment.Line(end) : Segment.Curve(segment.Control2, segment.Control1, end));
        }

        return new(start, segments.ToImmutable());
    }

    /// <summary>The box, if the line is an upright rectangle with four corners; otherwise null.</summary>
    internal Bounds? AsRectangle()
    {
        var closed = Segments.Length == 4 && Segments[3].End == Start;
        if (Segments.Length != 3 && !closed)
        {
            return null;
        }

        foreach (var segment in Segments)
        {
            if (!segment.IsLine)
            {
                return null;
            }
        }

        var (a, b, c, d) = (Start, Segments[0].End, Segments[1].End, Segments[2].End);
        var across = a.Y == b.Y && b.X == c.X && c.Y == d.Y && d.X == a.X;
        var down = a.X == b.X && b.Y == c.Y && c.X == d.X && d.Y == a.Y;
        return across || down
            ? new(Math.Min(a.X, c.X), Math.Min(a.Y, c.Y), Math.Max(a.X, c.X), Math.Max(a.Y, c.Y))
            : null;
    }
}
