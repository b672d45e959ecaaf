using Sketch.Units;

namespace Sketch.Planning;

/// <summary>Lengths as a file writes them, whatever its units: marks of a ruler, rounded down, so that what is left is never overstated.</summary>
/// <param name="metric">Whole millimetres; otherwise sixteenths of an inch.</param>
internal sealed class LengthSource(bool metric)
{
    private const int Marks = 16;

    /// <summary>The mark at or below a length that is not negative.</summary>
    public Length Down(Length length)
    {
        var (step, marks) = metric ? (Length.NanometresPerMillimetre, 1) : (Length.NanometresPerInch, Marks);
        return new((long)((Int128)length.Nanometres * marks / step * step / marks));
    }

    /// <summary>A length with its unit.</summary>
    public string Text(Length length) => metric ? RulerText.Millimetres(Down(length)) : RulerText.Inches(Down(length), Marks) + " in";

    /// <summary>Width x height.</summary>
    public string Text(Size size) => $"{Text(size.Width)} x {Text(size.Height)}";

    /// <summary>The size that <see cref="Text(Size)"/> writes.</summary>
    public Size Down(Size size) => new(Down(size.Width), Down(size.Height));
}
