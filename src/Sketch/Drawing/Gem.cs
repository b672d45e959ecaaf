using Sketch.Colours;
using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>
/// A stick-on gem: facets round a flat top, each shaded by its direction, and a glint. A round one has eight facets, or is a smooth bead if
/// it is of pearl; one with corners has a facet for each of its sides.
/// </summary>
internal static class Gem
{
    private const int Facets = 8;
    private const double Top = 0.56;

    internal static void Draw(SvgWriter svg, Definitions definitions, PieceDesign design)
    {
        if (!design.Rim.Corners.IsEmpty)
        {
            DrawShaped(svg, definitions, design);
            return;
        }

        var radius = Math.Min(design.Width, design.Height) / 2;
        var centre = new Point(design.Width / 2, design.Height / 2);
        var fall = Affine.Turn(-design.Degrees, default).Apply(new(radius * 0.12, radius * 0.2));
        Round(svg, new(centre.X + fall.X, centre.Y + fall.Y), radius * 1.08, Shadow.Colour.Hex, 0.16);
        Round(svg, new(centre.X + fall.X / 2, centre.Y + fall.Y / 2), radius * 1.02, Shadow.Colour.Hex, 0.26);
        if (design.Look.Pattern == PaperPattern.Pearl)
        {
            Round(svg, centre, radius, definitions.PearlBody(design.Look.Ground));
        }
        else
        {
            Round(svg, centre, radius, definitions.GemBody(design.Look.Ground));
            Cut(svg, centre, radius, design.Degrees);
        }

        Glint(svg, centre, radius, design.Degrees);
    }

    private static void DrawShaped(SvgWriter svg, Definitions definitions, PieceDesign design)
    {
        var corners = design.Rim.Corners;
        var centre = new Point(corners.Average(c => c.X), corners.Average(c => c.Y));
        var radius = Math.Min(design.Width, design.Height) / 2;
        var fall = Affine.Turn(-design.Degrees, default).Apply(new(radius * 0.12, radius * 0.2));
        Outlined(Shadow.Colour.Hex, 0.2, fall.X, fall.Y);
        Outlined(Shadow.Colour.Hex, 0.26, fall.X / 2, fall.Y / 2);
        Outlined(design.Look.Pattern == PaperPattern.Pearl ? definitions.PearlBody(design.Look.Ground)
            : definitions.GemBody(design.Look.Ground), 1, 0, 0);
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            Facet(svg, [a, b, Inner(b), Inner(a)], Facing(a, b, design.Degrees));
        }

        svg.Open("path").Attribute("fill", "#ffffff").Attribute("fill-opacity", 0.14)
            .Attribute("d", Closed([.. corners.Select(Inner)])).Close();
        Glint(svg, centre, radius, design.Degrees);

        Point Inner(Point rim) => new(centre.X + (rim.X - centre.X) * Top, centre.Y + (rim.Y - centre.Y) * Top);

        void Outlined(string fill, double opacity, double right, double down)
        {
            svg.Open("path").Attribute("fill", fill).Attribute("fill-opacity", opacity)
                .Attribute("d", Closed([.. corners.Select(c => new Point(c.X + right, c.Y + down))])).Close();
        }
    }

    /// <summary>How directly a facet at an edge faces the light in the upper left, from -1 to 1.</summary>
    private static double Facing(Point a, Point b, double degrees)
    {
        var outwards = Math.Atan2(a.X - b.X, b.Y - a.Y) * 180 / Math.PI;
        return Math.Cos((outwards + degrees - 235) * Math.PI / 180);
    }

    private static void Facet(SvgWriter svg, ReadOnlySpan<Point> corners, double facing) =>
        svg.Open("path").Attribute("fill", facing > 0 ? "#ffffff" : Shadow.Colour.Hex)
            .Attribute("fill-opacity", facing > 0 ? facing * 0.42 : -facing * 0.3).Attribute("d", Closed(corners)).Close();

    private static string Closed(ReadOnlySpan<Point> corners)
    {
        var path = new PathText().Move(corners[0].X, corners[0].Y);
        foreach (var corner in corners[1..])
        {
            path.LineTo(corner.X, corner.Y);
        }

        return path.End().ToString();
    }

    private static void Cut(SvgWriter svg, Point centre, double radius, double degrees)
    {
        for (var i = 0; i < Facets; i++)
        {
            // Brightness of a facet by how directly it faces the light in the upper left.
            var facing = Math.Cos((360.0 / Facets * (i + 0.5) + degrees - 235) * Math.PI / 180);
            var path = new PathText();
            var (a, b, c, d) = (Rim(i, 1), Rim(i + 1, 1), Rim(i + 1, Top), Rim(i, Top));
            path.Move(a.X, a.Y).LineTo(b.X, b.Y).LineTo(c.X, c.Y).LineTo(d.X, d.Y).End();
            var white = new Rgb(255, 255, 255);
            svg.Open("path").Attribute("fill", facing > 0 ? white.Hex : Shadow.Colour.Hex)
                .Attribute("fill-opacity", facing > 0 ? facing * 0.42 : -facing * 0.3 + (i % 2) * 0.04).Attribute("d", path.ToString())
                .Close();
        }

        var table = new PathText();
        table.Move(Rim(0, Top).X, Rim(0, Top).Y);
        for (var i = 1; i < Facets; i++)
        {
            table.LineTo(Rim(i, Top).X, Rim(i, Top).Y);
        }

        svg.Open("path").Attribute("fill", "#ffffff").Attribute("fill-opacity", 0.14).Attribute("d", table.End().ToString()).Close();

        Point Rim(int index, double share)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI / Facets * index);
            return new(centre.X + radius * share * 0.98 * cos, centre.Y + radius * share * 0.98 * sin);
        }
    }

    private static void Glint(SvgWriter svg, Point centre, double radius, double degrees)
    {
        var to = Affine.Turn(-degrees, default).Apply(new(-0.32 * radius, -0.38 * radius));
        var (x, y) = (centre.X + to.X, centre.Y + to.Y);
        var (far, near) = (radius * 0.34, radius * 0.07);
        var path = new PathText().Move(x, y - far).LineTo(x + near, y - near).LineTo(x + far, y).LineTo(x + near, y + near)
            .LineTo(x, y + far).LineTo(x - near, y + near).LineTo(x - far, y).LineTo(x - near, y - near).End();
        svg.Open("path").Attribute("fill", "#ffffff").Attribute("fill-opacity", 0.92).Attribute("d", path.ToString()).Close();
    }

    private static void Round(SvgWriter svg, Point centre, double radius, string fill, double opacity = 1)
    {
        svg.Open("circle").Attribute("cx", centre.X).Attribute("cy", centre.Y).Attribute("r", radius).Attribute("fill", fill);
        if (opacity < 1)
        {
            svg.Attribute("fill-opacity", opacity);
        }

        svg.Close();
    }
}
