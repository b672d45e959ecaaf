using System.Collections.Immutable;
using System.Globalization;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// The footer of every page: two bars to check the print by, how to print, and what the kinds of lines mean. It is kept
/// low enough that the flat base of a 5 x 7 in card still fits a letter page.
/// </summary>
internal sealed class PageFooter(TemplateLettering lettering, double width)
{
    /// <summary>The words on every page.</summary>
    public const string HowToPrint = "Print at 100 %, no fit to page";

    private const double Above = 1;
    private const double Gap = 1.5;
    private const double Sample = 6;

    // The bars lie close together, so that one ruler laid along them measures both.
    private const double BarsApart = 1.2;

    private static readonly (LineKind Kind, string Word)[] Legend =
        [(LineKind.Cut, "cut"), (LineKind.Fold, "fold"), (LineKind.Place, "place")];

    /// <summary>Its height in millimetres of the finished card, with the room above it.</summary>
    public double Height => Above + TemplateLettering.LineHeight * (IsBeside ? 2 : 4);

    private double BesideBars => PrinterScale.Bar.Millimetres + Gap + lettering.Width("100 mm") + 2 * Gap;

    private double LegendWidth => Legend.Sum(l => Sample + Gap + lettering.Width(l.Word) + 2 * Gap);

    private bool IsBeside => BesideBars + Math.Max(lettering.Width(HowToPrint), LegendWidth + lettering.Width("000/000")) <= width;

    /// <summary>The bars: a line with a mark at each inch, and one with a mark at each centimetre.</summary>
    public static ImmutableArray<TemplateLine> Bars(double top)
    {
        var middle = top + Above + TemplateLettering.LineHeight;
        var inches = Enumerable.Range(0, 9).Select(i => (i * 12.7, i % 2 == 0 ? 3.0 : 1.8)).ToArray();
        var centimetres = Enumerable.Range(0, 11).Select(i => (i * 10.0, i % 5 == 0 ? 3.0 : 1.8)).ToArray();
        return [Bar("bar 4 in", middle - BarsApart / 2, inches, -1), Bar("bar 100 mm", middle + BarsApart / 2, centimetres, 1)];
    }

    /// <summary>The words beside the bars, how to print, and the page number.</summary>
    public ImmutableArray<TemplateText> Texts(double top, int page, int pages)
    {
        var first = top + Above;
        var (x, y) = WordsAt(first);
        var number = lettering.Set(string.Create(CultureInfo.InvariantCulture, $"{page}/{pages}"));
        return
        [
            lettering.Set("4 in").Shift(PrinterScale.Bar.Millimetres + Gap, first),
            lettering.Set("100 mm").Shift(PrinterScale.Bar.Millimetres + Gap, first + TemplateLettering.LineHeight),
            lettering.Set(HowToPrint).Shift(x, y),
            .. Samples(first).Select(s => s.Word),
            number.Shift(width - number.Box.Width, y + TemplateLettering.LineHeight),
        ];
    }

    /// <summary>A short line of each kind.</summary>
    public ImmutableArray<TemplateLine> LegendLines(double top) => [.. Samples(top + Above).Select(s => s.Line)];

    private (double X, double Y) WordsAt(double first) => IsBeside ? (BesideBars, first) : (0, first + 2 * TemplateLettering.LineHeight);

    private IEnumerable<(TemplateLine Line, TemplateText Word)> Samples(double first)
    {
        var (x, y) = WordsAt(first);
        y += TemplateLettering.LineHeight;
        foreach (var (kind, word) in Legend)
        {
            var middle = y + TemplateLettering.LineHeight / 2;
            var text = lettering.Set(word).Shift(x + Sample + Gap, y);
            yield return (TemplateLine.Through(kind, $"sample {word}", new(x, middle), new(x + Sample, middle)), text);
            x = text.Box.Right + 2 * Gap;
        }
    }

    private static TemplateLine Bar(string name, double y, (double X, double Length)[] marks, int direction) => new(
        LineKind.Mark,
        name,
        [
            new(new(marks[0].X, y), [Segment.Line(new(marks[^1].X, y))]),
            .. marks.Select(m => new Contour(new(m.X, y), [Segment.Line(new(m.X, y + direction * m.Length))])),
        ],
        false);
}
