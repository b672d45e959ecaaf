namespace Sketch.Syntax;

/// <summary>
/// How much a card may ask for, so that every text is answered within seconds and a few hundred megabytes. No real card comes near;
/// whatever exceeds a limit is left out and reported. <c>LANGUAGE.md</c> lists them all.
/// </summary>
public static class Limits
{
    /// <summary>Characters in a file.</summary>
    public const int Characters = 1_000_000;

    /// <summary>How deep lines may lie on lines.</summary>
    public const int Depth = 64;

    /// <summary>How deep pieces may lie on pieces once the parts are spelt out.</summary>
    public const int DepthWithParts = 2 * Depth;

    /// <summary>Lines of a card without indentation.</summary>
    public const int Lines = 2_000;

    /// <summary>Copies of a line.</summary>
    public const int Copies = 500;

    /// <summary>Pieces with their mats, counted on every copy.</summary>
    public const int Pieces = 500;

    /// <summary>Mats beneath one piece.</summary>
    public const int Mats = 20;

    /// <summary>Letters, counted on every copy: each is drawn by its outline.</summary>
    public const int Letters = 5_000;

    /// <summary>Letters that are cut out as words, counted on every copy: each is also grown for every mat.</summary>
    public const int CutOutLetters = 150;

    /// <summary>
    /// Corners and curves of all outlines but those of <c>text</c>, with mats and the holes in each layer. A grown mat counts with its own
    /// corners: round joins have many.
    /// </summary>
    public const int Corners = 25_000;

    /// <summary>Windows.</summary>
    public const int Windows = 200;

    /// <summary>Holes that windows cut, counted in every layer that they go through.</summary>
    public const int Holes = 400;

    /// <summary>What each corner and curve of a hole counts for against the corners, as cutting holes takes longer than drawing.</summary>
    public const int HoleCorner = 10;

    /// <summary>Siblings under which others are tucked.</summary>
    public const int Tucked = 500;

    /// <summary>Other pieces through which a size or place is reached.</summary>
    public const int Chain = 250;

    /// <summary>Cards each like the next.</summary>
    public const int LikeCards = 20;
}
