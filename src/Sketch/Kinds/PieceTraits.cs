using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Kinds;

/// <summary>What distinguishes a kind of piece; all rules that depend on a kind read these.</summary>
/// <param name="Word">Its word in the language.</param>
/// <param name="Matter">What such a piece physically is.</param>
public sealed record PieceTraits(string Word, PieceMatter Matter = PieceMatter.Paper)
{
    /// <summary>The shape of its own outline; null for groups, words, frames, ink and drawings.</summary>
    public Shape? Shape { get; init; }

    /// <summary>Whether it lies beneath another piece of the same outline: mats and shadows.</summary>
    public bool IsLayer { get; init; }

    /// <summary>Whether it is written on a line of its own; a shadow is a clause of the piece above it.</summary>
    public bool HasLine { get; init; } = true;

    /// <summary>Whether its word names a shape, which a window may have too.</summary>
    public bool IsShape { get; init; }

    /// <summary>Whether the word of a shape may follow its own, as in <c>window circle 2</c>.</summary>
    public bool TakesShape { get; init; }

    /// <summary>Whether its outline is a drawing from a file.</summary>
    public bool IsDrawing { get; init; }

    /// <summary>Whether it consists of words, so that they give its proportions.</summary>
    public bool IsWords { get; init; }

    /// <summary>Whether its outline follows its letters, so that it cannot be stretched.</summary>
    public bool FollowsLetters { get; init; }

    /// <summary>Whether words may be written on it, or are what it consists of.</summary>
    public bool HoldsWords { get; init; } = true;

    /// <summary>Whether a frame around it follows its outline; around others it is a rectangle.</summary>
    public bool HasOutlineToFrame { get; init; } = true;

    /// <summary>Whether its corners may be rounded.</summary>
    public bool HasCorners { get; init; }

    /// <summary>Whether it may wrap around the edge of what it lies on.</summary>
    public bool CanWrap { get; init; }

    /// <summary>Whether it is cut along a ruler, so that both its sides should lie on marks.</summary>
    public bool IsCutByRuler { get; init; }

    /// <summary>Whether one number is its thickness.</summary>
    public bool IsSizedByThickness { get; init; }

    /// <summary>Whether it is cut to length from a roll or strip of its own width: lines, tape, ribbon, twine.</summary>
    public bool IsCutToLength { get; init; }

    /// <summary>Whether two loose ends may hang from its middle.</summary>
    public bool HasTails { get; init; }

    /// <summary>
    /// Whether it is a hard part that can be swallowed: 16 CFR 1501 exempts paper, fabric, yarn and string from its rule on small parts.
    /// </summary>
    public bool IsSmallPart { get; init; }

    /// <summary>The thickness of what is ready-made; zero where it depends on the width (common practice, no source).</summary>
    public Length Thickness { get; init; }

    /// <summary>How many times as wide as thick a ready-made thing is; 0 if its thickness is fixed (common practice, no source).</summary>
    public int WidthsPerThickness { get; init; }

    /// <summary>Whether copies without a size share the room equally.</summary>
    public bool SharesRoom { get; init; } = true;

    /// <summary>Whether one number written on it measures both directions the same, so that a label need not name it.</summary>
    public bool IsSizedByOneNumber { get; init; }

    /// <summary>Whether nothing can lie on it, lie under it as a mat, or raise it: ink and holes.</summary>
    public bool IsInkOrHole => Matter is PieceMatter.Ink or PieceMatter.Hole;

    /// <summary>The thickness of a ready-made thing of that size; zero for what has none of its own.</summary>
    public Length ThicknessAt(Size size) =>
        WidthsPerThickness == 0 ? Thickness : Length.Min(size.Width, size.Height) / WidthsPerThickness;

    /// <summary>Whether mats may lie under it.</summary>
    public bool TakesMats => !IsInkOrHole && Matter != PieceMatter.Unseen;
}
