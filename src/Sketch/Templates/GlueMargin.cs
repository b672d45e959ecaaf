using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>The margin for glue round the hidden part of a layer. A number without a unit counts in the units of each card.</summary>
/// <param name="Inches">The margin on a card in inches.</param>
/// <param name="Millimetres">The margin on a card in millimetres.</param>
/// <param name="Centimetres">The margin on a card in centimetres.</param>
public sealed record GlueMargin(Length Inches, Length Millimetres, Length Centimetres)
{
    private const string Instead = "write the margin for glue, such as \"1/4\" or \"6 mm\".";

    /// <summary>The default margin: 1/4 in (common practice, no source).</summary>
    public static readonly GlueMargin Usual = Of(Length.Inch(0, 1, 4));

    /// <summary>The same margin on every card.</summary>
    public static GlueMargin Of(Length margin) => new(margin, margin, margin);

    /// <summary>Reads a margin as written on the command line.</summary>
    public static Result<GlueMargin> Read(string written) => WrittenLength.Read(written, Instead).Then(inches =>
        inches == Length.Zero
            ? new Failure("a margin of 0 leaves no room for glue; write at least \"1/16\" or \"2 mm\".")
            : Result.Of(new GlueMargin(inches, Read(written, Unit.Millimetre, inches), Read(written, Unit.Centimetre, inches))));

    /// <summary>The margin on a card.</summary>
    public Length On(UnitSystem units) => units switch
    {
        UnitSystem.Millimetres => Millimetres,
        UnitSystem.Centimetres => Centimetres,
        _ => Inches,
    };

    // A bare fraction is one of an inch everywhere.
    private static Length Read(string written, Unit units, Length inches) =>
        WrittenLength.Read(written, Instead, units) is { Problem: null } read ? read.ValueOrDefault : inches;
}
