namespace Sketch.Shapes;

/// <summary>The room between the slanted sides of a pennant, which narrows evenly from its upper side to its point.</summary>
internal static class PennantRoom
{
    /// <summary>The largest rectangle of those proportions under the upper side.</summary>
    /// <param name="pennant">The box of the pennant.</param>
    /// <param name="aspect">Width per height of the rectangle.</param>
    public static Bounds For(Bounds pennant, double aspect)
    {
        // At depth y the pennant is w (1 - y / h) wide, which is the width a y of the rectangle.
        var height = pennant.Width / (aspect + pennant.Width / pennant.Height);
        var half = aspect * height / 2;
        return new(pennant.Centre.X - half, pennant.Top, pennant.Centre.X + half, pennant.Top + height);
    }

    /// <summary>The width of the pennant of that height that holds a rectangle of that size under its upper side; null for none.</summary>
    public static double? WidthFor(double width, double height, double pennantHeight) =>
        height < pennantHeight ? width / (1 - height / pennantHeight) : null;
}
