using Sketch.Binding;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>What clauses say of a shape besides its size.</summary>
internal static class ShapeStyles
{
    /// <summary>What is said of the shape besides its size.</summary>
    public static ShapeStyle Of(BoundPiece draft) => new()
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
}
