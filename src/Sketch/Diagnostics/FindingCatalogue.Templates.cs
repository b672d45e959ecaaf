namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A piece or face that would take more tiles than anyone would join.</summary>
    public static readonly FindingKind TooLargeForTemplates = Error("SK511", "a piece is too large to be printed even in tiles");

    /// <summary>A card without pieces.</summary>
    public static readonly FindingKind OnlyBase = Warning("SK512", "there is nothing on the card to cut");

    /// <summary>A piece that is larger than the page from which a machine cuts.</summary>
    public static readonly FindingKind TooLargeForMachine = Error("SK513", "a piece is larger than the page that a machine cuts it from");

    /// <summary>Layers that are not cut hollow, because too much lies on them.</summary>
    public static readonly FindingKind NotHollow = Note("SK514", "layers stay whole that could be cut hollow");
}
