using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>The mapping from places on a sheet of paper to places in its drawing.</summary>
/// <param name="Factor">Millimetres drawn per millimetre of paper.</param>
internal readonly record struct DrawnScale(double Factor)
{
    /// <summary>Where a place is drawn.</summary>
    public Point Of(Place place) => new(place.Left.Millimetres * Factor, place.Top.Millimetres * Factor);

    /// <summary>Where a rectangle is drawn.</summary>
    public Bounds Of(Rect rect)
    {
        var bounds = Bounds.Of(rect);
        return new(bounds.Left * Factor, bounds.Top * Factor, bounds.Right * Factor, bounds.Bottom * Factor);
    }
}
