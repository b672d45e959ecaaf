using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Summary;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Planning;

/// <summary>The drawings of a plan, each with what it shows: the sheets as they are cut, then each design parted into layers.</summary>
public static class PlanFigures
{
    private const double Width = 180;
    private const double Height = 150;

    /// <summary>Plans a batch and draws its plan; nothing where it cannot be planned.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="world">The files that it names, and the fonts.</param>
    /// <param name="prefix">The beginning of all ids in these drawings; begins with a letter.</param>
    public static ImmutableArray<(string Caption, string Svg)> Of(SourceText batch, IWorld world, string prefix)
    {
        var findings = new FindingBag();
        if (BatchFiles.Read(batch, world, findings) is not { } files
            || BatchPlanner.Plan(files, BatchPlanner.UsualTime, findings) is not { } plan)
        {
            return [];
        }

        var pages = new PlanPages(plan, world);
        var lengths = files.Batch.Units.Format();
        return [.. pages.Work.Select(w => (w.Heading(lengths), pages.Diagram(w, Width, Height))),
            .. DesignInstructions.Of(files).Select((d, i) => (d.Title, pages.Picture(d, $"{prefix}{i}-")))];
    }
}
