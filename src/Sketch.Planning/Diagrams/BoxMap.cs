using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>Boxes by where they lie, so that those near a place are found without looking at all of them.</summary>
internal sealed class BoxMap
{
    private const double Cell = 5;

    private readonly Dictionary<(int Column, int Row), List<int>> _cells = [];
    private readonly IReadOnlyList<Bounds> _boxes;

    /// <summary>A map of boxes, in millimetres.</summary>
    public BoxMap(IReadOnlyList<Bounds> boxes)
    {
        _boxes = boxes;
        for (var i = 0; i < boxes.Count; i++)
        {
            foreach (var cell in Cells(boxes[i]))
            {
                if (!_cells.TryGetValue(cell, out var within))
                {
                    _cells.Add(cell, within = []);
                }

                within.Add(i);
            }
        }
    }

    /// <summary>Whether any box overlaps this one.</summary>
    public bool Overlaps(Bounds place) => Near(place).Any(i => _boxes[i].Overlaps(place));

    /// <summary>The indexes of the boxes that may overlap this one, some of them more than once.</summary>
    public IEnumerable<int> Near(Bounds place) =>
        Cells(place).SelectMany(cell => _cells.TryGetValue(cell, out var within) ? within : Enumerable.Empty<int>());

    private static IEnumerable<(int Column, int Row)> Cells(Bounds box)
    {
        for (var column = At(box.Left); column <= At(box.Right); column++)
        {
            for (var row = At(box.Top); row <= At(box.Bottom); row++)
            {
                yield return (column, row);
            }
        }
    }

    private static int At(double place) => (int)Math.Floor(place / Cell);
}
