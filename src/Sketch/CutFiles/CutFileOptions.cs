using Sketch.Templates;
using Sketch.Units;

namespace Sketch.CutFiles;

/// <summary>Options for files that machines cut from.</summary>
/// <param name="Page">The sheet to cut from.</param>
/// <param name="Gap">The least distance between pieces, and from a piece to the edge of the sheet.</param>
/// <param name="Copies">How many of each card.</param>
/// <param name="IsMirrored">Whether all is mirrored, for what is cut from the back.</param>
/// <param name="Hollow">The margin for glue round the hidden part of a layer, which is cut out; null to leave layers whole.</param>
/// <param name="OnlyShapes">Whether plain rectangles are left out, which a trimmer cuts as well.</param>
public sealed record CutFileOptions(
    PageFormat Page, Length Gap, int Copies = 1, bool IsMirrored = false, GlueMargin? Hollow = null, bool OnlyShapes = false)
{
    /// <summary>The usual gap, 1/8 in (common practice, no source).</summary>
    public static readonly Length UsualGap = Length.Inch(0, 1, 8);

    /// <summary>The most copies of a card.</summary>
    public const int MostCopies = 200;
}
