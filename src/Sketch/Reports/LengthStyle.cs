using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>How a report writes lengths for people: bare, since the report says the unit once.</summary>
/// <param name="Metric">Millimetres to a hundredth; otherwise inches as on a ruler.</param>
/// <param name="Marks">Marks in an inch of the maker's ruler: 16, 32 or 64.</param>
public sealed record LengthStyle(bool Metric, int Marks = 16)
{
    /// <summary>Inches for files in inches, millimetres for files in millimetres or centimetres.</summary>
    public static LengthStyle For(UnitSystem units, int marks = 16) => new(units != UnitSystem.Inches, marks);

    /// <summary>The unit in words, for headings.</summary>
    public string UnitName => Metric ? "millimetres" : "inches";

    /// <summary>One length, such as 2 5/8; a sign after it tells that the true length lies beside the mark.</summary>
    public string Text(Length length) => Metric ? RulerText.MillimetreNumber(length) : RulerText.Inches(length, Marks);

    /// <summary>Width and height, such as 4 x 5 1/4.</summary>
    public string Text(Size size) => $"{Text(size.Width)} x {Text(size.Height)}";

    /// <summary>What a mat shows on its sides, in as few words as tell all four.</summary>
    public string Text(Insets border)
    {
        var (left, top, right, bottom) = (Text(border.Left), Text(border.Top), Text(border.Right), Text(border.Bottom));
        if (left == right && top == bottom)
        {
            return left == top ? left : $"sides {left}, top and bottom {top}";
        }

        (string Side, string Shown)[] sides = [("left", left), ("right", right), ("top", top), ("bottom", bottom)];
        var usual = sides.GroupBy(s => s.Shown).MaxBy(g => g.Count())!;
        return usual.Count() == 3
            ? usual.Key + string.Concat(sides.Where(s => s.Shown != usual.Key).Select(s => $", {s.Side} {s.Shown}"))
            : string.Join(", ", sides.Select(s => $"{s.Side} {s.Shown}"));
    }
}
