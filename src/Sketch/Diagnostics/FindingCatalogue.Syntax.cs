namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>The file is not text, is too large or cannot be read.</summary>
    public static readonly FindingKind Unreadable = Error("SK001", "file cannot be read");

    /// <summary>The file contains nothing to make.</summary>
    public static readonly FindingKind NothingToMake = Error("SK002", "nothing in the file");

    /// <summary>A character that means nothing here.</summary>
    public static readonly FindingKind StrayCharacter = Error("SK101", "stray character");

    /// <summary>A number that cannot be read.</summary>
    public static readonly FindingKind BadNumber = Error("SK102", "number cannot be read");

    /// <summary>A # that is neither comment nor colour.</summary>
    public static readonly FindingKind BadHash = Error("SK103", "neither comment nor colour");

    /// <summary>Quoted words without the closing quote.</summary>
    public static readonly FindingKind OpenQuote = Error("SK104", "closing quote missing");

    /// <summary>Tabs and spaces mixed in indentation.</summary>
    public static readonly FindingKind MixedIndent = Error("SK105", "tabs and spaces mixed");

    /// <summary>Indentation that matches no open line.</summary>
    public static readonly FindingKind BadIndent = Error("SK106", "indentation matches no line above");

    /// <summary>Nested too deep.</summary>
    public static readonly FindingKind TooDeep = Error("SK107", "nested too deep");

    /// <summary>A comma at the end of a line joins it to a line that is separate.</summary>
    public static readonly FindingKind TrailingComma = Error("SK108", "line ends in a comma");

    /// <summary>A line that begins with an unknown word.</summary>
    public static readonly FindingKind UnknownLine = Error("SK110", "line not understood");

    /// <summary>A clause that begins with an unknown word.</summary>
    public static readonly FindingKind UnknownClause = Error("SK111", "clause not understood");

    /// <summary>Something expected is missing.</summary>
    public static readonly FindingKind Expected = Error("SK112", "something is missing");

    /// <summary>Words left over at the end of a clause.</summary>
    public static readonly FindingKind LeftOver = Error("SK113", "comma missing or words left over");

    /// <summary>A name that is a word of the language.</summary>
    public static readonly FindingKind ReservedName = Error("SK114", "name is a word of the language");

    /// <summary>A line in a place where it does not belong.</summary>
    public static readonly FindingKind Misplaced = Error("SK115", "line in the wrong place");

    /// <summary>A clause that has no effect on this kind of thing.</summary>
    public static readonly FindingKind IdleClause = Error("SK116", "clause does not belong here");

    /// <summary>The same thing given twice.</summary>
    public static readonly FindingKind GivenTwice = Error("SK117", "given twice");

    /// <summary>A size that its kind cannot have.</summary>
    public static readonly FindingKind BadSize = Error("SK118", "size does not suit its kind");

    /// <summary>A count that is too large or zero.</summary>
    public static readonly FindingKind BadCount = Error("SK119", "count out of range");
}
