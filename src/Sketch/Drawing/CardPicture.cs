using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Text;

namespace Sketch.Drawing;

/// <summary>A picture of a card, with a mapping from what it shows to the source lines.</summary>
/// <param name="Svg">The picture as SVG at true size.</param>
/// <param name="Pieces">
/// What is drawn, in drawing order: bases and envelopes first, then what lies on them. Through a window in the front the inside shows,
/// so it comes before the front.
/// </param>
public sealed record CardPicture(string Svg, ImmutableArray<DrawnPiece> Pieces);

/// <summary>One item of a picture.</summary>
/// <param name="Id">The id of its group in the SVG.</param>
/// <param name="Title">What it is, as in the group's title.</param>
/// <param name="Location">The source line; copies of one line share it.</param>
public sealed record DrawnPiece(string Id, string Title, Location Location)
{
    /// <summary>The path of the piece; null for bases, envelopes and score lines.</summary>
    public PiecePath? Path { get; init; }
}
