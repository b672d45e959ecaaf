namespace Sketch.Diagnostics;

/// <summary>
/// Every kind of finding. Codes are permanent; a retired number is never used again.
/// SK0 files, SK1 spelling and grammar, SK2 names and values, SK3 layout, SK4 fit, SK5 output, SK6 shelf, SK7 cutting plan.
/// The parts of this class stand beside the stage that finds them.
/// </summary>
public static partial class FindingCatalogue
{
    private static FindingKind Error(string code, string title) => new(code, Severity.Error, title);

    private static FindingKind Warning(string code, string title) => new(code, Severity.Warning, title);

    private static FindingKind Note(string code, string title) => new(code, Severity.Note, title);
}
