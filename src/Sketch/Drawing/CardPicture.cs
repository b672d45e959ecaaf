using System.Collections.Immutable;
using Sketch.Text;

namespace Sketch.Drawing;

/// <summary>A picture of a card, with the way from what it shows back to the lines that say so.</summary>
/// <param name="Svg">The picture as SVG at true size.</param>
/// <param name="Pieces">
/// What is drawn, in drawing order: bases and envelopes first, then what lies on them. Through a window in the front the inside is seen,
/// so it stands before the front.
/// </param>
public sealed record CardPicture(string Svg, ImmutableArray<DrawnPiece> Pieces);

/// <summary>One thing of a picture.</summary>
/// <param name="Id">The id of its group in the SVG.</param>
/// <param name="Title">What it is, as the group's title says it.</param>
/// <param name="Location">The line that says it; copies of one line have it in common.</param>
public sealed record DrawnPiece(string Id, string Title, Location Location);
