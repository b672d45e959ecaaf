using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>A straight stretch on a side of a piece that gets a form. Depths are millimetres from the side into the piece.</summary>
internal sealed class FormedStretch
{
    /// <summary>Limits the outline of a strip of any length.</summary>
    private const int MostRepeats = 400;

    /// <summary>
    /// The length of a half wave's controls per its length: the cubic then nearly is a cosine wave (common approximation).
    /// </summary>
    private const double WaveControl = 0.3642;

    private readonly EdgeForm _form;
    private readonly double _depth;
    private readonly Point _from;
    private readonly (double X, double Y) _inward;
    private readonly double[] _tear;

    /// <param name="edge">The side.</param>
    /// <param name="form">Its form.</param>
    /// <param name="depth">How deep the form is.</param>
    /// <param name="from">Where the straight stretch begins, clockwise.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="number">Distinguishes the tears of a piece.</param>
    public FormedStretch(Edge edge, EdgeForm form, double depth, Point from, Point to, int number)
    {
        (_form, _depth, _from) = (form, depth, from);
        _inward = edge switch
        {
            Edge.Top => (0, 1),
            Edge.Right => (-1, 0),
            Edge.Bottom => (0, -1),
            _ => (1, 0),
        };
        _tear = form == EdgeForm.Torn ? TornEdge.Depths(Math.Abs(to.X - from.X) + Math.Abs(to.Y - from.Y), depth, number) : [];
    }

    /// <summary>How deep the form begins.</summary>
    public double FirstDepth => EndDepth(_tear is [var first, ..] ? first : 0);

    /// <summary>How deep the form ends.</summary>
    public double LastDepth => EndDepth(_tear is [.., var last] ? last : 0);

    /// <summary>The point moved into the piece.</summary>
    public Point Inwards(Point point, double depth) => new(point.X + _inward.X * depth, point.Y + _inward.Y * depth);

    /// <summary>Draws the form from where the pen is. A corner beside a curve stays on the side itself.</summary>
    public void Draw(ContourPen pen, Point end)
    {
        const double Close = 1e-9;
        var (origin, surface) = (Inwards(pen.At, -DepthOf(pen.At)), Inwards(end, -DepthOf(end)));
        Go(0, FirstDepth);
        switch (_form)
        {
            case EdgeForm.Torn:
                for (var i = 1; i < _tear.Length; i++)
                {
                    Go((double)i / (_tear.Length - 1), _tear[i]);
                }

                break;
            case EdgeForm.Wavy:
                Repeat(4, (from, middle, to) =>
                {
                    var control = (middle - from) * WaveControl;
                    pen.Curve(At(from + control, 0), At(middle - control, _depth), At(middle, _depth))
                        .Curve(At(middle + control, _depth), At(to - control, 0), At(to, 0));
                });
                break;
            case EdgeForm.Scalloped:
                Repeat(2, (from, middle, to) => pen.Quarter(At(from, 0), At(middle, 0)).Quarter(At(to, 0), At(to, _depth)));
                break;
            default:
                Repeat(1, (_, middle, to) =>
                {
                    Go(middle, 0);
                    Go(to, _depth);
                });
                break;
        }

        if (pen.At != end)
        {
            pen.Line(end.X, end.Y);
        }

        Point At(double share, double depth) => share == 1 && Math.Abs(depth - DepthOf(end)) < Close ? end
            : Inwards(new(origin.X + (surface.X - origin.X) * share, origin.Y + (surface.Y - origin.Y) * share), depth);

        void Go(double share, double depth)
        {
            if (At(share, depth) is var point && (Math.Abs(point.X - pen.At.X) > Close || Math.Abs(point.Y - pen.At.Y) > Close))
            {
                pen.Line(point.X, point.Y);
            }
        }

        // As many equal repeats as come nearest to their usual width.
        void Repeat(double widthPerDepth, Action<double, double, double> draw)
        {
            var length = Math.Abs(surface.X - origin.X) + Math.Abs(surface.Y - origin.Y);
            var count = (int)Math.Clamp(Math.Round(length / (widthPerDepth * _depth)), 1, MostRepeats);
            for (var i = 0; i < count; i++)
            {
                draw((double)i / count, (i + 0.5) / count, (i + 1.0) / count);
            }
        }
    }

    private double DepthOf(Point point) => (point.X - _from.X) * _inward.X + (point.Y - _from.Y) * _inward.Y;

    private double EndDepth(double torn) => _form switch
    {
        EdgeForm.Torn => torn,
        EdgeForm.Wavy => 0,
        _ => _depth,
    };
}
