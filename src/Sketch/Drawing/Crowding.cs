namespace Sketch.Drawing;

/// <summary>How much there is to draw on a face; shadows are simplified first, as each is painted several times.</summary>
internal enum Crowding
{
    /// <summary>As on usual cards: shadows have all their layers.</summary>
    None,

    /// <summary>Many raised pieces, or raised pieces with long outlines: soft shadows have few layers.</summary>
    Crowded,

    /// <summary>Very many pieces of any kind: every shadow is one plain shape.</summary>
    Packed,
}
