using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Tells sizes that a kind of piece cannot have, once a line.</summary>
internal sealed class SuitedSizes(UnitSystem units, FindingBag findings)
{
    /// <summary>What rounding may make of two sides that are meant to be the same: a thousandth of a millimetre.</summary>
    private static readonly Length Rounding = new(1000);

    private readonly HashSet<(Location, FindingKind)> _reported = [];

    /// <summary>Looks at a piece at its settled size.</summary>
    public void Check(Node node, Size size)
    {
        var shape = node.Draft.OutlineKind.Traits.Shape;
        if (shape is Shape.Square or Shape.Circle && (size.Width - size.Height).Abs() > Rounding)
        {
            var kind = node.Draft.OutlineKind;
            Report(node, FindingCatalogue.BadSize, null,
                $"A {kind.Name} is as high as it is wide, but {node.Unit.Called} would be {Text(size.Width)} wide and {Text(size.Height)} high.",
                kind == PieceKind.Square ? "Write panel for other proportions, or one number." : kind == PieceKind.Gem
                    ? "Write one number: gem 1/8." : "Write oval for other proportions, or one number.");
        }

        CheckPoints(node);
        CheckMeasure(node, "corners", Length.Min(size.Width, size.Height) / 2, "half of its shorter side");
        CheckMeasure(node, "notch", ShapeStyles.Of(node.Draft).Swallowtail == Swallowtail.Both
            ? size.Width / 2 : size.Width, "what leaves it in one piece");
        if (ShapeStyles.Measure(node.Draft, "letters") is { } letters && letters == Length.Zero)
        {
            Report(node, FindingCatalogue.BadSize, Clause(node, "letters"), "Letters need a height greater than zero.",
                "Write letters 3/16, or leave it out.");
        }
    }

    private void CheckPoints(Node node)
    {
        if (node.Draft.All<QuantityClause>()
            .FirstOrDefault(q => q.Noun == "points") is { Count: < ShapeStyle.FewestPoints or > ShapeStyle.MostPoints } points)
        {
            Report(node, FindingCatalogue.BadCount, points, $"A star of {Counted.Of(points.Count, "point")} cannot be cut.",
                $"Write a number from {ShapeStyle.FewestPoints} to {ShapeStyle.MostPoints}, such as star 2, 5 points.");
        }
    }

    private void CheckMeasure(Node node, string word, Length most, string limit)
    {
        if (ShapeStyles.Measure(node.Draft, word) is { } amount && amount > most)
        {
            Report(node, FindingCatalogue.BadSize, Clause(node, word),
                $"{word} {Text(amount)} is more than {limit}, which is {Text(most)}.", "Write a smaller measure.");
        }
    }

    private static MeasureClause? Clause(Node node, string word) => node.Draft.All<MeasureClause>().FirstOrDefault(m => m.Word == word);

    private void Report(Node node, FindingKind kind, Clause? clause, string message, string hint)
    {
        if (_reported.Add((node.Draft.Location, kind)))
        {
            findings.Add(kind, clause is null ? node.Draft.Location : node.Draft.LocationOf(clause), message, hint);
        }
    }

    private string Text(Length length) => units.Format().WithUnit(length);
}
