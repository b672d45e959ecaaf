using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Axes and signs of directions and sides.</summary>
internal static class Directions
{
    /// <summary>The axis along which a direction moves.</summary>
    public static Axis Axis(this Direction direction) =>
        direction is Direction.Left or Direction.Right ? Units.Axis.Across : Units.Axis.Down;

    /// <summary>1 to the right and down, -1 to the left and up.</summary>
    public static int Sign(this Direction direction) => direction is Direction.Right or Direction.Down ? 1 : -1;

    /// <summary>The axis along which a piece on this side is next to another.</summary>
    public static Axis Axis(this Side side) => side is Side.LeftOf or Side.RightOf ? Units.Axis.Across : Units.Axis.Down;
}
