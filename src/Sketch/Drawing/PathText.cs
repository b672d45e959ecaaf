using System.Text;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>
/// Compact SVG path data for many figures in one element: to a thousandth of a millimetre unless fewer decimals are enough.
/// </summary>
/// <param name="decimals">Decimals of a millimetre.</param>
public sealed class PathText(int decimals = 3)
{
    private readonly StringBuilder _text = new();

    /// <summary>Whether nothing is drawn yet.</summary>
    public bool IsEmpty => _text.Length == 0;

    /// <summary>Begins a figure.</summary>
    public PathText Move(double x, double y) => Command('M').Pair(x, y);

    /// <summary>A straight line to a point.</summary>
    public PathText LineTo(double x, double y) => Command('L').Pair(x, y);

    internal PathText LineBy(double x, double y) => Command('l').Pair(x, y);

    internal PathText Across(double toX)
    {
        Command('H')._text.AppendNumber(toX, decimals);
        return this;
    }

    internal PathText Down(double toY)
    {
        Command('V')._text.AppendNumber(toY, decimals);
        return this;
    }

    /// <summary>A quadratic curve with one control point.</summary>
    internal PathText BowBy(double controlX, double controlY, double x, double y)
    {
        Command('q').Pair(controlX, controlY)._text.Append(' ');
        return Pair(x, y);
    }

    /// <summary>The preceding curve, mirrored about its end.</summary>
    internal PathText BowOnBy(double x, double y) => Command('t').Pair(x, y);

    internal PathText CurveTo(Point control1, Point control2, Point end)
    {
        Command('C').Pair(control1.X, control1.Y)._text.Append(' ');
        Pair(control2.X, control2.Y)._text.Append(' ');
        return Pair(end.X, end.Y);
    }

    /// <summary>A closed rectangle.</summary>
    public PathText Rectangle(double left, double top, double right, double bottom) =>
        Move(left, top).Across(right).Down(bottom).Across(left).End();

    /// <summary>Closes the figure.</summary>
    public PathText End() => Command('Z');

    /// <summary>The value of a <c>d</c> attribute.</summary>
    public override string ToString() => _text.ToString();

    private PathText Command(char letter)
    {
        _text.Append(letter);
        return this;
    }

    private PathText Pair(double x, double y)
    {
        _text.AppendNumber(x, decimals).Append(' ').AppendNumber(y, decimals);
        return this;
    }
}
