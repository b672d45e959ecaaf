using System.Collections.Immutable;
using Sketch.Shapes;
using SkiaSharp;

namespace Sketch.Output.Paths;

/// <summary>Converts Skia's paths to outlines of the engine.</summary>
internal static class PathOutline
{
    /// <summary>
    /// A path's contours after a transform. Quadratic curves become cubic ones exactly; contours without an area are left out.
    /// </summary>
    public static Outline Read(SKPath path, Affine by)
    {
        var contours = ImmutableArray.CreateBuilder<Contour>();
        var segments = ImmutableArray.CreateBuilder<Segment>();
        var start = new Point();
        var points = new SKPoint[4];
        using var verbs = path.CreateRawIterator();
        for (var verb = verbs.Next(points); verb != SKPathVerb.Done; verb = verbs.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    Finish();
                    start = At(0);
                    break;
                case SKPathVerb.Line when points[1] != points[0]:
                    segments.Add(Segment.Line(At(1)));
                    break;
                case SKPathVerb.Quad:
                    AddCurveTowards(2.0 / 3);
                    break;
                case SKPathVerb.Conic:
                    // A cubic with the conic's ends, tangents and middle; a quarter of a circle gets its usual 0.5523.
                    AddCurveTowards(4 * verbs.ConicWeight() / (3 * (1 + verbs.ConicWeight())));
                    break;
                case SKPathVerb.Cubic:
                    segments.Add(Segment.Curve(At(1), At(2), At(3)));
                    break;
            }
        }

        Finish();
        return new(contours.DrainToImmutable());

        Point At(int index) => by.Apply(new(points[index].X, points[index].Y));

        void AddCurveTowards(double part)
        {
            var (from, towards, to) = (At(0), At(1), At(2));
            segments.Add(Segment.Curve(Between(from, towards, part), Between(to, towards, part), to));
        }

        void Finish()
        {
            while (segments.Count > 0 && segments[^1].IsLine && segments[^1].End == start)
            {
                segments.RemoveAt(segments.Count - 1);
            }

            if (segments.Count > 1 || (segments.Count == 1 && !segments[0].IsLine))
            {
                contours.Add(new(start, segments.DrainToImmutable()));
            }

            segments.Clear();
        }
    }

    /// <summary>
    /// A path filled by the even-odd rule as an outline filled by winding number: a contour inside an odd number of others is a hole.
    /// Where a single contour crosses itself, everything with a nonzero winding number is filled.
    /// </summary>
    public static Outline ReadEvenOdd(SKPath path, Affine by)
    {
        var contours = Read(path, Affine.Identity)
            .Contours.Select(c => (Contour: c, c.Bounds, Path: SKPath.ParseSvgPathData(new Outline([c]).ToSvgPath()))).ToList();
        var wound = ImmutableArray.CreateBuilder<Contour>(contours.Count);
        foreach (var (contour, bounds, _) in contours)
        {
            var (x, y) = ((float)contour.Start.X, (float)contour.Start.Y);
            var around = contours.Count(c => !ReferenceEquals(c.Contour, contour) && c.Bounds.Covers(bounds) && c.Path.Contains(x, y));
            wound.Add(contour.SignedArea >= 0 == (around % 2 == 0) ? contour : contour.Reverse());
        }

        contours.ForEach(c => c.Path.Dispose());
        return new Outline(wound.DrainToImmutable()).Transform(by);
    }

    private static Point Between(Point from, Point to, double part) =>
        new(from.X + part * (to.X - from.X), from.Y + part * (to.Y - from.Y));
}
