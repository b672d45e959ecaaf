using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Stashes;

/// <summary>
/// Paper weights in pounds, converted to grams per square metre. A weight in pounds is that of 500 sheets of the grade's basic size,
/// so the grade is needed: 110 lb index (199 g/m2) is lighter than 80 lb cover (216 g/m2).
/// </summary>
public static class PaperWeights
{
    /// <summary>Grams in a pound, exactly (NIST SP 811, appendix B.8).</summary>
    public const double GramsPerPound = 453.59237;

    private const double SheetsPerReam = 500;
    private const double MetresPerInch = 0.0254;
    private const long NanometresPerPoint = 25_400;

    /// <summary>
    /// The grades and their basic sizes in inches: book (also sold as text and offset) 25 x 38 and cover 20 x 26 as in Roberts and
    /// Etherington, "Bookbinding and the Conservation of Books", entry "basis weight"; bond, ledger, index, bristol and tag as in
    /// printers' tables, from memory.
    /// </summary>
    public static ImmutableArray<(string Grade, double Width, double Height)> Grades { get; } =
    [
        ("cover", 20, 26),
        ("text", 25, 38),
        ("book", 25, 38),
        ("offset", 25, 38),
        ("bond", 17, 22),
        ("ledger", 17, 22),
        ("index", 25.5, 30.5),
        ("bristol", 22.5, 28.5),
        ("tag", 24, 36),
    ];

    /// <summary>
    /// Thickness in points (thousandths of an inch) of cover papers by pounds: the printed chart "Paper weight comparison" (info.5y1.org).
    /// Bulk differs by maker: two 80 lb covers measured 10 and 13.5 points.
    /// </summary>
    private static readonly ImmutableArray<(double Pounds, double Points)> CoverChart =
        [(28, 3.8), (40, 6), (65, 8), (74, 9), (80, 9.5), (90, 10), (100, 11), (114, 14), (120, 15)];

    /// <summary>Grams per square metre for pounds of a grade; null when the grade is not known.</summary>
    public static double? Grammage(double pounds, string grade)
    {
        foreach (var (name, width, height) in Grades)
        {
            if (name.Equals(grade, StringComparison.OrdinalIgnoreCase))
            {
                return pounds * GramsPerPound / (SheetsPerReam * width * height * MetresPerInch * MetresPerInch);
            }
        }

        return null;
    }

    /// <summary>
    /// The expected thickness for a weight, to the nearest micrometre: interpolated between the weights of the chart, beyond its ends in
    /// proportion to the weight. A measured thickness is better.
    /// </summary>
    /// <param name="grammage">Grams per square metre, greater than zero.</param>
    public static Length EstimatedThickness(double grammage)
    {
        var pounds = grammage / Grammage(1, "cover")!.Value;
        var (first, last) = (CoverChart[0], CoverChart[^1]);
        var points = pounds <= first.Pounds ? pounds * first.Points / first.Pounds
            : pounds >= last.Pounds ? pounds * last.Points / last.Pounds
            : Between(pounds);
        return new((long)Math.Round(points * NanometresPerPoint / 1000) * 1000);
    }

    private static double Between(double pounds)
    {
        var above = 1;
        while (CoverChart[above].Pounds < pounds)
        {
            above++;
        }

        var (low, high) = (CoverChart[above - 1], CoverChart[above]);
        return low.Points + (high.Points - low.Points) * (pounds - low.Pounds) / (high.Pounds - low.Pounds);
    }
}
