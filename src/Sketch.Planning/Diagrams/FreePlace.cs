using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>
/// Looks for the nearest place where something can stand clear of what is written already. Lengths are millimetres of the drawing.
/// </summary>
/// <param name="sheet">What it stays within.</param>
/// <param name="taken">What is written already.</param>
internal sealed class FreePlace(Bounds sheet, IReadOnlyList<Bounds> taken)
{
    /// <summary>Shares of a cut or side at which a line to what stands beside it may end, the best first.</summary>
    public static readonly ImmutableArray<double> Ends = [0.5, 0.2, 0.8];

    private const int Directions = 16;
    private const double Step = 1.5;

    /// <summary>
    /// The free box nearest to a point, in rings of sixteen directions: rather one whose line to the point crosses nothing written, else
    /// any; null when there is none.
    /// </summary>
    /// <param name="target">The point; the box does not cover it.</param>
    /// <param name="width">The box's width in millimetres, as all that follows.</param>
    /// <param name="height">Its height.</param>
    public Bounds? Near(Point target, double width, double height)
    {
        var reach = sheet.Width + sheet.Height;
        return Clear(target, width, height, reach, [])
            ?? Places(target, width, height, reach).Where(IsFree).Cast<Bounds?>().FirstOrDefault();
    }

    /// <summary>
    /// The free box nearest to a point that a line joins to it without crossing anything written; null when there is none.
    /// </summary>
    /// <param name="target">The point.</param>
    /// <param name="width">The box's width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="reach">How far away it may begin.</param>
    /// <param name="avoided">What it does not cover either, though its line may cross it.</param>
    public Bounds? Clear(Point target, double width, double height, double reach, IReadOnlyList<Bounds> avoided) =>
        Places(target, width, height, reach)
            .Where(p => IsFree(p) && !avoided.Any(a => a.Overlaps(p)) && !taken.Any(t => Crosses(target, p.Centre, t)))
            .Cast<Bounds?>().FirstOrDefault();

    /// <summary>Whether a box is on the sheet and clear of all that is written.</summary>
    public bool IsFree(Bounds place) => sheet.Covers(place) && !taken.Any(t => t.Overlaps(place));

    /// <summary>Whether nothing is written on a point.</summary>
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

    // The part of the line between the box's sides and the part between its top and foot have something in common.
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
