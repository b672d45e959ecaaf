using Sketch.Units;

namespace Sketch.Planning;

/// <summary>Exact lengths as a file writes them, whatever its units.</summary>
internal static class LengthSource
{
    private const int FinestMarks = 64;

    /// <summary>Inches as a fraction where they are one to the 64th, else millimetres; both with their unit.</summary>
    public static string Of(Length length) => RulerText.IsOnMark(length, FinestMarks)
        ? RulerText.Inches(length, FinestMarks) + " in"
        : RulerText.Millimetres(length, 6);

    /// <summary>Width x height.</summary>
    public static string Of(Size size) => $"{Of(size.Width)} x {Of(size.Height)}";
}
