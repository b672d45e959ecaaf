using Sketch.Diagnostics;

namespace Sketch.Checks;

/// <summary>One thing that a maker looks at before the paper is cut.</summary>
internal interface IFitRule
{
    /// <summary>Looks through the card and tells what is found; never changes it.</summary>
    void Check(FitView view, FindingBag findings);
}
