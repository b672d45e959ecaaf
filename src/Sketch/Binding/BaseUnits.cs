using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Binding;

/// <summary>Checks whether a base written as width x height is in the units that its file is assumed to use.</summary>
internal static class BaseUnits
{
    // Common practice, no source: sheets sold for cards are at most 12 x 24 in; sides of usual cards are 50 to 330 mm.
    private static readonly Length LargestSide = Length.Inch(24);
    private const int LeastMillimetres = 50;
    private const int MostMillimetres = 330;

    /// <summary>Reports a base that is probably meant in other units than those in which it is read.</summary>
    /// <param name="file">The card.</param>
    /// <param name="line">Its base line, with a written size.</param>
    /// <param name="size">The written size.</param>
    /// <param name="findings">Receives the finding.</param>
    /// <returns>The units of the base, if metric, where the file does not specify units and is not like another card.</returns>
    public static UnitSystem? Check(FileSyntax file, BaseLine line, Size size, FindingBag findings)
    {
        var measure = line.Measure!.Span;
        var numbers = line.Tokens.Tokens.Where(t => t.Number is not null && t.Span.Start >= measure.Start && t.Span.End <= measure.End)
            .Select(t => t.Number!).ToList();
        List<LineSyntax> lines = [.. file.Lines[0].Children, .. file.Lines.Skip(1)];
        if (size.Width > LargestSide || size.Height > LargestSide)
        {
            ReportHuge(new(file.Source, measure), numbers, lines.OfType<UnitsLine>().All(u => u.Unit == Unit.Inch), findings);
        }

        if (lines.Exists(l => l is UnitsLine or TitleLine { Word: "like" })
            || numbers is not [.., { Unit: (Unit.Millimetre or Unit.Centimetre) and { } unit }]
            || !numbers.TrueForAll(n => n.Unit == unit || n is { Unit: null, IsFraction: false }))
        {
            return null;
        }

        ReportMissing(file, line, unit, lines, findings);
        return unit == Unit.Centimetre ? UnitSystem.Centimetres : UnitSystem.Millimetres;
    }

    private static void ReportHuge(Location measure, List<Numeral> numbers, bool inInches, FindingBag findings)
    {
        var text = measure.Source.Content[measure.Span.Start..measure.Span.End];
        var isBare = inInches && numbers.TrueForAll(n => n.Unit is null);
        var isMetric = isBare && numbers.TrueForAll(
            n => !n.IsFraction && n.Numerator >= LeastMillimetres * n.Denominator && n.Numerator <= MostMillimetres * n.Denominator);
        findings.Add(FindingCatalogue.HugeBase, measure,
            $"A card of {text}{(isBare ? " inches" : "")} is larger than any sheet that cards are made of.",
            isMetric ? $"Write {text} mm, or units mm below the title if all its numbers are millimetres."
                : "Write its size when closed, such as A2 or 5 x 7 in.",
            isMetric ? $"{text} mm" : null);
    }

    private static void ReportMissing(FileSyntax file, BaseLine line, Unit unit, List<LineSyntax> lines, FindingBag findings)
    {
        var (word, name) = unit == Unit.Centimetre ? ("cm", "centimetres") : ("mm", "millimetres");
        var start = line.Tokens.Tokens[0];
        // With lengths above the base, the units line would have to come before those.
        var isFirst = lines.TakeWhile(l => l != line).All(l => l is WordsLine or FontLine or RoleLine && l.Clauses.IsEmpty);
        var isPlain = file.BareUnits.All(u => u == unit);
        findings.Add(FindingCatalogue.MissingUnits, new(file.Source, start.Span),
            $"The base is in {name}, but sizes are given in inches, because no line sets the units.",
            $"Write units {word} below the title{(isPlain ? "" : ", and in behind each number that means inches")}.",
            isFirst && isPlain ? $"units {word}{Newline(file.Source)}{Indent(file.Source, start.Span)}{start.Text}" : null);
    }

    private static string Newline(SourceText source) => source.Content.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    private static string Indent(SourceText source, TextSpan span) =>
        source.Content[(source.Content.LastIndexOf('\n', span.Start) + 1)..span.Start];
}
