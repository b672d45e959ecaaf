namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>A size name that does not exist or means two sizes.</summary>
    public static readonly FindingKind UnknownSize = Error("SK201", "unknown size name");

    /// <summary>A part that is not defined above.</summary>
    public static readonly FindingKind UnknownPart = Error("SK202", "unknown part");

    /// <summary>A name that leads to no piece.</summary>
    public static readonly FindingKind UnknownPiece = Error("SK203", "unknown piece");

    /// <summary>A name that several pieces have.</summary>
    public static readonly FindingKind AmbiguousName = Error("SK204", "name means several pieces");

    /// <summary>The same name twice among siblings.</summary>
    public static readonly FindingKind NameTwice = Error("SK205", "same name twice");

    /// <summary>Another file cannot be used.</summary>
    public static readonly FindingKind BadFile = Error("SK206", "other file cannot be used");

    /// <summary>Files that refer to each other in a circle.</summary>
    public static readonly FindingKind FileCircle = Error("SK207", "files refer to each other in a circle");

    /// <summary>A role or colour that is not declared.</summary>
    public static readonly FindingKind UnknownRole = Warning("SK210", "unknown role");

    /// <summary>A role that nothing uses.</summary>
    public static readonly FindingKind UnusedRole = Warning("SK211", "role is not used");

    /// <summary>A piece without a material.</summary>
    public static readonly FindingKind NoPaper = Warning("SK212", "no paper given");

    /// <summary>The number of texts does not match the number of copies.</summary>
    public static readonly FindingKind TextCount = Error("SK213", "texts do not match copies");

    /// <summary>Characters that the font does not have.</summary>
    public static readonly FindingKind MissingCharacter = Warning("SK214", "characters missing in the font");

    /// <summary>The font cannot be used.</summary>
    public static readonly FindingKind BadFont = Error("SK215", "font cannot be used");

    /// <summary>A base in millimetres or centimetres in a file that does not declare its units.</summary>
    public static readonly FindingKind MissingUnits = Note("SK216", "units not given");

    /// <summary>A base larger than any sheet that cards are made of.</summary>
    public static readonly FindingKind HugeBase = Warning("SK217", "base larger than any sheet");
}
