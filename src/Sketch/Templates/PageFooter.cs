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
    private const double Sample = 5;

    // The bars lie close together, so that one ruler laid along them measures both.
    private const double BarsApart = 1.2;

    private const double Half = Sample / 2;

    private static readonly (string Word, Func<TemplateLine, bool> IsMeant, TemplateLine Line)[] Samples =
    [
        Straight(LineKind.Cut, "cut"),
        Straight(LineKind.Fold, "fold"),
        Straight(LineKind.Place, "place"),
        Straight(LineKind.Edge, "edge"),
        ("grain", l => l.Name == PieceBlock.GrainArrow, new(LineKind.Mark, "sample grain",
            [
                Stroke(-Half, 0, Half, 0), Stroke(-Half + 1.5, -0.9, -Half, 0, -Half + 1.5, 0.9),
                Stroke(Half - 1.5, -0.9, Half, 0, Half - 1.5, 0.9),
            ],
            false)),
        ("cross", l => l.Name == Tiles.JoiningCross, new(LineKind.Mark, "sample cross",
            [Stroke(-1.6, 0, 1.6, 0), Stroke(0, -1.6, 0, 1.6)], false)),
    ];

    /// <summary>Its height in millimetres of the finished card, with the room above it.</summary>
    public double Height => Above + TemplateLettering.LineHeight * (IsBeside ? 2 : 4);

    private double BesideBars => PrinterScale.Bar.Millimetres + Gap + lettering.Width("100 mm") + 2 * Gap;

    private bool IsBeside => BesideBars + lettering.Width(HowToPrint) + Gap + lettering.Width("00/00") <= width;

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
            number.Shift(width - number.Box.Width, y),
        ];
    }

    /// <summary>A short sample of each kind of line that is on the page, with its word.</summary>
    /// <param name="top">Where the footer begins.</param>
    /// <param name="drawn">The lines of the page.</param>
    public ImmutableArray<(TemplateLine Line, TemplateText Word)> Legend(double top, IReadOnlyCollection<TemplateLine> drawn)
    {
        var (x, y) = WordsAt(top + Above);
        y += TemplateLettering.LineHeight;
        var legend = ImmutableArray.CreateBuilder<(TemplateLine, TemplateText)>();
        foreach (var (word, isMeant, line) in Samples.Where(s => drawn.Any(s.IsMeant)))
        {
            var text = lettering.Set(word).Shift(x + Sample + Gap, y);
            legend.Add((line.Transform(Affine.Shift(x + Half, y + TemplateLettering.LineHeight / 2)), text));
            x = text.Box.Right + Gap;
        }

        return legend.ToImmutable();
    }

    private (double X, double Y) WordsAt(double first) => IsBeside ? (BesideBars, first) : (0, first + 2 * TemplateLettering.LineHeight);

    private static (string, Func<TemplateLine, bool>, TemplateLine) Straight(LineKind kind, string word) =>
        (word, l => l.Kind == kind, new(kind, $"sample {word}", [Stroke(-Half, 0, Half, 0)], false));

    private static Contour Stroke(double x, double y, params ReadOnlySpan<double> further)
    {
        var ends = ImmutableArray.CreateBuilder<Segment>();
        for (var i = 0; i < further.Length; i += 2)
        {
            ends.Add(Segment.Line(new(further[i], further[i + 1])));
        }

        return new(new(x, y), ends.ToImmutable());
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
