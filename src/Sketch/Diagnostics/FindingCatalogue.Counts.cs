namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A line of the log that is not an entry.</summary>
    public static readonly FindingKind BadEntry = Error("SK801", "entry cannot be read");

    /// <summary>An entry that takes back more than is counted.</summary>
    public static readonly FindingKind TakenTooMany = Error("SK802", "more taken back than counted");

    /// <summary>An entry that a killed program or a full disk cut off.</summary>
    public static readonly FindingKind TornEntry = Warning("SK803", "entry cut off");

    /// <summary>The same entry twice.</summary>
    public static readonly FindingKind EntryTwice = Warning("SK804", "entry written twice");

    /// <summary>An entry of a card or recipient that the batch does not have.</summary>
    public static readonly FindingKind CountedStranger = Warning("SK805", "counted but not in the batch");
}
