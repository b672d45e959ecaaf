namespace Sketch.Units;

/// <summary>The two directions of a face.</summary>
internal enum Axis
{
    /// <summary>From left to right.</summary>
    Across,

    /// <summary>From top to bottom.</summary>
    Down,
}

/// <summary>Which edges bound an axis.</summary>
internal static class AxisEdges
{
    /// <summary>The axis along which an edge lies low or high.</summary>
    public static Axis Axis(this Edge edge) => edge is Edge.Left or Edge.Right ? Units.Axis.Across : Units.Axis.Down;

    /// <summary>The edges at the low and the high end of an axis.</summary>
    public static (Edge Low, Edge High) Edges(this Axis axis) =>
        axis == Units.Axis.Across ? (Edge.Left, Edge.Right) : (Edge.Top, Edge.Bottom);
}
