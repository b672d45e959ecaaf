using Sketch.Colours;
using Sketch.Papers;

namespace Sketch.Drawing.Papers;

/// <summary>
/// What a pattern is drawn on: a piece from 0, 0 to its width and height in millimetres. Regular patterns are laid symmetrically about
/// the middle, as a careful maker cuts them; scattered ones follow the seed. Figures may run over the edges: the piece clips them.
/// </summary>
/// <param name="Svg">Where the figures go.</param>
/// <param name="Look">The paper.</param>
/// <param name="Width">Width of the piece in millimetres.</param>
/// <param name="Height">Height of the piece in millimetres.</param>
/// <param name="Seed">Which part of the sheet the piece is cut from.</param>
internal readonly record struct FigureSheet(SvgWriter Svg, PaperLook Look, double Width, double Height, ulong Seed)
{
    internal Rgb Figure(int index) => Shades.Figure(Look, index);

    /// <summary>
    /// Places of a regular pattern, a period apart and symmetrical about the middle, that touch 0 to <paramref name="length"/> with half
    /// their width.
    /// </summary>
    internal static IEnumerable<(int Index, double At)> Centred(double length, double period, double halfWidth, double shift = 0)
    {
        var middle = length / 2 + shift;
        var first = (int)Math.Ceiling((-halfWidth - middle) / period);
        var last = (int)Math.Floor((length + halfWidth - middle) / period);
        for (var i = first; i <= last; i++)
        {
            yield return (i, middle + i * period);
        }
    }

    /// <summary>One path without fill.</summary>
    internal void Stroke(PathText path, Rgb colour, double width, double opacity = 1, bool round = false, string? dashes = null)
    {
        if (path.IsEmpty)
        {
            return;
        }

        Svg.Open("path").Attribute("fill", "none").Attribute("stroke", colour.Hex).Attribute("stroke-width", width);
        if (opacity < 1)
        {
            Svg.Attribute("stroke-opacity", opacity);
        }

        if (round)
        {
            Svg.Attribute("stroke-linecap", "round");
        }

        if (dashes is not null)
        {
            Svg.Attribute("stroke-dasharray", dashes);
        }

        Svg.Attribute("d", path.ToString()).Close();
    }

    /// <summary>One filled path.</summary>
    internal void Fill(PathText path, Rgb colour, double opacity = 1)
    {
        if (path.IsEmpty)
        {
            return;
        }

        Svg.Open("path").Attribute("fill", colour.Hex);
        if (opacity < 1)
        {
            Svg.Attribute("fill-opacity", opacity);
        }

        Svg.Attribute("d", path.ToString()).Close();
    }
}
