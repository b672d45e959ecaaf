using Sketch.Colours;
using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>Small round things that are not gems: dots of enamel, the heads of brads, and buttons.</summary>
internal static class RoundThings
{
    /// <summary>Buttons below this width in millimetres have two holes, others four (common practice, no source).</summary>
    private const double FourHolesFrom = 9;

    /// <summary>Enamel: an even colour, domed, with a soft window of light.</summary>
    internal static void Dot(SvgWriter svg, Definitions definitions, PieceDesign design)
    {
        var (centre, radius) = Base(svg, design);
        Disc(svg, centre, radius, definitions.Enamel(design.Look.Ground));
        Light(svg, centre, radius, design.Degrees, 0.3, 0.62);
    }

    /// <summary>The head of a brad: metal or painted, with a rim.</summary>
    internal static void Brad(SvgWriter svg, Definitions definitions, PieceDesign design)
    {
        var (centre, radius) = Base(svg, design);
        Disc(svg, centre, radius, Shades.Lighten(design.Look.Ground, -0.28).Hex);
        Disc(svg, centre, radius * 0.9, definitions.Dome(design.Look.Ground));
        Light(svg, centre, radius, design.Degrees, 0.2, 0.8);
    }

    /// <summary>A button: a raised rim, a hollow and holes with thread.</summary>
    internal static void Button(SvgWriter svg, Definitions definitions, PieceDesign design)
    {
        var (centre, radius) = Base(svg, design);
        var colour = design.Look.Ground;
        Disc(svg, centre, radius, definitions.Dome(colour));
        Disc(svg, centre, radius * 0.74, Shades.Lighten(colour, -0.16).Hex);
        Disc(svg, new(centre.X + radius * 0.02, centre.Y + radius * 0.03), radius * 0.7, Shades.Lighten(colour, -0.04).Hex);
        var fourHoles = design.Width >= FourHolesFrom;
        var off = radius * (fourHoles ? 0.2 : 0.24);
        Point[] holes = fourHoles
            ? [new(-off, -off), new(off, off), new(off, -off), new(-off, off)]
            : [new(-off, 0), new(off, 0)];
        foreach (var hole in holes)
        {
            Disc(svg, new(centre.X + hole.X, centre.Y + hole.Y), radius * 0.115, Shades.Lighten(colour, -0.5).Hex);
        }

        for (var i = 0; i < holes.Length; i += 2)
        {
            var path = new PathText().Move(centre.X + holes[i].X, centre.Y + holes[i].Y)
                .LineTo(centre.X + holes[i + 1].X, centre.Y + holes[i + 1].Y).ToString();
            svg.Open("path").Attribute("fill", "none").Attribute("stroke", Thread(colour).Hex).Attribute("stroke-linecap", "round")
                .Attribute("stroke-width", radius * 0.13).Attribute("d", path).Close();
        }

        Light(svg, new(centre.X - radius * 0.1, centre.Y - radius * 0.12), radius * 0.8, design.Degrees, 0.1, 0.5);
    }

    /// <summary>White thread, or grey on a button that is nearly white.</summary>
    private static Rgb Thread(Rgb colour) =>
        Contrast.Ratio(colour, new(255, 255, 255)) < 1.5 ? new(0xa8, 0xa4, 0x9c) : new(0xfb, 0xf8, 0xf0);

    private static (Point Centre, double Radius) Base(SvgWriter svg, PieceDesign design)
    {
        var radius = Math.Min(design.Width, design.Height) / 2;
        var centre = new Point(design.Width / 2, design.Height / 2);
        var fall = Affine.Turn(-design.Degrees, default).Apply(new(radius * 0.1, radius * 0.16));
        Disc(svg, new(centre.X + fall.X, centre.Y + fall.Y), radius * 1.06, Shadow.Colour.Hex, 0.16);
        Disc(svg, new(centre.X + fall.X / 2, centre.Y + fall.Y / 2), radius * 1.02, Shadow.Colour.Hex, 0.26);
        return (centre, radius);
    }

    /// <summary>The reflection of a window in the upper left, whichever way the piece is turned.</summary>
    private static void Light(SvgWriter svg, Point centre, double radius, double degrees, double size, double opacity)
    {
        var to = Affine.Turn(-degrees, default).Apply(new(-0.36 * radius, -0.42 * radius));
        svg.Open("ellipse").Attribute("cx", centre.X + to.X).Attribute("cy", centre.Y + to.Y)
            .Attribute("rx", radius * size).Attribute("ry", radius * size * 0.7)
            .Attribute("fill", "#ffffff").Attribute("fill-opacity", opacity).Close();
    }

    private static void Disc(SvgWriter svg, Point centre, double radius, string fill, double opacity = 1)
    {
        svg.Open("circle").Attribute("cx", centre.X).Attribute("cy", centre.Y).Attribute("r", radius).Attribute("fill", fill);
        if (opacity < 1)
        {
            svg.Attribute("fill-opacity", opacity);
        }

        svg.Close();
    }
}
