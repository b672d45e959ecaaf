using System.Globalization;
using Sketch.Colours;
using Sketch.Papers;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>
/// What the pieces of one picture share: gradients, each written once when first needed, and the drawings of equal pieces.
/// Ids are descriptive, such as <c>foil-cfa646</c>.
/// </summary>
internal sealed class Definitions(SvgIds ids)
{
    private readonly Dictionary<string, string> _made = [];

    internal SvgWriter Svg { get; } = new(indent: 2);

    /// <summary>Light from the upper left on any paper: slightly lighter there, slightly darker in the lower right.</summary>
    internal string Light() => Linear(
        "light", 1, 1, [(0, White, 0.09), (0.45, White, 0), (0.6, Ink, 0), (1, Ink, 0.045)]);

    /// <summary>
    /// The cut edge of a piece: bright where it faces the light, dark where it faces away.
    /// </summary>
    /// <param name="degrees">The turn of the piece, clockwise; the light does not turn.</param>
    internal string Edge(int degrees)
    {
        var eighth = ((degrees + 22) / 45 % 8 + 8) % 8;
        var (sin, cos) = Math.SinCos((45 - eighth * 45) * Math.PI / 180);
        return Linear(
            string.Create(CultureInfo.InvariantCulture, $"edge-{eighth * 45}"),
            cos * 0.7071,
            sin * 0.7071,
            [(0, White, 0.55), (0.4, White, 0.2), (0.55, Ink, 0.1), (1, Ink, 0.34)],
            0.5 - cos * 0.7071,
            0.5 - sin * 0.7071);
    }

    /// <summary>
    /// What fills the ground of a paper: its colour, or a sheen for metal and pearl that runs along a strip and slantwise over anything
    /// else.
    /// </summary>
    internal string Ground(PaperLook look, double width, double height) => look.Pattern switch
    {
        PaperPattern.Foil => Foil(look.Ground, width, height),
        PaperPattern.Pearl => Pearl(look.Ground),
        _ => look.Ground.Hex,
    };

    /// <summary>A fold: shade that fades with the distance from it.</summary>
    /// <param name="side">The side on which the fold lies.</param>
    internal string Fold(Units.Edge side)
    {
        var (x, y) = side switch
        {
            Units.Edge.Left => (1, 0),
            Units.Edge.Right => (-1, 0),
            Units.Edge.Top => (0, 1),
            _ => (0, -1),
        };
        return Linear(
            $"fold-{side.Name()}", x, y, [(0, Ink, 0.16), (0.3, Ink, 0.06), (1, Ink, 0)],
            x < 0 ? 1 : 0, y < 0 ? 1 : 0);
    }

    /// <summary>The body of a gem: glowing towards the lower right, where the light that entered comes out.</summary>
    internal string GemBody(Rgb colour) => Radial(
        "gem-" + colour.Hex[1..], 0.6, 0.66, 0.7,
        [(0, Shades.Lighten(colour, 0.24), 1), (0.5, colour, 1), (1, Shades.Lighten(colour, -0.2), 1)]);

    /// <summary>A bead of pearl: bright where the light falls, with a warm rim.</summary>
    internal string PearlBody(Rgb colour) => Radial(
        "bead-" + colour.Hex[1..], 0.36, 0.32, 0.75,
        [(0, White, 1), (0.35, colour, 1), (0.8, Shades.Lighten(colour, -0.14), 1), (1, Shades.Lighten(colour, -0.24), 1)]);

    /// <summary>Enamel: an even colour, a little lighter where the light falls and darker at the rim.</summary>
    internal string Enamel(Rgb colour) => Radial(
        "enamel-" + colour.Hex[1..], 0.4, 0.36, 0.72,
        [(0, Shades.Lighten(colour, 0.16), 1), (0.55, colour, 1), (1, Shades.Lighten(colour, -0.18), 1)]);

    /// <summary>A dome of metal or plastic.</summary>
    internal string Dome(Rgb colour) => Radial(
        "dome-" + colour.Hex[1..], 0.34, 0.3, 0.85,
        [(0, Shades.Mix(colour, White, 0.6), 1), (0.35, Shades.Lighten(colour, 0.1), 1), (0.75, colour, 1),
            (1, Shades.Lighten(colour, -0.22), 1)]);

    private static Rgb White => new(255, 255, 255);

    private static Rgb Ink => Shadow.Colour;

    private string Foil(Rgb colour, double width, double height)
    {
        const double Strip = 3;
        var (name, across, down) = width > Strip * height ? ("-across", 1, 0) : height > Strip * width ? ("-down", 0, 1) : ("", 1, 0.75);
        var glare = Shades.Mix(colour, new(0xff, 0xff, 0xf8), 0.72);
        var bright = Shades.Mix(colour, new(0xff, 0xff, 0xf4), 0.36);
        var deep = Shades.Lighten(colour, -0.11, 0.85);
        return Linear(
            "foil-" + colour.Hex[1..] + name, across, down,
            [(0, deep, 1), (0.14, colour, 1), (0.29, glare, 1), (0.4, bright, 1), (0.55, deep, 1), (0.68, colour, 1), (0.81, glare, 1),
                (0.9, bright, 1), (1, deep, 1)]);
    }

    private string Pearl(Rgb colour)
    {
        var rosy = Shades.Mix(colour, new(0xf3, 0xd3, 0xdc), 0.55);
        var bluish = Shades.Mix(colour, new(0xcf, 0xe0, 0xee), 0.6);
        var bright = Shades.Lighten(colour, 0.06, 0.6);
        return Linear(
            "pearl-" + colour.Hex[1..], 1, 1,
            [(0, bright, 1), (0.2, rosy, 1), (0.4, bright, 1), (0.58, bluish, 1), (0.76, bright, 1), (1, rosy, 1)]);
    }

    private string Linear(string name, double acrossX, double downY, ReadOnlySpan<(double At, Rgb Colour, double Opacity)> stops,
        double fromX = 0, double fromY = 0)
    {
        if (_made.TryGetValue(name, out var reference))
        {
            return reference;
        }

        Svg.Open("linearGradient").Attribute("id", Claim(name, out reference))
            .Attribute("x1", fromX).Attribute("y1", fromY).Attribute("x2", fromX + acrossX).Attribute("y2", fromY + downY);
        Stops(stops);
        return reference;
    }

    private string Radial(string name, double x, double y, double radius, ReadOnlySpan<(double At, Rgb Colour, double Opacity)> stops)
    {
        if (_made.TryGetValue(name, out var reference))
        {
            return reference;
        }

        Svg.Open("radialGradient").Attribute("id", Claim(name, out reference))
            .Attribute("cx", x).Attribute("cy", y).Attribute("r", radius);
        Stops(stops);
        return reference;
    }

    private string Claim(string name, out string reference)
    {
        var id = ids.Claim(name);
        _made[name] = reference = $"url(#{id})";
        return id;
    }

    private void Stops(ReadOnlySpan<(double At, Rgb Colour, double Opacity)> stops)
    {
        foreach (var (at, colour, opacity) in stops)
        {
            Svg.Open("stop").Attribute("offset", at).Attribute("stop-color", colour.Hex);
            if (opacity < 1)
            {
                Svg.Attribute("stop-opacity", opacity);
            }

            Svg.Close();
        }

        Svg.Close();
    }
}
