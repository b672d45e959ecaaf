using Sketch.Colours;
using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>What makes ribbon look woven and twine twisted, tails and bows included; drawn over the outline of the piece.</summary>
internal static class RibbonTexture
{
    /// <summary>Millimetres between the ribs of a ribbon.</summary>
    private const double Ribs = 0.9;

    /// <summary>More ribs than this would not be seen on a longer piece.</summary>
    private const int MostRibs = 400;

    /// <summary>The ribs and the woven edges of a ribbon, for a clip to its outline.</summary>
    internal static void Woven(SvgWriter svg, PieceDesign design)
    {
        var across = design.Width >= design.Height;
        var (length, width) = across ? (design.Width, design.Height) : (design.Height, design.Width);
        var step = Math.Max(Ribs, length / MostRibs);
        var ribs = new PathText();
        for (var at = step; at < length; at += step)
        {
            Line(ribs, At(at, 0), At(at, width));
        }

        svg.Open("path").Attribute("fill", "none").Attribute("stroke", Shades.Lighten(design.Look.Ground, -0.24).Hex)
            .Attribute("stroke-opacity", 0.32).Attribute("stroke-width", step * 0.34).Attribute("d", ribs.ToString()).Close();
        var edge = Math.Min(0.5, width / 8);
        var edges = new PathText();
        Line(edges, At(0, edge), At(length, edge));
        Line(edges, At(0, width - edge), At(length, width - edge));
        svg.Open("path").Attribute("fill", "none").Attribute("stroke", Shades.Lighten(design.Look.Ground, 0.22).Hex)
            .Attribute("stroke-opacity", 0.5).Attribute("stroke-width", edge * 0.7).Attribute("d", edges.ToString()).Close();

        Point At(double along, double over) => across ? new(along, over) : new(over, along);
    }

    /// <summary>The strands of twine: slanting, in the second colour of its look, else in white.</summary>
    internal static void Twisted(SvgWriter svg, PieceDesign design)
    {
        var across = design.Width >= design.Height;
        var (length, width) = across ? (design.Width, design.Height) : (design.Height, design.Width);
        var step = Math.Max(width * 1.5, length / MostRibs);
        var strands = new PathText();
        for (var at = -step; at < length + step; at += step)
        {
            Line(strands, At(at, width), At(at + width, 0));
        }

        svg.Open("path").Attribute("fill", "none").Attribute("stroke", Second(design).Hex).Attribute("stroke-width", step * 0.38)
            .Attribute("d", strands.ToString()).Close();
        var shade = new PathText();
        Line(shade, At(0, width * 0.86), At(length, width * 0.86));
        svg.Open("path").Attribute("fill", "none").Attribute("stroke", Shadow.Colour.Hex).Attribute("stroke-opacity", 0.24)
            .Attribute("stroke-width", width * 0.28).Attribute("d", shade.ToString()).Close();

        Point At(double along, double over) => across ? new(along, over) : new(over, along);
    }

    /// <summary>Two ends of twine that hang from a knot in its middle.</summary>
    internal static void TwineTails(SvgWriter svg, PieceDesign design)
    {
        var width = Math.Min(design.Width, design.Height);
        var (x, y) = (design.Width / 2, design.Height / 2);
        foreach (var side in new[] { -1, 1 })
        {
            var (right, down) = (design.Tails * 0.3 * side, design.Tails);
            var path = new PathText().Move(x, y)
                .CurveTo(new(x + right * 0.2, y + down / 3), new(x + right * 1.2, y + down / 2), new(x + right, y + down)).ToString();
            Stroke(path, Shadow.Colour, width * 1.25, 0.2);
            Stroke(path, design.Look.Ground, width, 1);
            Stroke(path, Second(design), width, 1, width * 0.7);
        }

        svg.Open("circle").Attribute("cx", x).Attribute("cy", y).Attribute("r", width * 0.95)
            .Attribute("fill", design.Look.Ground.Hex).Attribute("stroke", Second(design).Hex)
            .Attribute("stroke-width", width * 0.4).Close();

        void Stroke(string path, Rgb colour, double thickness, double opacity, double dash = 0)
        {
            svg.Open("path").Attribute("fill", "none").Attribute("stroke", colour.Hex).Attribute("stroke-opacity", opacity)
                .Attribute("stroke-width", thickness);
            if (dash > 0)
            {
                svg.Attribute("stroke-dasharray", FormattableString.Invariant($"{dash:0.###} {dash * 1.3:0.###}"));
            }

            svg.Attribute("d", path).Close();
        }
    }

    private static Rgb Second(PieceDesign design) =>
        design.Look.Figures.IsEmpty ? Shades.Lighten(design.Look.Ground, 0.34) : design.Look.Figures[0];

    /// <summary>The outlines of two ends that hang from the middle of a piece, with the knot in front of them.</summary>
    internal static (Contour Left, Contour Right, Contour Knot) Tails(PieceDesign design)
    {
        var width = Math.Min(design.Width, design.Height);
        var (x, y) = (design.Width / 2, design.Height / 2);
        return (Tail(-1), Tail(1), Knot());

        // A little higher than the ribbon is wide, with sides that bulge.
        Contour Knot()
        {
            var (half, high) = (width * 0.46, width * 0.58);
            return new ContourPen(new(x - half, y - high))
                .Curve(new(x - half / 2, y - high * 1.12), new(x + half / 2, y - high * 1.12), new(x + half, y - high))
                .Curve(new(x + half * 1.25, y - high / 2), new(x + half * 1.25, y + high / 2), new(x + half, y + high))
                .Curve(new(x + half / 2, y + high * 1.12), new(x - half / 2, y + high * 1.12), new(x - half, y + high))
                .Curve(new(x - half * 1.25, y + high / 2), new(x - half * 1.25, y - high / 2), new(x - half, y - high))
                .Close();
        }

        Contour Tail(int side)
        {
            var slant = Math.Min(design.Tails * 0.28, width * 3) * side;
            var (half, down) = (width / 2, y + design.Tails);
            return new ContourPen(new(x - half, y))
                .Curve(new(x - half, y + design.Tails / 3), new(x + slant - half, down - design.Tails / 3), new(x + slant - half, down))
                .Line(x + slant, down - half).Line(x + slant + half, down)
                .Curve(new(x + slant + half, down - design.Tails / 3), new(x + half, y + design.Tails / 3), new(x + half, y))
                .Close();
        }
    }

    private static void Line(PathText path, Point from, Point to) => path.Move(from.X, from.Y).LineTo(to.X, to.Y);
}
