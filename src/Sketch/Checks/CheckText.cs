using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Pieces and lengths in the words of the file that they come from.</summary>
internal sealed class CheckText(UnitSystem units)
{
    private readonly LengthFormat _lengths = units.Format(LengthFormat.FinestMarks);
    private readonly bool _isInCentimetres = units == UnitSystem.Centimetres;

    /// <summary>The spacing of the marks that makers cut by: 1/16 in or 1 mm.</summary>
    public Length Step => _lengths.Step;

    /// <summary>A length for a sentence: "1/8 in", "about 2 53/64 in" where no ruler shows it, "3.2 mm".</summary>
    public string Length(Length length) => _lengths.About(length);

    /// <summary>Width and height for a sentence.</summary>
    public string Size(Size size) => _lengths.About(size);

    /// <summary>A length as the file may write it, which reads back as the same length where a ruler shows it.</summary>
    public string Typed(Length length) =>
        _isInCentimetres ? _lengths.WithUnit(length) : _lengths.Written(length, decimals: 3);

    /// <summary>A width and height as the file may write them.</summary>
    public string Typed(Size size) => $"{Typed(size.Width)} x {Typed(size.Height)}";

    /// <summary>A length rounded up to the next mark that makers work by, 1/16 in or 1 mm, unless it is on a fine mark itself.</summary>
    public Length UpToMark(Length length) => IsOnFineMark(length) ? length : DownTo(_lengths.Step, length + _lengths.Step - new Length(1));

    /// <summary>A length rounded down to such a mark; one shorter than the first mark is unchanged.</summary>
    public Length DownToMark(Length length)
    {
        var mark = IsOnFineMark(length) ? length : DownTo(_lengths.Step, length);
        return mark == Units.Length.Zero ? length : mark;
    }

    /// <summary>
    /// The tallest letters below a height, in steps of 1/32 in or half a millimetre, that are accepted; none if those would be too small
    /// to be read (1 mm). The predicate is assumed to accept every smaller height too.
    /// </summary>
    public Length LargestLetters(Length below, Func<Length, bool> accepts)
    {
        var step = (_lengths.Step / 2).Nanometres;
        var (least, most) = (Units.Length.NanometresPerMillimetre / step, (below.Nanometres - 1) / step);
        least += least * step < Units.Length.NanometresPerMillimetre ? 1 : 0;
        if (most < least || !accepts(new(least * step)))
        {
            return Units.Length.Zero;
        }

        while (least < most)
        {
            var middle = (least + most + 1) / 2;
            (least, most) = accepts(new(middle * step)) ? (middle, most) : (least, middle - 1);
        }

        return new(least * step);
    }

    /// <summary>The usual length of a wrap: 1/2 in, or 12 mm (common practice, no source).</summary>
    public Length UsualWrap => _lengths.Metric ? Units.Length.Millimetre(12) : Units.Length.Inch(0, 1, 2);

    private bool IsOnFineMark(Length length) => _lengths.Metric
        ? length.Nanometres % (Units.Length.NanometresPerMillimetre / 2) == 0
        : LengthFormat.IsOnMark(length, LengthFormat.FinestMarks);

    private static Length DownTo(Length step, Length length) => step * (length.Nanometres / step.Nanometres);

    /// <summary>A piece as its maker knows it: its names without the face, or "the strip of line 7" when it has none.</summary>
    public static string Called(Piece piece)
    {
        var names = piece.Path.Names.ToList();
        if (piece.Kind.Traits.IsLayer && names.Count > 1)
        {
            names.RemoveAt(names.Count - 1);
            return IsKindOnly(names[^1]) ? OfLine(piece) : $"the {piece.Kind.Name} behind {Named(names)}";
        }

        return names.Count == 0 || IsKindOnly(names[^1]) ? OfLine(piece) : Named(names);
    }

    /// <summary>
    /// The subject of a sentence about some copies of a line: "lamp", "all 5 copies of lamp", "2 of the 5 copies of lamp".
    /// </summary>
    public static string Called(Piece piece, int found, int copies) =>
        copies == 1 ? Called(piece)
        : found == copies ? $"all {copies} copies of {Called(piece)}"
        : $"{found} of the {copies} copies of {Called(piece)}";

    /// <summary>Capitalises the first letter if the sentence begins with the program's own words.</summary>
    public static string Begin(string sentence) =>
        sentence.StartsWith("the ", StringComparison.Ordinal) || sentence.StartsWith("all ", StringComparison.Ordinal)
            ? char.ToUpperInvariant(sentence[0]) + sentence[1..]
            : sentence;

    /// <summary>Several things as a list: "a", "a and b", "a, b and c".</summary>
    public static string List(IReadOnlyList<string> parts) => parts.Count switch
    {
        0 => "",
        1 => parts[0],
        _ => string.Join(", ", parts.Take(parts.Count - 1)) + " and " + parts[^1],
    };

    private static string OfLine(Piece piece) => $"the {piece.Kind.Name} of line {piece.Location.Start.Line}";

    private static string Named(List<string> names) => string.Join('/', names.Where(n => !IsKindOnly(n)));

    private static bool IsKindOnly(string name) =>
        Vocabulary.Kinds.Contains(name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9'));
}
