namespace Sketch.Units;

/// <summary>The words for edges, and which are opposite.</summary>
public static class Edges
{
    /// <summary>The word for an edge in files and sentences.</summary>
    public static string Name(this Edge edge) => edge switch
    {
        Edge.Left => "left",
        Edge.Right => "right",
        Edge.Top => "top",
        Edge.Bottom => "bottom",
        _ => throw new ArgumentOutOfRangeException(nameof(edge)),
    };

    /// <summary>The edge on the other side.</summary>
    public static Edge Opposite(this Edge edge) => edge switch
    {
        Edge.Left => Edge.Right,
        Edge.Right => Edge.Left,
        Edge.Top => Edge.Bottom,
        Edge.Bottom => Edge.Top,
        _ => throw new ArgumentOutOfRangeException(nameof(edge)),
    };
}
