using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Amounts on the four sides of a face or piece, for sentences.</summary>
internal static class Sides
{
    public static readonly Edge[] All = [Edge.Left, Edge.Right, Edge.Top, Edge.Bottom];

    public static Length On(this Insets insets, Edge side) => side switch
    {
        Edge.Left => insets.Left,
        Edge.Right => insets.Right,
        Edge.Top => insets.Top,
        Edge.Bottom => insets.Bottom,
        _ => throw new ArgumentOutOfRangeException(nameof(side)),
    };

    public static Insets Of(Func<Edge, Length> amount) => new(amount(Edge.Left), amount(Edge.Top), amount(Edge.Right), amount(Edge.Bottom));

    /// <summary>The larger amount on each side.</summary>
    public static Insets Larger(Insets a, Insets b) => Of(s => Length.Max(a.On(s), b.On(s)));
}
