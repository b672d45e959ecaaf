using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>The paper that templates are printed on.</summary>
/// <param name="Name">Its name on the command line.</param>
/// <param name="Size">Its size, upright.</param>
/// <param name="InInches">Whether the size is given in inches.</param>
public sealed record PageFormat(string Name, Size Size, bool InInches)
{
    /// <summary>8 1/2 x 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static readonly PageFormat Letter = new("letter", new(Length.Inch(8, 1, 2), Length.Inch(11)), true);

    /// <summary>210 x 297 mm (ISO 216).</summary>
    public static readonly PageFormat A4 = new("a4", new(Length.Millimetre(210), Length.Millimetre(297)), false);

    /// <summary>All supported pages.</summary>
    public static readonly ImmutableArray<PageFormat> All = [Letter, A4];

    /// <summary>The margin on every side: 1/4 in, up to which home printers can print (common practice, no source).</summary>
    public static readonly Length Margin = Length.Inch(0, 1, 4);
}
