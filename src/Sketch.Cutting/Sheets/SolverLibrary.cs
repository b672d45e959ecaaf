using Google.OrTools.LinearSolver;

namespace Sketch.Cutting.Sheets;

/// <summary>
/// The native library that solves linear and integer programs. It is there for the common platforms only; elsewhere, or where it is
/// damaged, plans are made by construction alone and are proved only where an area bound meets them.
/// </summary>
public static class SolverLibrary
{
    private static readonly Lazy<bool> Loads = new(Load);

    /// <summary>Whether it loads on this machine.</summary>
    public static bool IsThere => Loads.Value;

    private static bool Load()
    {
        try
        {
            using var solver = Solver.CreateSolver("GLOP");
            return solver is not null;
        }
        catch (Exception exception) when (exception is DllNotFoundException or TypeInitializationException or BadImageFormatException
            or EntryPointNotFoundException)
        {
            return false;
        }
    }
}
