using Sketch.Shapes;

namespace Sketch.Planning;

/// <summary>Looks for the nearest place where something can stand clear of what is written already.</summary>
internal static class FreePlace
{
    private const int Directions = 16;
    private const double Step = 1.5;

    /// <summary>The free box nearest to a point, in rings of sixteen directions; null when there is none within reach.</summary>
    /// <param name="target">The point; the box does not cover it.</param>
    /// <param name="width">The box's width in millimetres, as all that follows.</param>
    /// <param name="height">Its height.</param>
    /// <param name="reach">How far away it may begin.</param>
    /// <param name="sheet">What it stays within.</param>
    /// <param name="avoided">What it does not overlap.</param>
    public static Bounds? Near(Point target, double width, double height, double reach, Bounds sheet, IReadOnlyList<Bounds> avoided)
    {
        for (var away = Step; away <= reach; away += Step)
        {
            for (var direction = 0; direction < Directions; direction++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * direction / Directions);
                var place = Around(new(target.X + cos * (away + width / 2), target.Y + sin * (away + height / 2)), width, height);
                if (sheet.Covers(place) && !avoided.Any(a => a.Overlaps(place)))
                {
                    return place;
                }
            }
        }

        return null;
    }

    /// <summary>The box with its middle on a point.</summary>
    public static Bounds Around(Point centre, double width, double height) =>
        new(centre.X - width / 2, centre.Y - height / 2, centre.X + width / 2, centre.Y + height / 2);
}
