using System.Collections.Immutable;
using Sketch.Drawing;

namespace Sketch.Planning.Diagrams;

/// <summary>Rows of small squares to tick by hand, a row or more for each stage or recipient.</summary>
/// <param name="stages">The names of the rows; at least one.</param>
/// <param name="count">How many cards.</param>
/// <param name="lettering">The letters.</param>
internal sealed class TickBoxes(ImmutableArray<string> stages, int count, Lettering lettering)
{
    private const double AfterNames = 4;
    private const double Box = 3.8;
    private const double Step = 5;
    private const double GroupGap = 2;
    private const int InGroup = 5;
    private const double RowHeight = 6.2;
    private const int MostBoxes = 60;

    private readonly double _nameColumn = stages.Max(s => lettering.Width(s, PageFlow.Points)) + AfterNames;

    /// <summary>How many cards a box stands for: 1, or 10 where boxes for single cards would fill the page.</summary>
    public int CardsOfBox { get; } = count <= MostBoxes ? 1 : 10;

    /// <summary>The height of all rows.</summary>
    public double HeightFor(double width) => stages.Length * RowsOf(width) * RowHeight;

    /// <summary>Draws them from 0, 0 into the open element.</summary>
    public void Draw(SvgWriter svg, double width)
    {
        var perRow = PerRow(width);
        for (var stage = 0; stage < stages.Length; stage++)
        {
            var top = stage * RowsOf(width) * RowHeight;
            lettering.Write(svg, stages[stage], 0, top + Box, PageFlow.Points, colour: PageFlow.Ink);
            for (var box = 0; box < Boxes; box++)
            {
                var column = box % perRow;
                svg.Open("rect").Attribute("x", _nameColumn + column * Step + column / InGroup * GroupGap)
                    .Attribute("y", top + box / perRow * RowHeight).Attribute("width", Box).Attribute("height", Box)
                    .Attribute("fill", "none").Attribute("stroke", PageFlow.Ink).Attribute("stroke-width", 0.25).Close();
            }
        }
    }

    private int Boxes => (count + CardsOfBox - 1) / CardsOfBox;

    private int RowsOf(double width) => (Boxes + PerRow(width) - 1) / PerRow(width);

    private int PerRow(double width) =>
        Math.Max(1, (int)((width - _nameColumn) / (InGroup * Step + GroupGap))) * InGroup;
}
