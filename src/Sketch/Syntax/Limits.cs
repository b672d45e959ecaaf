namespace Sketch.Syntax;

/// <summary>
/// Limits on the size of a card, so that every text compiles within seconds and a few hundred megabytes. No real card comes near them;
/// whatever exceeds a limit is left out and reported. <c>LANGUAGE.md</c> lists them all.
/// </summary>
public static class Limits
{
    /// <summary>Characters in a file.</summary>
    public const int Characters = 1_000_000;

    /// <summary>How deep lines may be nested.</summary>
    public const int Depth = 64;

    /// <summary>How deep pieces may be nested once the parts are expanded.</summary>
    public const int DepthWithParts = 2 * Depth;

    /// <summary>Lines of a card without indentation.</summary>
    public const int Lines = 2_000;

    /// <summary>Copies of a line.</summary>
    public const int Copies = 500;

    /// <summary>Pieces with their mats, counted for every copy.</summary>
    public const int Pieces = 500;

    /// <summary>Mats beneath one piece.</summary>
    public const int Mats = 20;

    /// <summary>Letters, counted for every copy: each is drawn as an outline.</summary>
    public const int Letters = 4_500;

    /// <summary>Letters of cut-out words, counted for every copy: each is also grown for every mat.</summary>
    public const int CutOutLetters = 150;

    /// <summary>
    /// Corners and curves of all outlines but those of <c>text</c>, with mats and the holes in each layer. A grown mat counts with its own
    /// corners: round joins have many.
    /// </summary>
    public const int Corners = 12_500;

    /// <summary>Windows.</summary>
    public const int Windows = 200;

    /// <summary>Holes cut by windows, counted in every layer that they go through.</summary>
    public const int Holes = 400;

    /// <summary>The weight of each corner and curve of a hole in the count of corners: cutting holes takes longer than drawing.</summary>
    public const int HoleCorner = 5;

    /// <summary>Siblings with other pieces tucked under them.</summary>
    public const int Tucked = 500;

    /// <summary>Length of a chain of pieces whose sizes or places depend on each other.</summary>
    public const int Chain = 250;

    /// <summary>Length of a chain of cards in which each is like the next.</summary>
    public const int LikeCards = 20;
}
