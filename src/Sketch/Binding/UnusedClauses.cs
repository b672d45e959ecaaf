using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Binding;

/// <summary>
/// Which clauses have an effect on which kinds of piece. One without effect is reported, since its author meant something by it.
/// </summary>
internal static class UnusedClauses
{
    /// <summary>What to write instead of a clause that has no effect on a piece, or null where it has one.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="piece">The piece, whose kind and shape matter.</param>
    /// <param name="repeats">Whether its line may make several copies.</param>
    public static string? HintFor(Clause clause, BoundPiece piece, bool repeats)
    {
        if (piece is { IsDamaged: true, Kind: PieceKind.Group })
        {
            return null;
        }

        if (BelongsElsewhere(clause) is { } elsewhere)
        {
            return elsewhere;
        }

        if (piece.Kind == PieceKind.Mat)
        {
            return clause is OfClause or BorderClause or ShadowClause or RaisedClause or WrapClause or TakeTurnsClause or EdgeCutClause
                or StitchedClause ? null
                : "Write it on the piece; a mat goes where its piece goes.";
        }

        var shape = piece.OutlineKind;
        return clause switch
        {
            BorderClause { Edge: null } when piece.Kind == PieceKind.Sentiment => null,
            BorderClause when piece.Kind == PieceKind.Sentiment => "The border of a sentiment is the same all round: border 1/8.",
            BorderClause => "A border belongs to a mat: write mat border 1/16 under the piece.",
            OfClause when piece.IsUse => "A part has its own papers; replace one: with deep as red.",
            OfClause when piece.Kind is PieceKind.Window or PieceKind.Group => $"A {piece.Kind.Name} has no paper; write of on its pieces.",
            ShadowClause when piece.Kind.Traits.Matter != PieceMatter.Paper =>
                $"A shadow is cut from paper like the piece above it; a {piece.Kind.Name} is not cut from paper.",
            WithClause when !piece.IsUse => "Roles are replaced where a part is used: use lantern, with deep as red.",
            ArrangeClause or GapClause or SpreadClause or StepClause or LinedUpClause or TakeTurnsClause when !repeats =>
                "This is a single piece; write a count before its kind, as in 3 gem 1/8, in a row.",
            SpreadClause or StepClause or LinedUpClause when piece.Rules.Arrange is { Clause.Arrangement: ArrangementKind.Honeycomb } =>
                "The rows of a honeycomb are as close as its copies: write gap 1/16.",
            GapClause gap when gap.Across != gap.Down && piece.Rules.Arrange is { Clause.Arrangement: ArrangementKind.Honeycomb } =>
                "A honeycomb has one gap all round: write gap 1/16.",
            ArchedClause when piece.Kind == PieceKind.Frame => null,
            EdgeCutClause when piece.Kind == PieceKind.Frame => null,
            InkClause or FontClause or ArchedClause or OnCircleClause or SpacedClause or RangedClause or CapitalsClause
                or MeasureClause { Word: "letters" } when !piece.Kind.Traits.HoldsWords =>
                $"A {piece.Kind.Name} holds no words; write them on a panel, or as text.",
            OnCircleClause when piece.Size is not null && piece.Kind.Traits.IsWords =>
                "The circle and the letters give the size: leave out the size, or write arched 60 in place of the circle.",
            InkClause when piece.Kind == PieceKind.Word => "Cut-out words have the colour of their paper: write of navy.",
            InkClause when piece.Kind == PieceKind.Text && !piece.Rules.Papers.IsEmpty =>
                "The clause with of names the ink of text; write only one of the two.",
            ShowingClause when piece.Kind.Traits.FollowsLetters => $"Its letters keep their proportions: write {piece.Kind.Name} 2 wide.",
            EdgeCutClause cut => HintForEdgeCut(cut, piece),
            StitchedClause or ScoredClause when piece.Kind.Traits.Matter != PieceMatter.Paper =>
                $"Only paper is stitched or scored; a {piece.Kind.Name} is not cut from paper.",
            ThroughClause when piece.Kind != PieceKind.Window => "Only a window is cut through: window circle 2, through.",
            FileClause when !shape.Traits.IsDrawing =>
                "A file gives the shape of an outline or a stamp: outline 2 wide, file \"boat.svg\".",
            LinesApartClause when piece.Kind != PieceKind.Ruled => "Writing lines are a separate piece: ruled 3 x 2, lines 5/16 apart.",
            MeasureClause { Word: "notch" } when shape == PieceKind.Pocket => null,
            SwallowtailClause or MeasureClause { Word: "notch" } when shape != PieceKind.Banner =>
                "A banner has a swallowtail: write banner in place of " + piece.Kind.Name + ".",
            MeasureClause { Word: "corners" } when !shape.Traits.HasCorners =>
                "Panels, strips, squares, rounded pieces and tickets have corners to round.",
            QuantityClause when shape != PieceKind.Star => "A star has points: star 2, 6 points.",
            WrapClause when !piece.Kind.Traits.CanWrap => "Only a panel, strip, line, banner, tape, ribbon or twine wraps around an edge.",
            MeasureClause { Word: "tails" } when !piece.Kind.Traits.HasTails =>
                "Tails hang from a ribbon or twine: ribbon full x 3/8, tails 2.",
            UsingClause when piece.Kind.Traits.Matter is not (PieceMatter.Paper or PieceMatter.Ink) || piece.Kind == PieceKind.Ruled =>
                "A die cuts paper, and a rubber stamp prints text, stamps and sentiments.",
            RaisedClause when piece.Kind.Traits.IsInkOrHole => "Raise the panel or strip that it is on.",
            TurnClause or TuckedClause when piece.Kind == PieceKind.Window => "A window is a hole; turn or tuck the piece that it cuts.",
            _ => null,
        };
    }

    private static string? HintForEdgeCut(EdgeCutClause cut, BoundPiece piece)
    {
        List<Edge> straight = piece.OutlineKind.Traits.Shape is { } shape
            ? [.. ShapeOutline.StraightSides(shape, piece.Rules.Style)] : [];
        return straight.Count == 0
            ? $"A {piece.OutlineKind.Name} has no straight side between right angles; write this on a panel or strip."
            : cut.Edge is { } edge && !straight.Contains(edge)
                ? $"A {piece.OutlineKind.Name} takes this only at the {string.Join(" and ", straight.Select(s => s.Name()))}."
            : null;
    }

    /// <summary>Whether the line of a piece may make several copies: it has a count, or a grid with rows.</summary>
    public static bool Repeats(BoundPiece piece) => piece.Count is not null || piece.Rules.Arrange is { Clause.Down: not null };

    /// <summary>The same for the clauses that an <c>item</c> line adds to one copy.</summary>
    public static string? HintForCopy(Clause clause, BoundPiece line) => clause switch
    {
        EdgeClause or CornerClause or CentreClause or BesideClause or OverClause or MeasuredFromClause or AlongClause or AroundClause
            or TuckedClause
            or ShowingClause => "The row places its copies; move one with shift up 1/8, or write it as a separate piece.",
        ArrangeClause or GapClause or SpreadClause or StepClause or LinedUpClause or TakeTurnsClause =>
            "Write it on the line above, for all copies.",
        _ => HintFor(clause, line, repeats: true),
    };

    private static string? BelongsElsewhere(Clause clause) => clause switch
    {
        FoldClause or FlagClause { Word: "landscape" } => "The base folds and lies landscape: write it on the base line.",
        FlagClause { Word: "by hand" } => "Write it on the envelope line: envelope US A2, by hand.",
        MeasureClause { Word: "flap" } => "An envelope has a flap: envelope US A2, flap 2.",
        SideClause => "A side is chosen where the role is declared: role sky: gulls, back.",
        QuantityClause { Noun: not "points" } or LongClause or TrimClause or WeightClause or PriceClause or SpareClause
            or CollectionClause or MadeByClause or FlagClause
            or MeasureClause { Word: "thick" or "kerf" or "blanks" or "hollow" } => "It belongs in a stash or batch file.",
        _ => null,
    };
}
