namespace Sketch.Units;

/// <summary>Width across and height down.</summary>
public readonly record struct Size(Length Width, Length Height)
{
    /// <summary>The same sheet or card after a quarter turn.</summary>
    public Size Turned() => new(Height, Width);
}

/// <summary>A place on a face: right and down from its top left corner.</summary>
public readonly record struct Place(Length Left, Length Top);

/// <summary>An upright rectangle on a face, from its top left corner; x runs right, y down.</summary>
public readonly record struct Rect(Length Left, Length Top, Length Width, Length Height)
{
    /// <summary>The right edge.</summary>
    public Length Right => Left + Width;

    /// <summary>The bottom edge.</summary>
    public Length Bottom => Top + Height;

    /// <summary>Its size.</summary>
    public Size Size => new(Width, Height);

    /// <summary>The smallest rectangle that holds two others.</summary>
    public static Rect Cover(Rect a, Rect b)
    {
        var (left, top) = (Length.Min(a.Left, b.Left), Length.Min(a.Top, b.Top));
        return new(left, top, Length.Max(a.Right, b.Right) - left, Length.Max(a.Bottom, b.Bottom) - top);
    }

    /// <summary>The rectangle grown (or, with negative amounts, shrunk) on each side.</summary>
    public Rect Grow(Insets by) => new(Left - by.Left, Top - by.Top, Width + by.Left + by.Right, Height + by.Top + by.Bottom);
}

/// <summary>An amount for each of the four sides.</summary>
public readonly record struct Insets(Length Left, Length Top, Length Right, Length Bottom)
{
    /// <summary>The same amount on every side.</summary>
    public static Insets All(Length amount) => new(amount, amount, amount, amount);

    /// <summary>Whether all four sides are the same.</summary>
    public bool IsEven => Left == Right && Top == Bottom && Left == Top;
}

/// <summary>A side of a rectangle.</summary>
public enum Edge
{
    /// <summary>Left side.</summary>
    Left,

    /// <summary>Right side.</summary>
    Right,

    /// <summary>Top side.</summary>
    Top,

    /// <summary>Bottom side.</summary>
    Bottom,
}
