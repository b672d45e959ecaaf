using System.Globalization;
using Sketch.Cutting.Model;
using Sketch.Planning.CutSteps;
using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>The numbers of the steps, each on the cuts of its step.</summary>
/// <param name="lettering">The letters.</param>
/// <param name="sheet">The sheet; the numbers stay within it.</param>
/// <param name="scale">From the paper to the drawing.</param>
/// <param name="taken">What is already written; the numbers are added.</param>
internal sealed class CutNumbers(Lettering lettering, Bounds sheet, DrawnScale scale, List<Bounds> taken)
{
    private const double Around = 0.75;
    private const double RoundEnds = 0.6;

    // If cuts are shorter than this, numbers on all of them would hide the pieces; one number then serves the cuts of its step this near to
    // it.
    private const double ShortCut = 14;
    private const double SameStepNear = 16;

    private readonly List<(int Step, Note Number)> _numbers = [];
    private readonly FreePlace _free = new(sheet, taken);

    /// <summary>Finds their places.</summary>
    public IReadOnlyList<Note> Of(IEnumerable<CutStep> steps)
    {
        foreach (var step in steps)
        {
            // A row of aligned cuts of one step has its number once at each end of the row.
            foreach (var row in step.Cuts.GroupBy(c => c.IsUpright ? (c.From.Top, c.To.Top) : (c.From.Left, c.To.Left)))
            {
                var cuts = row.ToList();
                Number(step.Number, cuts[0]);
                if (cuts.Count > 1)
                {
                    Number(step.Number, cuts[^1]);
                }
            }
        }

        return [.. _numbers.Select(n => n.Number)];
    }

    // On the cut if there is room, else beside it with a line to it; a cut among others of its step shares their number.
    private void Number(int step, Cut cut)
    {
        var words = step.ToString(CultureInfo.InvariantCulture);
        var height = Lettering.CapitalHeight(PageFlow.Points) + 2 * Around;
        var width = Math.Max(height, lettering.Width(words, PageFlow.Points) + 2 * Around + RoundEnds);
        var (from, to) = (scale.Of(cut.From), scale.Of(cut.To));
        var length = Math.Max(to.X - from.X, to.Y - from.Y);
        var isShown = _numbers.Exists(
            n => n.Step == step && n.Number.Box.Grow(SameStepNear).Overlaps(FreePlace.Around(On(0.5), width, height)));
        if (isShown && length < ShortCut)
        {
            return;
        }

        var half = (cut.IsUpright ? height : width) / 2;
        for (var along = Math.Min(half + RoundEnds, length / 2); along <= Math.Max(length - half, length / 2); along += half)
        {
            var box = FreePlace.Around(On(along / length), width, height);
            if (_free.IsFree(box))
            {
                Add(step, new(words, box, null));
                return;
            }
        }

        if (!isShown)
        {
            var target = FreePlace.Ends.Select(On).Where(_free.IsFree).Cast<Point?>().FirstOrDefault() ?? On(0.5);
            Add(step, new(words, _free.Near(target, width, height) ?? FreePlace.Around(target, width, height), target));
        }

        Point On(double share) => new(from.X + (to.X - from.X) * share, from.Y + (to.Y - from.Y) * share);
    }

    private void Add(int step, Note number)
    {
        taken.Add(number.Box);
        _numbers.Add((step, number));
    }
}
