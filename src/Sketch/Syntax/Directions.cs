using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>What the words for directions and sides mean along an axis.</summary>
internal static class Directions
{
    /// <summary>The axis along which a direction moves.</summary>
    public static Axis Axis(this Direction direction) =>
        direction is Direction.Left or Direction.Right ? Units.Axis.Across : Units.Axis.Down;

    /// <summary>1 to the right and down, -1 to the left and up.</summary>
    public static int Sign(this Direction direction) => direction is Direction.Right or Direction.Down ? 1 : -1;

    /// <summary>The axis along which a side lies next to a piece.</summary>
    public static Axis Axis(this Side side) => side is Side.LeftOf or Side.RightOf ? Units.Axis.Across : Units.Axis.Down;
}
