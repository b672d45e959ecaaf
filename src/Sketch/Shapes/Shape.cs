namespace Sketch.Shapes;

/// <summary>The shapes that a piece can be cut to. Proportions are in <see cref="ShapeProportions"/>.</summary>
public enum Shape
{
    /// <summary>Four square corners, or round ones if a corner radius is given.</summary>
    Rectangle,

    /// <summary>As wide as high.</summary>
    Square,

    /// <summary>A rectangle whose corners are rounded even if no radius is given.</summary>
    Rounded,

    /// <summary>A circle; an ellipse where the box is not square.</summary>
    Circle,

    /// <summary>An ellipse.</summary>
    Oval,

    /// <summary>A star with one tip upwards.</summary>
    Star,

    /// <summary>A heart, point downwards.</summary>
    Heart,

    /// <summary>Six sides, corners to the left and right.</summary>
    Hexagon,

    /// <summary>Six sides, corners at the top and bottom: such tiles stand in rows and fit into each other.</summary>
    Tile,

    /// <summary>Half-round bumps all round: a circle in a square box, a rectangle in any other.</summary>
    Scallop,

    /// <summary>Straight sides under a half-round top.</summary>
    Arch,

    /// <summary>A gift tag: the upper corners cut off, a hole punched between them.</summary>
    Tag,

    /// <summary>A strip whose ends may be notched.</summary>
    Banner,

    /// <summary>A rectangle with a quarter of a circle cut out of each corner.</summary>
    Ticket,

    /// <summary>A rectangle with a square cut out of each corner.</summary>
    Notched,

    /// <summary>Four overlapping circles.</summary>
    Quatrefoil,

    /// <summary>A triangle that hangs by its upper side, point downwards.</summary>
    Pennant,

    /// <summary>A rectangle with a half-round notch for a thumb in its upper edge.</summary>
    Pocket,

    /// <summary>A drop: round at the bottom, with a point at the top.</summary>
    Drop,

    /// <summary>The silhouette of a tied bow: two loops, a knot and two tails.</summary>
    Bow,
}
