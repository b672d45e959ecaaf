using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>
/// Searches for the nearest place clear of what is already written. Lengths are millimetres of the drawing.
/// </summary>
/// <param name="sheet">The area to stay within.</param>
/// <param name="taken">What is already written.</param>
internal sealed class FreePlace(Bounds sheet, IReadOnlyList<Bounds> taken)
{
    /// <summary>Fractions of a cut or side at which a leader line to it may end, best first.</summary>
    public static readonly ImmutableArray<double> Ends = [0.5, 0.2, 0.8];

    private const int Directions = 16;
    private const double Step = 1.5;

    private static readonly BoxMap _nothing = new([]);

    /// <summary>
    /// The free box nearest to a point, in rings of sixteen directions: preferably one whose line to the point crosses no text, else
    /// any; null if there is none.
    /// </summary>
    /// <param name="target">The point; the box does not cover it.</param>
    /// <param name="width">The box's width in millimetres, like all following lengths.</param>
    /// <param name="height">Its height.</param>
    public Bounds? Near(Point target, double width, double height)
    {
        var reach = sheet.Width + sheet.Height;
        return Clear(target, width, height, reach, _nothing)
            ?? Places(target, width, height, reach).Where(IsFree).Cast<Bounds?>().FirstOrDefault();
    }

    /// <summary>
    /// The nearest free box that a line joins to a point without crossing any text; null if there is none.
    /// </summary>
    /// <param name="target">The point.</param>
    /// <param name="width">The box's width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="reach">How far away it may begin.</param>
    /// <param name="avoided">What it must not cover either, although its line may cross it.</param>
    public Bounds? Clear(Point target, double width, double height, double reach, BoxMap avoided) =>
        Places(target, width, height, reach)
            .Where(p => IsFree(p) && !avoided.Overlaps(p) && !taken.Any(t => Crosses(target, p.Centre, t)))
            .Cast<Bounds?>().FirstOrDefault();

    /// <summary>Whether a box is on the sheet and clear of everything written.</summary>
    public bool IsFree(Bounds place) => sheet.Covers(place) && !taken.Any(t => t.Overlaps(place));

    /// <summary>Whether a point is clear of text.</summary>
    public bool IsFree(Point point) => !taken.Any(t => t.Left <= point.X && point.X <= t.Right && t.Top <= point.Y && point.Y <= t.Bottom);

    /// <summary>The box with its middle on a point.</summary>
    public static Bounds Around(Point centre, double width, double height) =>
        new(centre.X - width / 2, centre.Y - height / 2, centre.X + width / 2, centre.Y + height / 2);

    private static IEnumerable<Bounds> Places(Point target, double width, double height, double reach)
    {
        for (var away = Step; away <= reach; away += Step)
        {
            for (var direction = 0; direction < Directions; direction++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * direction / Directions);
                yield return Around(new(target.X + cos * (away + width / 2), target.Y + sin * (away + height / 2)), width, height);
            }
        }
    }

    // The part of the line between the box's sides and the part between its top and bottom overlap.
    private static bool Crosses(Point from, Point to, Bounds box)
    {
        var (start, end) = (0.0, 1.0);
        return Narrows(from.X, to.X - from.X, box.Left, box.Right) && Narrows(from.Y, to.Y - from.Y, box.Top, box.Bottom);

        bool Narrows(double at, double step, double low, double high)
        {
            if (Math.Abs(step) < 1e-9)
            {
                return low < at && at < high;
            }

            var (first, second) = ((low - at) / step, (high - at) / step);
            (start, end) = (Math.Max(start, Math.Min(first, second)), Math.Min(end, Math.Max(first, second)));
            return start < end;
        }
    }
}
