using Sketch.Batches;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Demand;

/// <summary>
/// The rectangle from which a shape is cut by its template. A shape needs no exact rectangle, so the sides of a blank lie on ruler marks.
/// </summary>
internal static class Blank
{
    private const double Tolerance = 1e-6;

    /// <summary>Whether a piece is a shape that is cut from a blank, and not a rectangle that is cut by a ruler.</summary>
    public static bool IsFor(Piece piece, Batch batch) =>
        batch.BlankStep != Length.Zero && !piece.Kind.Traits.IsCutByRuler && !IsRectangle(piece.Outline);

    /// <summary>The size of the blank: each side rounded up to the step of the batch, 1/16 in or 1 mm if it names none.</summary>
    public static Size Of(Size exact, Batch batch)
    {
        var step = batch.BlankStep ?? (batch.Units == UnitSystem.Inches ? Length.Inch(0, 1, 16) : Length.Millimetre(1));
        Length Up(Length side) => new((side.Nanometres + step.Nanometres - 1) / step.Nanometres * step.Nanometres);
        return new(Up(exact.Width), Up(exact.Height));
    }

    // Holes do not matter: a mat with a window is a rectangle all the same.
    private static bool IsRectangle(Outline outline)
    {
        var bounds = outline.Bounds;
        return outline.Contours.Any(c => c.Bounds == bounds && c.Segments.All(s => s.IsLine)
            && c.Segments.Select(s => s.End).Prepend(c.Start)
                .All(p => IsAt(p.X, bounds.Left, bounds.Right) && IsAt(p.Y, bounds.Top, bounds.Bottom)));
    }

    private static bool IsAt(double place, double first, double last) =>
        Math.Abs(place - first) < Tolerance || Math.Abs(place - last) < Tolerance;
}
