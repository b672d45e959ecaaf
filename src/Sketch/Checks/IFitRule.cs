using Sketch.Diagnostics;

namespace Sketch.Checks;

/// <summary>One check that a maker does before cutting the paper.</summary>
internal interface IFitRule
{
    /// <summary>Examines the card and reports findings; never changes it.</summary>
    void Check(FitView view, FindingBag findings);
}
