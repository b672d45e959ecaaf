using Sketch.Colours;
using Sketch.Drawing.Papers;
using Sketch.Papers;

namespace Sketch.Drawing;

/// <summary>Draws designs: shadow, paper with its figures, light and edge, and the words on it.</summary>
internal sealed class PieceDrawing(Definitions definitions, SvgIds ids, double dotsPerInch)
{
    private const double EdgeWidth = 0.14;

    private const double StitchWidth = 0.35;

    /// <summary>How crowded the face is.</summary>
    internal Crowding Crowding { get; set; }

    /// <summary>Draws a design from 0, 0 into the open element.</summary>
    internal void Draw(SvgWriter svg, PieceDesign design, string id)
    {
        switch (design.Appearance)
        {
            case Appearance.Ink:
                Ink(svg, design, design.Cut, design.Look);
                break;
            case Appearance.Gem:
                Gem.Draw(svg, definitions, design);
                break;
            case Appearance.Tape:
                svg.Open("g").Attribute("opacity", 0.8);
                Paper(svg, design, id);
                svg.Close();
                break;
            default:
                Paper(svg, design, id);
                break;
        }

        if (design.InkLook is { } ink)
        {
            Ink(svg, design, design.Ink, ink);
        }
    }

    private void Ink(SvgWriter svg, PieceDesign design, string path, PaperLook look)
    {
        if (path.Length > 0)
        {
            svg.Open("path").Attribute("class", "ink").Attribute("fill", definitions.Ground(look, design.Width, design.Height))
                .Attribute("d", path).Close();
        }
    }

    private void Paper(SvgWriter svg, PieceDesign design, string id)
    {
        if (design.Cut.Length == 0)
        {
            return;
        }

        var cutId = ids.Claim(id + "-cut");
        var cut = "#" + cutId;
        svg.Open("defs").Open("path").Attribute("id", cutId).Attribute("d", design.Cut).Close().Close();
        if (design.Lift > 0)
        {
            Shadow.Draw(svg, cutId, design.Lift, design.Degrees, Crowding);
        }

        svg.Open("use").Reference(cut).Attribute("fill", definitions.Ground(design.Look, design.Width, design.Height)).Close();
        if (Figures.HasAny(design))
        {
            var clipId = ids.Claim(id + "-clip");
            svg.Open("clipPath").Attribute("id", clipId).Open("use").Reference(cut).Close().Close();
            svg.Open("g").Attribute("clip-path", $"url(#{clipId})");
            Figures.Draw(new(svg, design.Look, design.Width, design.Height, design.Seed), dotsPerInch);
            if (design.Look.Pattern == PaperPattern.Patches)
            {
                svg.Open("use").Reference(cut).Attribute("fill", "none").Attribute("stroke", Patchwork.Seam.Hex)
                    .Attribute("stroke-width", 0.9).Close();
            }

            svg.Close();
        }

        svg.Open("use").Reference(cut)
            .Attribute("fill", Crowding == Crowding.Packed ? "none" : definitions.Light())
            .Attribute("stroke", definitions.Edge(design.Degrees))
            .Attribute("stroke-width", EdgeWidth).Attribute("stroke-linejoin", "round").Close();
        Line(svg, design.Scores, "score", ScoreLine.On(design.Look.Ground), ScoreLine.Width, ScoreLine.Dashes);
        Line(svg, design.Stitches, "stitches", ScoreLine.On(design.Look.Ground), StitchWidth, null);
    }

    private static void Line(SvgWriter svg, string path, string name, Rgb colour, double width, string? dashes)
    {
        if (path.Length == 0)
        {
            return;
        }

        svg.Open("path").Attribute("class", name).Attribute("fill", "none").Attribute("stroke", colour.Hex)
            .Attribute("stroke-opacity", ScoreLine.Opacity).Attribute("stroke-width", width).Attribute("stroke-linecap", "round");
        if (dashes is not null)
        {
            svg.Attribute("stroke-dasharray", dashes);
        }

        svg.Attribute("d", path).Close();
    }
}
