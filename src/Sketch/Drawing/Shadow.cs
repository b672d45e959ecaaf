using Sketch.Colours;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>
/// The shadow of a piece, an element of its own beneath it. The light comes from the upper left; the higher the piece, the further and
/// softer its shadow. Softness is a few widened outlines on top of each other: blur filters would be rasterised in a PDF.
/// </summary>
internal static class Shadow
{
    internal static readonly Rgb Colour = new(0x1d, 0x1a, 0x28);

    /// <summary>
    /// Height of the upper side of a sheet of cardstock above what it lies flat on, in millimetres, a little more than its thickness so
    /// that layers read as layers.
    /// </summary>
    internal const double FlatHeight = 0.35;

    private const int MostLayers = 11;

    /// <summary>The layers of a flat shadow, and of a soft one on a crowded face.</summary>
    private const int FewestLayers = 3;

    /// <summary>Draws the shadow of an outline.</summary>
    /// <param name="svg">Where it goes.</param>
    /// <param name="cutId">The id of the outline's path.</param>
    /// <param name="height">Millimetres above what it falls on.</param>
    /// <param name="degrees">The clockwise turn of the piece: the shadow still falls to the lower right of the face.</param>
    /// <param name="crowding">How crowded the face is: the more crowded, the simpler its shadows.</param>
    internal static void Draw(SvgWriter svg, string cutId, double height, double degrees, Crowding crowding)
    {
        var fall = Affine.Turn(-degrees, default).Apply(new(height * 0.34, height * 0.46));
        var softness = 0.25 + 0.62 * height;
        var layers = crowding switch
        {
            Crowding.Packed => 1,
            Crowding.Crowded => FewestLayers,
            _ => Math.Clamp((int)Math.Ceiling(softness / 0.15), FewestLayers, MostLayers),
        };
        var darkness = 0.2 + 0.1 * Math.Min(1, height / 2);
        var opacity = 1 - Math.Pow(1 - darkness, 1.0 / layers);

        svg.Open("g").Attribute("class", "shadow").Transform(Affine.Shift(fall.X, fall.Y))
            .Attribute("fill", Colour.Hex).Attribute("stroke", Colour.Hex).Attribute("stroke-linejoin", "round");
        for (var i = layers; i > 0; i--)
        {
            // Closer together and darker near the piece, so that the shadow fades out instead of ending.
            var width = 2 * softness * Math.Pow((double)(i - 1) / Math.Max(1, layers - 1), 1.5);
            svg.Open("use").Reference("#" + cutId).Attribute("stroke-width", width)
                .Attribute("opacity", opacity * (1.45 - (double)i / layers)).Close();
        }

        svg.Close();
    }
}
