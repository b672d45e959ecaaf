using System.Globalization;

namespace Sketch.Units;

/// <summary>
/// How lengths are written: as marks of a ruler, as decimals, in millimetres, and with "about" where no ruler shows them. No nonzero length
/// is written as zero, except the residue of dividing into equal parts.
/// </summary>
/// <param name="Metric">Whether in millimetres; otherwise in inches as on a ruler.</param>
/// <param name="Marks">Marks per inch of the maker's ruler: 16, 32 or 64.</param>
public sealed record LengthFormat(bool Metric, int Marks = LengthFormat.RulerMarks)
{
    /// <summary>Marks per inch of a usual ruler.</summary>
    public const int RulerMarks = 16;

    /// <summary>Marks per inch of the finest ruler, and the finest fraction that files may write.</summary>
    public const int FinestMarks = 64;

    /// <summary>The residue that dividing into equal parts may leave; too small to be seen or cut.</summary>
    public static readonly Length Crumb = new(10);

    /// <summary>The spacing of the marks that makers cut by: 1/16 in or 1 mm.</summary>
    public Length Step => Metric ? Length.Millimetre(1) : Length.Inch(0, 1, RulerMarks);

    /// <summary>The unit as written after a number.</summary>
    public string Unit => Metric ? "mm" : "in";

    /// <summary>The unit in words, for headings.</summary>
    public string UnitName => Metric ? "millimetres" : "inches";

    /// <summary>
    /// One length without its unit, such as 2 5/8; a sign after it shows that the true length lies beside the mark. Millimetres are
    /// rounded to a hundredth.
    /// </summary>
    public string Text(Length length) => Metric ? MillimetreNumber(length) : Ruler(length, Marks);

    /// <summary>Width and height without the unit, such as 4 x 5 1/4.</summary>
    public string Text(Size size) => $"{Text(size.Width)} x {Text(size.Height)}";

    /// <summary>What a mat shows on its sides, in as few words as cover all four.</summary>
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

    /// <summary>
    /// A length without its unit as a file may write it: a fraction where it falls on a mark down to 1/64, else decimals; millimetres are
    /// rounded to a hundredth.
    /// </summary>
    /// <param name="length">The length.</param>
    /// <param name="decimals">The most decimals of an inch.</param>
    public string Written(Length length, int decimals = 4) =>
        Metric ? MillimetreNumber(length)
        : IsOnMark(length, FinestMarks) ? Ruler(length, FinestMarks)
        : InchNumber(length, decimals);

    /// <summary>A length with its unit as a file may write it.</summary>
    public string WithUnit(Length length) => $"{Written(length)} {Unit}";

    /// <summary>
    /// The size of something that is bought by its thickness, without the unit: the thickness as written, the other side as on a ruler.
    /// </summary>
    public string ReadyMade(Size size) => ReadyMade(size, Text);

    /// <summary>A length with its unit for a sentence, such as "1/8 in", "about 2 13/16 in" or "3.2 mm".</summary>
    public string About(Length length) => $"{Near(length)} {Unit}";

    /// <summary>Width and height with the unit for a sentence, such as "about 4 1/8 x 5 1/2 in" or "105 x 148 mm".</summary>
    public string About(Size size) => $"{Near(size.Width)} x {Near(size.Height)} {Unit}";

    /// <summary>The size of something that is bought by its thickness, with the unit for a sentence.</summary>
    public string AboutReadyMade(Size size) => $"{ReadyMade(size, Near)} {Unit}";

    /// <summary>A bare decimal number of at most 6 decimals.</summary>
    public string Number(Length length) => Metric ? MillimetreNumber(length, 6) : InchNumber(length, 6);

    /// <summary>The multiple of the step nearest to a size, ties to the smaller, and at least one step.</summary>
    public Length Nearest(Length length)
    {
        var steps = (length.Nanometres * 2 + Step.Nanometres - 1) / (2 * Step.Nanometres);
        return Step * Math.Max(1, steps);
    }

    /// <summary>The multiple of the step at or below a length that is not negative.</summary>
    public Length Down(Length length) => Step * (length.Nanometres / Step.Nanometres);

    /// <summary>A size with both sides rounded down to a step.</summary>
    public Size Down(Size size) => new(Down(size.Width), Down(size.Height));

    /// <summary>
    /// The nearest mark of a ruler in inches, ties to the smaller, followed by " +" when the true length is larger and " -" when it is
    /// smaller. A length that would round to no mark at all is written exactly where it is a fraction to the 64th, else as less than the
    /// first mark, such as "1/16 -"; only residues are "0 +".
    /// </summary>
    /// <param name="length">The length; negative lengths carry a minus sign in front.</param>
    /// <param name="marks">Marks per inch: 16, 32 or 64.</param>
    public static string Ruler(Length length, int marks = RulerMarks)
    {
        if (length.Nanometres < 0)
        {
            var positive = Ruler(-length, marks);
            return "-" + (positive.EndsWith('+') ? positive[..^1] + "-" : positive.EndsWith('-') ? positive[..^1] + "+" : positive);
        }

        if (ComesToNothing(length, marks) && length > Crumb)
        {
            return IsOnMark(length, FinestMarks) ? Ruler(length, FinestMarks) : Fraction(1, marks) + " -";
        }

        var scaled = (Int128)length.Nanometres * marks;
        var mark = (long)(scaled / Length.NanometresPerInch);
        var rest = (long)(scaled % Length.NanometresPerInch);
        if (rest * 2 > Length.NanometresPerInch)
        {
            mark++;
        }

        var suffix = rest == 0 ? "" : rest * 2 > Length.NanometresPerInch ? " -" : " +";
        return Fraction(mark, marks) + suffix;
    }

    /// <summary>Whether the length falls on a mark of a ruler with that many marks to the inch.</summary>
    public static bool IsOnMark(Length length, int marks) => (Int128)length.Nanometres * marks % Length.NanometresPerInch == 0;

    /// <summary>Millimetres with as many decimals as needed, at most <paramref name="decimals"/>, such as "69.85 mm".</summary>
    public static string Millimetres(Length length, int decimals = 2) => MillimetreNumber(length, decimals) + " mm";

    /// <summary>Millimetres as a bare number with a point; a length that would round to 0 has as many decimals as needed.</summary>
    public static string MillimetreNumber(Length length, int decimals = 2) =>
        Decimals(length, Length.NanometresPerMillimetre, decimals);

    /// <summary>Inches as a bare number with a point, halves rounded away from zero.</summary>
    public static string InchNumber(Length length, int decimals = 6) =>
        Decimals(length, Length.NanometresPerInch, decimals);

    /// <summary>A length with its unit as files of any unit may write it: inches as a fraction to the 64th, else millimetres.</summary>
    public static string Exact(Length length) =>
        IsOnMark(length, FinestMarks) ? Ruler(length, FinestMarks) + " in" : Millimetres(length, 6);

    /// <summary>Width and height with their units as files of any unit may write them.</summary>
    public static string Exact(Size size) => $"{Exact(size.Width)} x {Exact(size.Height)}";

    private string ReadyMade(Size size, Func<Length, string> other)
    {
        var thickness = Length.Min(size.Width, size.Height);
        return $"{Side(size.Width)} x {Side(size.Height)}";

        string Side(Length side) => side == thickness ? Written(side) : other(side);
    }

    private string Near(Length length)
    {
        if (Metric)
        {
            return MillimetreNumber(length);
        }

        var text = Ruler(length, Marks);
        return text[^1] is not ('+' or '-') ? text
            : ComesToNothing(length, Marks) ? $"less than {Fraction(1, Marks)}"
            : $"about {text[..^2]}";
    }

    /// <summary>Whether a length above zero would be rounded to no mark at all.</summary>
    private static bool ComesToNothing(Length length, int marks) =>
        length > Length.Zero && (Int128)length.Nanometres * marks * 2 <= Length.NanometresPerInch;

    private static string Decimals(Length length, long unit, int decimals)
    {
        var number = (decimal)length.Nanometres / unit;
        var rounded = Math.Round(number, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 && length.Abs() > Crumb ? number : rounded).ToString("0.##########", CultureInfo.InvariantCulture);
    }

    private static string Fraction(long mark, int marks)
    {
        var whole = mark / marks;
        var numerator = mark % marks;
        if (numerator == 0)
        {
            return whole.ToString(CultureInfo.InvariantCulture);
        }

        long denominator = marks;
        while (numerator % 2 == 0)
        {
            numerator /= 2;
            denominator /= 2;
        }

        return whole == 0 ? $"{numerator}/{denominator}" : $"{whole} {numerator}/{denominator}";
    }
}
