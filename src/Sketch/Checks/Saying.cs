using System.Globalization;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Pieces and lengths in the words of the file that they come from.</summary>
internal sealed class Saying(UnitSystem units)
{
    private const int FinestMarks = 64;

    private bool IsMetric => units != UnitSystem.Inches;

    /// <summary>A length for a sentence: "1/8 in", "about 2 53/64 in" where no ruler shows it, "3.2 mm".</summary>
    public string Length(Length length)
    {
        if (IsMetric)
        {
            return RulerText.Millimetres(length);
        }

        var text = RulerText.Inches(length, FinestMarks);
        return text is "0 +" ? "less than 1/64 in" : text[^1] is '+' or '-' ? $"about {text[..^2]} in" : text + " in";
    }

    /// <summary>Width and height for a sentence.</summary>
    public string Size(Size size) => IsMetric
        ? $"{RulerText.MillimetreNumber(size.Width)} x {RulerText.Millimetres(size.Height)}"
        : $"{Inches(size.Width)} x {Inches(size.Height)} in";

    /// <summary>A length as the file may write it, to be read back as the same where a ruler shows it.</summary>
    public string Typed(Length length) => units switch
    {
        UnitSystem.Inches => RulerText.IsOnMark(length, FinestMarks) ? RulerText.Inches(length, FinestMarks) : Decimal(length),
        UnitSystem.Centimetres => RulerText.Millimetres(length),
        _ => RulerText.MillimetreNumber(length),
    };

    /// <summary>A width and height as the file may write them.</summary>
    public string Typed(Size size) => $"{Typed(size.Width)} x {Typed(size.Height)}";

    /// <summary>A length up to the next mark by which makers set things: 1/16 in or 1 mm, unless it is on a fine mark itself.</summary>
    public Length UpToMark(Length length) => IsOnFineMark(length) ? length : ToMark(length, up: true);

    /// <summary>A length down to such a mark.</summary>
    public Length DownToMark(Length length) => IsOnFineMark(length) ? length : ToMark(length, up: false);

    /// <summary>Letters no taller than this, down to a 1/32 in or half a millimetre; none where that is too small to be read (1 mm).</summary>
    public Length LettersUpTo(Length height)
    {
        var step = IsMetric ? Units.Length.NanometresPerMillimetre / 2 : Units.Length.NanometresPerInch / 32;
        var letters = new Length(height.Nanometres / step * step);
        return letters.Nanometres >= Units.Length.NanometresPerMillimetre ? letters : Units.Length.Zero;
    }

    /// <summary>What is usually wrapped round: 1/2 in, or 12 mm (common practice, no source).</summary>
    public Length UsualWrap => IsMetric ? Units.Length.Millimetre(12) : Units.Length.Inch(0, 1, 2);

    private bool IsOnFineMark(Length length) =>
        IsMetric ? length.Nanometres % (Units.Length.NanometresPerMillimetre / 2) == 0 : RulerText.IsOnMark(length, FinestMarks);

    private Length ToMark(Length length, bool up)
    {
        var step = IsMetric ? Units.Length.NanometresPerMillimetre : Units.Length.NanometresPerInch / 16;
        return new((length.Nanometres + (up ? step - 1 : 0)) / step * step);
    }

    private static string Inches(Length length)
    {
        var text = RulerText.Inches(length, FinestMarks);
        return text[^1] is '+' or '-' ? "about " + text[..^2] : text;
    }

    private static string Decimal(Length length) => Math.Round(length.Inches, 3).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A piece as its maker knows it: its names without the face, or "the strip of line 7" when it has none.</summary>
    public static string Called(Piece piece)
    {
        var names = piece.Path.Split('/')[1..].Select(Plain).ToList();
        if (piece.Kind == "mat" && names.Count > 1)
        {
            names.RemoveAt(names.Count - 1);
            return IsKindOnly(names[^1]) ? OfLine(piece) : "the mat behind " + Named(names);
        }

        return names.Count == 0 || IsKindOnly(names[^1]) ? OfLine(piece) : Named(names);
    }

    /// <summary>The subject of a sentence about some copies of a line: "lamp", "all 5 copies of lamp", "2 of the 5 copies of lamp".</summary>
    public static string Called(Piece piece, int found, int copies) =>
        copies == 1 ? Called(piece)
        : found == copies ? $"all {copies} copies of {Called(piece)}"
        : $"{found} of the {copies} copies of {Called(piece)}";

    /// <summary>The first letter made a capital where the sentence begins with words of ours.</summary>
    public static string Begin(string sentence) =>
        sentence.StartsWith("the ", StringComparison.Ordinal) || sentence.StartsWith("all ", StringComparison.Ordinal)
            ? char.ToUpperInvariant(sentence[0]) + sentence[1..]
            : sentence;

    /// <summary>Several things in a row: "a", "a and b", "a, b and c".</summary>
    public static string List(IReadOnlyList<string> parts) => parts.Count switch
    {
        0 => "",
        1 => parts[0],
        _ => string.Join(", ", parts.Take(parts.Count - 1)) + " and " + parts[^1],
    };

    private static string OfLine(Piece piece) => $"the {piece.Kind} of line {piece.Location.Start.Line}";

    private static string Named(List<string> names) => string.Join('/', names.Where(n => !IsKindOnly(n)));

    private static string Plain(string name) => name.IndexOf('[', StringComparison.Ordinal) is var at and >= 0 ? name[..at] : name;

    private static bool IsKindOnly(string name) => Vocabulary.Kinds.Contains(name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9'));
}
