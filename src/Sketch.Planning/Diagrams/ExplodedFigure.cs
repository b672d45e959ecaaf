using System.Collections.Immutable;
using System.Globalization;
using Sketch.Assembly;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Planning.Diagrams;

/// <summary>An exploded picture with the number of each step beside it and a line from the number to its piece.</summary>
internal sealed class ExplodedFigure(ExplodedPicture picture, FaceKind face, ImmutableArray<AssemblyStep> steps, Lettering lettering)
{
    private const double NumberColumn = 11;
    private const double LineHeight = 5.6;
    private const double LineWidth = 0.25;
    private const double DotRadius = 0.55;

    /// <summary>Draws it into the open element from 0, 0, as large as the room allows.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="ids">The ids of the page.</param>
    /// <param name="width">The width of the room in millimetres.</param>
    /// <param name="height">The height of the room.</param>
    public void Draw(SvgWriter svg, SvgIds ids, double width, double height)
    {
        var scale = Math.Min((width - 2 * NumberColumn) / picture.Width, height / picture.Height);
        var place = Affine.Scale(scale, scale)
            .Then(Affine.Shift((width - picture.Width * scale) / 2, (height - picture.Height * scale) / 2));
        svg.Open("g").Transform(place).Insert(picture.Draw(CardDrawing.UsualDotsPerInch, ids)).Close();
        var targets = steps.Where(s => s.Face == face && !s.Pieces.IsEmpty)
            .Select(s => (s.Number, Point: place.Apply(picture.PointOn(s.Pieces[0])))).ToList();
        foreach (var side in targets.GroupBy(t => t.Point.X < width / 2))
        {
            Column(svg, [.. side.OrderBy(t => t.Point.Y)], side.Key, width, height);
        }
    }

    private void Column(SvgWriter svg, List<(int Number, Point Point)> column, bool isLeft, double width, double height)
    {
        var tops = CalloutColumn.Tops([.. column.Select(c => c.Point.Y)], LineHeight, 0, 0, height);
        for (var i = 0; i < column.Count; i++)
        {
            var middle = tops[i] + LineHeight / 2;
            var words = column[i].Number.ToString(CultureInfo.InvariantCulture);
            var wide = lettering.Width(words, PageFlow.Points);
            var (x, alignment) = isLeft ? (0.0, Alignment.Left) : (width, Alignment.Right);
            Leader(svg, new(isLeft ? wide + 1 : width - wide - 1, middle), column[i].Point);
            lettering.Write(svg, words, x, middle + Lettering.CapitalHeight(PageFlow.Points) / 2, PageFlow.Points, alignment,
                PageFlow.Ink);
        }
    }

    private static void Leader(SvgWriter svg, Point from, Point to)
    {
        svg.Open("line").Attribute("x1", from.X).Attribute("y1", from.Y).Attribute("x2", to.X).Attribute("y2", to.Y)
            .Attribute("stroke", PageFlow.Ink).Attribute("stroke-width", LineWidth).Close();
        svg.Open("circle").Attribute("cx", to.X).Attribute("cy", to.Y).Attribute("r", DotRadius).Attribute("fill", PageFlow.Ink).Close();
    }
}
