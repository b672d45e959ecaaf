using Sketch.Cutting.Model;
using Sketch.Cutting.Sheets;

namespace Sketch.Cutting.PostProcessing;

/// <summary>How often the stop of the trimmer is set for a sheet: once for each distance at which one of its parts is cut.</summary>
internal sealed class StopSettings(CuttingProblem problem)
{
    private static readonly HashSet<long> _noSettings = [];

    private readonly Dictionary<string, int> _known = [];

    /// <summary>The settings of a sheet that is cut by itself.</summary>
    public int Of(Pattern pattern)
    {
        if (!_known.TryGetValue(pattern.Key, out var settings))
        {
            var part = CutOrder.For(pattern.Tree, pattern.Stock.Width, pattern.Stock.Height, problem.Kerf.Nanometres,
                problem.SmallestUse.Nanometres, _noSettings);
            settings = _known[pattern.Key] = part.InOrder().OfType<CutPart>()
                .Select(c => c.SideBySide ? c.First.Width : c.First.Height).Distinct().Count();
        }

        return settings;
    }
}
