using Sketch.Fuzz.Inputs;

namespace Sketch.Fuzz;

/// <summary>A part of the chain that is fed with random inputs.</summary>
internal interface IFuzzTarget
{
    /// <summary>A word for the command line; kept failures lie in a folder of this name.</summary>
    string Name { get; }

    /// <summary>How often it runs among all: an input of a lighter target takes less time.</summary>
    int Weight { get; }

    /// <summary>Makes an input.</summary>
    FuzzInput Make(Draws draws);

    /// <summary>Runs on an input, which may be of any form, as a failure is cut down until little is left of it.</summary>
    /// <exception cref="BrokenInvariantException">Something that always holds does not.</exception>
    void Run(FuzzInput input);
}
