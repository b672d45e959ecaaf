using Sketch.Cutting.Model;

namespace Sketch.Cutting.PostProcessing;

/// <summary>The order in which layouts can be cut.</summary>
internal static class LayoutOrder
{
    /// <summary>
    /// Offcuts first, then sheets, then what pieces free: out of the largest pieces first, since a freed rectangle only gives pieces that
    /// are smaller than the one that it comes out of. Otherwise the order stays.
    /// </summary>
    public static IEnumerable<SheetLayout> Of(CuttingProblem problem, IEnumerable<SheetLayout> layouts)
    {
        var areas = problem.Pieces.ToDictionary(
            p => p.Id, p => p.Size.Width.Millimetres * p.Size.Height.Millimetres, StringComparer.Ordinal);
        return layouts.OrderBy(l => l.FreedBy is not null ? 2 : l.IsOffcut ? 0 : 1)
            .ThenByDescending(l => l.FreedBy is { } by ? areas.GetValueOrDefault(by) : 0);
    }
}
