namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A piece without a size.</summary>
    public static readonly FindingKind HowLarge = Error("SK301", "size not given");

    /// <summary>Sizes of one stack that contradict each other.</summary>
    public static readonly FindingKind SizesContradict = Error("SK302", "sizes contradict each other");

    /// <summary>Sizes or places that depend on each other in a circle.</summary>
    public static readonly FindingKind Circle = Error("SK303", "sizes or places in a circle");

    /// <summary>A size of zero or less.</summary>
    public static readonly FindingKind NothingLeft = Error("SK304", "nothing left of a piece");

    /// <summary>Two clauses that place a piece along the same axis.</summary>
    public static readonly FindingKind PlacedTwice = Error("SK305", "placed twice in one direction");

    /// <summary>More pieces than the layout takes.</summary>
    public static readonly FindingKind TooManyPieces = Error("SK306", "too many pieces");

    /// <summary>A place or size beyond a kilometre.</summary>
    public static readonly FindingKind TooFar = Error("SK307", "beyond a kilometre");

    /// <summary>Copies that need more room than there is.</summary>
    public static readonly FindingKind CopiesCrowd = Warning("SK308", "copies overlap");

    /// <summary>A piece tucked under something it cannot lie under.</summary>
    public static readonly FindingKind TuckedWrong = Error("SK309", "tucked under nothing");

    /// <summary>A grid that does not hold its copies.</summary>
    public static readonly FindingKind GridTooSmall = Error("SK310", "grid too small");

    /// <summary>A size or place that depends on too long a chain of other pieces.</summary>
    public static readonly FindingKind LongChain = Error("SK311", "chain of pieces too long");

    /// <summary>What a refit has changed.</summary>
    public static readonly FindingKind Refitted = Note("SK320", "refitted");
}
