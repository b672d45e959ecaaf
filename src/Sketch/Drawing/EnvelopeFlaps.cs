using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>
/// The closed flaps on the back of an envelope: the upper one comes down to a blunt point at the depth that the file gives, the lower one
/// comes up beneath it. The default depth is 45 % of the height; it affects only pictures and no check.
/// </summary>
internal sealed class EnvelopeFlaps
{
    private const double UsualShare = 0.45;

    internal EnvelopeFlaps(Size envelope, Length? depth)
    {
        var (width, height) = (envelope.Width.Millimetres, envelope.Height.Millimetres);
        var deep = Math.Min(depth?.Millimetres ?? height * UsualShare, height);
        Upper = Pointed(0, deep);
        Lower = Pointed(height, Math.Min(height, Math.Max(height * 0.35, deep - height * 0.12)));

        Outline Pointed(double from, double to)
        {
            var blunt = Math.Min(width, height) * 0.1;
            var slope = (to - from) / (width / 2);
            var (left, right) = (new Point(width / 2 - blunt, to - slope * blunt), new Point(width / 2 + blunt, to - slope * blunt));
            var tip = new Point(width / 2, to);
            return new([new(new(0, from),
            [
                Segment.Line(left),
                Segment.Curve(Towards(left, tip), Towards(right, tip), right),
                Segment.Line(new(width, from)),
            ])]);
        }

        static Point Towards(Point from, Point to) => new(from.X + (to.X - from.X) * 0.8, from.Y + (to.Y - from.Y) * 0.8);
    }

    /// <summary>The flap that closes the envelope.</summary>
    internal Outline Upper { get; }

    /// <summary>The flap beneath it.</summary>
    internal Outline Lower { get; }
}
