namespace Sketch.Templates;

/// <summary>The meaning of a line on a template. The kinds are drawn so that they can be distinguished without colour.</summary>
public enum LineKind
{
    /// <summary>Cut through, outside or inside: a solid line.</summary>
    Cut,

    /// <summary>Score and fold: a dashed line.</summary>
    Fold,

    /// <summary>A piece goes here: a dotted line.</summary>
    Place,

    /// <summary>The edge of the card or envelope that pieces are placed on: a thin solid line, not to be cut.</summary>
    Edge,

    /// <summary>Arrows, leaders, crosses for joining tiles and letters to stamp: thin solid lines, not to be cut.</summary>
    Mark,
}
