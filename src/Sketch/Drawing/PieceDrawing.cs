using Sketch.Colours;
using Sketch.Drawing.Papers;
using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>Draws designs: shadow, paper with its figures, light and edge, and the words on it.</summary>
internal sealed class PieceDrawing(Definitions definitions, SvgIds ids, double dotsPerInch)
{
    private const double EdgeWidth = 0.14;

    private const double StitchWidth = 0.35;

    /// <summary>Millimetres of the white rim round a sticker.</summary>
    private const double StickerRim = 0.8;

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
            case Appearance.Dot:
                RoundThings.Dot(svg, definitions, design);
                break;
            case Appearance.Brad:
                RoundThings.Brad(svg, definitions, design);
                break;
            case Appearance.Button:
                RoundThings.Button(svg, definitions, design);
                break;
            case Appearance.Bow:
                Bow(svg, design, id);
                break;
            case Appearance.Ribbon or Appearance.Twine:
                Cord(svg, design, id);
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

    /// <summary>What a ready-made thing has on top of its figures, within its outline.</summary>
    private static void Texture(SvgWriter svg, PieceDesign design, string cut)
    {
        switch (design.Appearance)
        {
            case Appearance.Ribbon:
                RibbonTexture.Woven(svg, design);
                break;
            case Appearance.Twine:
                RibbonTexture.Twisted(svg, design);
                break;
            case Appearance.Sticker:
                // The white rim that is left round the print; half of it lies outside the clip.
                svg.Open("use").Reference(cut).Attribute("fill", "none").Attribute("stroke", "#ffffff")
                    .Attribute("stroke-width", 2 * StickerRim).Close();
                break;
        }
    }

    /// <summary>A bow part by part, so that its loops and its knot stand out.</summary>
    private void Bow(SvgWriter svg, PieceDesign design, string id)
    {
        foreach (var part in BowForm.Parts(new(0, 0, design.Width, design.Height)))
        {
            Paper(svg, design with { Cut = part.ToSvgPath(), Lift = Shadow.FlatHeight }, id);
        }
    }

    /// <summary>Ribbon or twine, and the ends that hang from it.</summary>
    private void Cord(SvgWriter svg, PieceDesign design, string id)
    {
        Paper(svg, design, id);
        if (design.Tails > 0 && design.Appearance == Appearance.Twine)
        {
            RibbonTexture.TwineTails(svg, design);
        }
        else if (design.Tails > 0)
        {
            var (left, right, knot) = RibbonTexture.Tails(design);
            foreach (var part in new[] { left, right, knot })
            {
                Paper(svg, design with { Cut = new Outline([part]).ToSvgPath(), Appearance = Appearance.Paper }, id);
            }
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
        if (Figures.HasAny(design) || design.Appearance is Appearance.Ribbon or Appearance.Twine or Appearance.Sticker)
        {
            var clipId = ids.Claim(id + "-clip");
            svg.Open("clipPath").Attribute("id", clipId).Open("use").Reference(cut).Close().Close();
            svg.Open("g").Attribute("clip-path", $"url(#{clipId})");
            if (Figures.HasAny(design) && design.Appearance != Appearance.Twine)
            {
                Figures.Draw(new(svg, design.Look, design.Width, design.Height, design.Seed), dotsPerInch);
            }

            Texture(svg, design, cut);
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
