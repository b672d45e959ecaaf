using System.Collections.Immutable;
using System.Globalization;
using Sketch.Units;

namespace Sketch.CutFiles;

/// <summary>A sheet of one paper as a machine cuts it.</summary>
/// <param name="Material">The paper; where no paper is known, the role or colour.</param>
/// <param name="Number">Which sheet of that paper it is, from 1.</param>
/// <param name="Sheets">How many sheets of that paper there are.</param>
/// <param name="Page">The size of the sheet.</param>
/// <param name="InInches">Whether that size is given in inches.</param>
/// <param name="Pieces">How many pieces are cut from it.</param>
/// <param name="Paths">All lines in the order of work: layer by layer, and inner cuts before the outer ones round them.</param>
public sealed record CutSheet(
    string Material, int Number, int Sheets, Size Page, bool InInches, int Pieces, ImmutableArray<CutPath> Paths)
{
    /// <summary>What it is, such as "navy, front, sheet 1 of 2".</summary>
    public string Title => Sheets == 1 ? Material : string.Create(CultureInfo.InvariantCulture, $"{Material}, sheet {Number} of {Sheets}");
}
