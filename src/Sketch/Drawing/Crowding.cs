namespace Sketch.Drawing;

/// <summary>How much there is to draw on a face; shadows are the first to become simpler, as each is painted several times over.</summary>
internal enum Crowding
{
    /// <summary>As on every usual card: shadows are as soft as they come.</summary>
    None,

    /// <summary>So many raised pieces, or such long outlines of theirs, that soft shadows keep few layers.</summary>
    Crowded,

    /// <summary>So many pieces of any kind that every shadow is one plain shape.</summary>
    Packed,
}
