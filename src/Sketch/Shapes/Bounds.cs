using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>An upright box for drawing, in millimetres; x runs right, y down.</summary>
public readonly record struct Bounds(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Its width.</summary>
    public double Width => Right - Left;

    /// <summary>Its height.</summary>
    public double Height => Bottom - Top;

    /// <summary>Its middle.</summary>
    public Point Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>The box in millimetres of an exact rectangle.</summary>
    public static Bounds Of(Rect rect) => new(rect.Left.Millimetres, rect.Top.Millimetres, rect.Right.Millimetres, rect.Bottom.Millimetres);

    /// <summary>The exact rectangle whose edges are those of this box to the nearest nanometre.</summary>
    public Rect ToRect()
    {
        var (left, top) = (Length.NearestMillimetres(Left), Length.NearestMillimetres(Top));
        return new(left, top, Length.NearestMillimetres(Right) - left, Length.NearestMillimetres(Bottom) - top);
    }

    /// <summary>The box grown (or, with a negative distance, shrunk) on every side.</summary>
    public Bounds Grow(double distance) => new(Left - distance, Top - distance, Right + distance, Bottom + distance);

    /// <summary>The smallest box around both.</summary>
    public Bounds With(Bounds other) => new(
        Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>Whether the other box lies within this one or on its edges.</summary>
    public bool Covers(Bounds other) => other.Left >= Left && other.Top >= Top && other.Right <= Right && other.Bottom <= Bottom;

    /// <summary>Whether the two share an area; a common edge is not enough.</summary>
    public bool Overlaps(Bounds other) => other.Left < Right && other.Right > Left && other.Top < Bottom && other.Bottom > Top;
}
