namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A paper that is not in the stash.</summary>
    public static readonly FindingKind UnknownPaper = Error("SK601", "unknown paper");

    /// <summary>A piece larger than every sheet of its paper.</summary>
    public static readonly FindingKind LargerThanItsPaper = Warning("SK602", "piece larger than its paper");

    /// <summary>Leftovers of a paper that the stash does not describe.</summary>
    public static readonly FindingKind OffcutOfUnknownPaper = Warning("SK603", "offcut of an unknown paper");

    /// <summary>A picture of a paper that cannot be used.</summary>
    public static readonly FindingKind BadPicture = Error("SK604", "picture cannot be used");
}
