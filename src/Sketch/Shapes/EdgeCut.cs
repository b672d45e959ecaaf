using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>How a straight side of a piece is cut or torn instead of straight.</summary>
public enum EdgeForm
{
    /// <summary>An irregular tear.</summary>
    Torn,

    /// <summary>Even waves.</summary>
    Wavy,

    /// <summary>Half-round bumps side by side.</summary>
    Scalloped,

    /// <summary>Points side by side, like a row of pennants.</summary>
    Pointed,
}

/// <summary>The form of one side.</summary>
/// <param name="Form">The form.</param>
/// <param name="Depth">How far it reaches into the piece; null for the usual depth.</param>
public readonly record struct EdgeCut(EdgeForm Form, Length? Depth);

/// <summary>The forms of the four sides; null for a side that is cut straight.</summary>
public sealed record EdgeCuts(EdgeCut? Left, EdgeCut? Right, EdgeCut? Top, EdgeCut? Bottom)
{
    /// <summary>All sides straight.</summary>
    public static readonly EdgeCuts None = new(null, null, null, null);

    /// <summary>The usual depth on a piece that is large enough: 1/8 in (common practice, no source).</summary>
    private static readonly Length UsualDepth = Length.Inch(0, 1, 8);

    /// <summary>Whether all sides are straight.</summary>
    public bool IsEmpty => this is { Left: null, Right: null, Top: null, Bottom: null };

    /// <summary>The form of a side.</summary>
    public EdgeCut? At(Edge edge) => edge switch
    {
        Edge.Left => Left,
        Edge.Right => Right,
        Edge.Top => Top,
        _ => Bottom,
    };

    /// <summary>
    /// How far the form of a side reaches into a piece of that size: as requested, at most <see cref="Deepest"/>; without a request
    /// 1/8 in, at most a quarter of the shorter side. Zero for a straight side.
    /// </summary>
    public Length DepthAt(Edge edge, Size size)
    {
        if (At(edge) is not { } cut)
        {
            return Length.Zero;
        }

        var usual = Length.Min(UsualDepth, Length.Min(size.Width, size.Height) / 4);
        return Length.Max(Length.Zero, Length.Min(cut.Depth ?? usual, Deepest(edge, size)));
    }

    /// <summary>The same forms on a piece of that size, those of some sides no deeper than that.</summary>
    public EdgeCuts AtMost(Size size, Length across, Length down)
    {
        return new(Limited(Edge.Left, across), Limited(Edge.Right, across), Top, Limited(Edge.Bottom, down));

        EdgeCut? Limited(Edge edge, Length most) =>
            At(edge) is { } cut ? cut with { Depth = Length.Max(Length.Zero, Length.Min(DepthAt(edge, size), most)) } : null;
    }

    /// <summary>
    /// The deepest form of a side on a piece of that size: three quarters of the size in that direction, half where the opposite side has a
    /// form too.
    /// </summary>
    public Length Deepest(Edge edge, Size size)
    {
        var across = edge is Edge.Left or Edge.Right ? size.Width : size.Height;
        return At(edge.Opposite()) is null ? across * 3 / 4 : across / 2;
    }
}
