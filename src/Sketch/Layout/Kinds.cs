using Sketch.Binding;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>What each kind of piece is: its shape, its matter, and whether one number gives its size.</summary>
internal static class Kinds
{
    /// <summary>The shape of a kind's own outline; null for those that have none (groups, ink, words, artwork, frames).</summary>
    public static Shape? ShapeOf(BoundPiece draft) => (draft.Kind == "window" ? draft.Shape : draft.Kind) switch
    {
        "panel" or "strip" or "line" or "tape" or null => Shape.Rectangle,
        "square" => Shape.Square,
        "rounded" => Shape.Rounded,
        "circle" or "gem" => Shape.Circle,
        "oval" => Shape.Oval,
        "star" => Shape.Star,
        "heart" => Shape.Heart,
        "hexagon" => Shape.Hexagon,
        "scallop" => Shape.Scallop,
        "arch" => Shape.Arch,
        "tag" => Shape.Tag,
        "banner" => Shape.Banner,
        _ => null,
    };

    /// <summary>Whether a frame around it follows its outline; around groups, text and writing lines it is a rectangle.</summary>
    public static bool HasOutlineToFrame(BoundPiece draft) => draft.Kind is not ("group" or "text" or "ruled");

    public static PieceMatter MatterOf(BoundPiece draft) => draft.Kind switch
    {
        "text" or "stamp" or "ruled" => PieceMatter.Ink,
        "gem" or "tape" => PieceMatter.Ready,
        "window" => PieceMatter.Hole,
        "group" => PieceMatter.Unseen,
        _ => PieceMatter.Paper,
    };

    /// <summary>What is said of the shape besides its size.</summary>
    public static ShapeStyle StyleOf(BoundPiece draft) => new()
    {
        Points = draft.All<QuantityClause>().FirstOrDefault(q => q.Noun == "points")?.Count ?? ShapeStyle.Plain.Points,
        Corner = Measure(draft, "corners"),
        Notch = Measure(draft, "notch"),
        Swallowtail = draft.Find<SwallowtailClause>() switch
        {
            { Left: true, Right: true } => Swallowtail.Both,
            { Left: true } => Swallowtail.Left,
            { Right: true } => Swallowtail.Right,
            _ => Swallowtail.None,
        },
    };

    public static Length? Measure(BoundPiece draft, string word) => draft.All<MeasureClause>().FirstOrDefault(m => m.Word == word)?.Amount;

    /// <summary>Whether its outline is cut from a file's drawing or from words.</summary>
    public static bool IsArtwork(BoundPiece draft) => draft.Kind is "outline" or "stamp" || draft is { Kind: "window", Shape: "outline" };
}
