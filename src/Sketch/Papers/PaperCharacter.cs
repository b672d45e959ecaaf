namespace Sketch.Papers;

/// <summary>What a paper is to a maker, whatever its colours: one is not swapped for another without being asked.</summary>
public enum PaperCharacter
{
    /// <summary>One colour: cardstock, kraft, an unprinted side.</summary>
    Plain,

    /// <summary>Patterned.</summary>
    Patterned,

    /// <summary>Foil.</summary>
    Foil,

    /// <summary>Pearl.</summary>
    Pearl,
}

/// <summary>The character of a paper.</summary>
public static class PaperCharacters
{
    /// <summary>The character of a paper that looks so.</summary>
    public static PaperCharacter Of(PaperLook look) => look.Pattern switch
    {
        _ when look.Pictured is not null => PaperCharacter.Patterned,
        PaperPattern.Foil => PaperCharacter.Foil,
        PaperPattern.Pearl => PaperCharacter.Pearl,
        _ => LookColours.IsPrinted(look) ? PaperCharacter.Patterned : PaperCharacter.Plain,
    };
}
