namespace Sketch.Planning.Post;

/// <summary>A measure that is not known exactly, since papers vary.</summary>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
public readonly record struct Spread(double Low, double High)
{
    /// <summary>A measure that is known.</summary>
    public static Spread Exactly(double value) => new(value, value);

    /// <summary>The sum.</summary>
    public static Spread operator +(Spread a, Spread b) => new(a.Low + b.Low, a.High + b.High);

    /// <summary>So many times as much.</summary>
    public static Spread operator *(Spread a, double factor) => new(a.Low * factor, a.High * factor);
}
