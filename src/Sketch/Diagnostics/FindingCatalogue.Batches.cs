namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A file to plan that is not a batch.</summary>
    public static readonly FindingKind NoBatch = Error("SK701", "no batch");

    /// <summary>A batch that makes and cuts nothing.</summary>
    public static readonly FindingKind NothingToPlan = Error("SK702", "nothing to make or cut");

    /// <summary>A card to make that has errors.</summary>
    public static readonly FindingKind CardWithMistakes = Error("SK703", "card has errors");

    /// <summary>A role that a batch fills and the card does not have.</summary>
    public static readonly FindingKind NoSuchRole = Error("SK704", "card has no such role");

    /// <summary>A piece without a paper to cut it from.</summary>
    public static readonly FindingKind PaperNotGiven = Error("SK705", "paper not given");

    /// <summary>A design for a recipient that the batch does not have.</summary>
    public static readonly FindingKind NoSuchRecipient = Error("SK706", "batch has no such recipient");

    /// <summary>A line of the maker's own postal limits that cannot be read.</summary>
    public static readonly FindingKind BadPostLimits = Error("SK707", "postal limits cannot be read");

    /// <summary>A recipient with rules that the batch does not list.</summary>
    public static readonly FindingKind NoSuchRules = Error("SK708", "batch has no such rules");

    /// <summary>A line of a list of names that cannot be read as it should be.</summary>
    public static readonly FindingKind BadName = Error("SK709", "line of names cannot be read");

    /// <summary>Fewer sheets on hand than are needed.</summary>
    public static readonly FindingKind PaperShort = Error("SK710", "not enough paper");

    /// <summary>A piece that fits no sheet and no offcut.</summary>
    public static readonly FindingKind FitsNowhere = Error("SK711", "piece fits on no sheet");

    /// <summary>A piece that may come from any leftover, and no leftover is large enough.</summary>
    public static readonly FindingKind NoLeftover = Error("SK712", "no leftover large enough");

    /// <summary>Fewer supplies in the stash than are needed.</summary>
    public static readonly FindingKind SupplyShort = Error("SK713", "supply runs short");

    /// <summary>More pieces than one batch may order.</summary>
    public static readonly FindingKind BatchTooLarge = Error("SK714", "batch too large");

    /// <summary>A piece too small to be cut.</summary>
    public static readonly FindingKind TooSmallToCut = Error("SK715", "piece too small to cut");

    /// <summary>A maker whom the batch does not name.</summary>
    public static readonly FindingKind NoSuchMaker = Error("SK716", "batch has no such maker");

    /// <summary>A supply that is needed and not in the stash.</summary>
    public static readonly FindingKind SupplyMissing = Warning("SK720", "not in the stash");

    /// <summary>Fewer cards than the recipients need.</summary>
    public static readonly FindingKind TooFewCards = Warning("SK721", "too few cards");

    /// <summary>An estimate beyond what is in the stash.</summary>
    public static readonly FindingKind EstimateShort = Warning("SK722", "supply may run short");

    /// <summary>Fewer cards of the designs that a recipient gets than it needs.</summary>
    public static readonly FindingKind TooFewForRecipient = Warning("SK723", "too few cards for a recipient");

    /// <summary>A rule that is nearly one that is checked.</summary>
    public static readonly FindingKind RuleMisspelt = Warning("SK724", "rule not understood");

    /// <summary>A card that breaks a rule of a recipient.</summary>
    public static readonly FindingKind RuleBroken = Warning("SK725", "against a rule of a recipient");

    /// <summary>More or fewer people in a list of names than cards for them.</summary>
    public static readonly FindingKind NamesDoNotMatch = Warning("SK726", "names and cards differ in number");

    /// <summary>A message with a place for a name, for a recipient without names.</summary>
    public static readonly FindingKind NoNames = Warning("SK727", "message without names");

    /// <summary>A die or rubber stamp that does not suit its piece.</summary>
    public static readonly FindingKind ToolDoesNotFit = Warning("SK728", "die or stamp does not fit its piece");

    /// <summary>How the cards add up.</summary>
    public static readonly FindingKind CardsAddUp = Note("SK730", "how the cards add up");

    /// <summary>What is left to cut according to the count.</summary>
    public static readonly FindingKind LeftToCut = Note("SK732", "what is left to cut");

    /// <summary>A plan not proved to need the fewest sheets.</summary>
    public static readonly FindingKind NotProved = Note("SK731", "fewest sheets not proved");

    /// <summary>A sheet that is cut for one small piece alone.</summary>
    public static readonly FindingKind LonePiece = Note("SK733", "sheet cut for a single piece");
}
