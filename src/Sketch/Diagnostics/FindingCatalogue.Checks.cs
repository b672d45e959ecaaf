namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A piece that reaches past the edge of its face.</summary>
    public static readonly FindingKind PastTheEdge = Warning("SK401", "past the edge of the face");

    /// <summary>A piece that reaches across the fold.</summary>
    public static readonly FindingKind AcrossTheFold = Warning("SK402", "across the fold");

    /// <summary>A raised piece that reaches past the edge of its face.</summary>
    public static readonly FindingKind RaisedOverTheEdge = Warning("SK403", "raised over the edge");

    /// <summary>A piece that reaches over the edge of what it lies on.</summary>
    public static readonly FindingKind OverItsParent = Note("SK404", "hangs over its parent");

    /// <summary>A piece that ties the doors of a gate fold together.</summary>
    public static readonly FindingKind AcrossBothDoors = Warning("SK405", "across both doors");

    /// <summary>A piece that is completely hidden.</summary>
    public static readonly FindingKind HiddenCompletely = Warning("SK411", "hidden completely");

    /// <summary>Too many pieces to check all of them for being hidden.</summary>
    public static readonly FindingKind HidingNotExamined = Note("SK412", "not checked for being hidden");

    /// <summary>A mat that shows uneven borders although no clause asks for them.</summary>
    public static readonly FindingKind UnevenMat = Note("SK421", "mat border uneven");

    /// <summary>A mat that shows too little to be cut and glued straight.</summary>
    public static readonly FindingKind NarrowMat = Warning("SK422", "mat border very narrow");

    /// <summary>A cut size that is not on a sixteenth of an inch.</summary>
    public static readonly FindingKind OffTheRuler = Note("SK431", "cut size off the ruler");

    /// <summary>A piece that falls into several parts when cut, such as letters that do not touch.</summary>
    public static readonly FindingKind FallsApart = Note("SK432", "falls into parts");

    /// <summary>A cut-out word or drawing has places too thin to be cut by hand.</summary>
    public static readonly FindingKind TooThinToCut = Note("SK433", "too thin to cut by hand");

    /// <summary>Words too large for their piece.</summary>
    public static readonly FindingKind WordsTooBig = Warning("SK441", "words do not fit");

    /// <summary>Words with too little contrast with what they lie on.</summary>
    public static readonly FindingKind WordsTooFaint = Warning("SK442", "words too faint");

    /// <summary>Light words on a paper that shimmers.</summary>
    public static readonly FindingKind WordsShimmer = Note("SK443", "light words on a shimmering paper");

    /// <summary>Letters too small for older readers.</summary>
    public static readonly FindingKind LettersTooSmall = Note("SK444", "letters too small to read well");

    /// <summary>Words inside that are also on the front.</summary>
    public static readonly FindingKind RepeatsTheFront = Warning("SK445", "words of the front repeated inside");

    /// <summary>A message that does not fit its place.</summary>
    public static readonly FindingKind MessageTooLong = Warning("SK446", "message does not fit");

    /// <summary>A message without a place inside the card.</summary>
    public static readonly FindingKind MessageWithoutPlace = Warning("SK447", "message has no place");

    /// <summary>A card that does not go into its envelope.</summary>
    public static readonly FindingKind TooLargeForEnvelope = Warning("SK451", "too large for its envelope");

    /// <summary>An envelope with little room to spare.</summary>
    public static readonly FindingKind TightEnvelope = Warning("SK452", "tight in its envelope");

    /// <summary>An envelope that a flat card fits, but with less room than usual.</summary>
    public static readonly FindingKind CloseEnvelope = Note("SK453", "close in its envelope");

    /// <summary>Ends that overlap behind what they wrap.</summary>
    public static readonly FindingKind WrapTooLong = Warning("SK461", "wrap too long");

    /// <summary>A front thicker than letters may be.</summary>
    public static readonly FindingKind TooThick = Warning("SK471", "too thick for a letter");

    /// <summary>An envelope whose size or shape makes it dearer than a plain letter.</summary>
    public static readonly FindingKind NoPlainLetter = Note("SK472", "no plain letter");
}
