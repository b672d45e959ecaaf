using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Reports sizes that a kind of piece cannot have, once per line.</summary>
internal sealed class SuitedSizes(UnitSystem units, FindingBag findings)
{
    /// <summary>The difference that rounding may leave between two sides meant to be equal: a thousandth of a millimetre.</summary>
    private static readonly Length Rounding = new(1000);

    private readonly HashSet<(Location, FindingKind)> _reported = [];

    /// <summary>Checks a piece at its computed size.</summary>
    public void Check(Node node, Size size)
    {
        var shape = node.Bound.OutlineKind.Traits.Shape;
        if (shape is Shape.Square or Shape.Circle && (size.Width - size.Height).Abs() > Rounding)
        {
            var kind = node.Bound.OutlineKind;
            Report(node, FindingCatalogue.BadSize, null,
                $"A {kind.Name} is as high as it is wide, but {node.Set.Called} would be "
                    + $"{Text(size.Width)} wide and {Text(size.Height)} high.",
                kind == PieceKind.Square ? "Write panel for other proportions, or one number." : kind.Traits.IsSmallPart
                    ? $"Write one number: {kind.Name} 1/8." : "Write oval for other proportions, or one number.");
        }

        CheckPoints(node);
        CheckMeasure(node, node.Bound.Rules.Corners, Length.Min(size.Width, size.Height) / 2, "half of its shorter side");
        var deepest = shape == Shape.Pocket ? ShapeStyle.MostThumbNotch(size)
            : node.Bound.Rules.Style.Swallowtail == Swallowtail.Both ? size.Width / 2 : size.Width;
        CheckMeasure(node, node.Bound.Rules.Notch, deepest, "what leaves it in one piece");
        CheckSides(node, size);
        if (node.Bound.Rules.Letters is { } letters && letters.Clause.Amount == Length.Zero)
        {
            Report(node, FindingCatalogue.BadSize, letters.Location, "Letters need a height greater than zero.",
                "Write letters 3/16, or leave it out.");
        }
    }

    private void CheckPoints(Node node)
    {
        if (node.Bound.Rules.Points is { Clause.Count: < ShapeStyle.FewestPoints or > ShapeStyle.MostPoints } points)
        {
            Report(node, FindingCatalogue.BadCount, points.Location, $"A star of {Counted.Of(points.Clause.Count, "point")} cannot be cut.",
                $"Write a number from {ShapeStyle.FewestPoints} to {ShapeStyle.MostPoints}, such as star 2, 5 points.");
        }
    }

    /// <summary>What reaches in from the sides must leave the piece in one piece and lie on it.</summary>
    private void CheckSides(Node node, Size size)
    {
        var rules = node.Bound.Rules;
        foreach (var cut in rules.EdgeForms.Where(c => c.Clause.Depth is not null))
        {
            var edges = cut.Clause.Edge is { } one ? [one] : Enum.GetValues<Edge>();
            CheckAmount(node, cut.Location, cut.Clause.Form.ToString().ToLowerInvariant(), cut.Clause.Depth!.Value,
                edges.Min(e => rules.Style.Edges.Deepest(e, size)), "what leaves it in one piece");
        }

        if (rules.Stitched is { } stitched)
        {
            CheckAmount(node, stitched.Location, "stitched", stitched.Clause.Distance, Length.Min(size.Width, size.Height) / 2,
                "half of its shorter side");
        }

        foreach (var score in rules.Scores)
        {
            CheckAmount(node, score.Location, $"scored {score.Clause.Edge.Name()}", score.Clause.Distance,
                score.Clause.Edge is Edge.Left or Edge.Right ? size.Width : size.Height, "the size of the piece");
        }
    }

    private void CheckMeasure(Node node, Rule<MeasureClause>? measure, Length most, string limit)
    {
        if (measure is { } written)
        {
            CheckAmount(node, written.Location, written.Clause.Word, written.Clause.Amount, most, limit);
        }
    }

    private void CheckAmount(Node node, Location place, string what, Length amount, Length most, string limit)
    {
        if (amount > most)
        {
            Report(node, FindingCatalogue.BadSize, place, $"{what} {Text(amount)} is more than {limit}, which is {Text(most)}.",
                "Write a smaller measure.");
        }
    }

    private void Report(Node node, FindingKind kind, Location? location, string message, string hint)
    {
        if (_reported.Add((node.Bound.Location, kind)))
        {
            findings.Add(kind, location ?? node.Bound.Location, message, hint);
        }
    }

    private string Text(Length length) => units.Format().WithUnit(length);
}
