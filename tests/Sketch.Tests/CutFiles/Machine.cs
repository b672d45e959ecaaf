using System.Collections.Immutable;
using Sketch.CutFiles;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Tests.Templates;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.CutFiles;

/// <summary>Sheets for a machine.</summary>
internal static class Machine
{
    public static readonly CutFileOptions Usual = new(CutPage.Usual, CutFileOptions.UsualGap);

    // Some samples are wider than the usual page.
    private static readonly CutFileOptions Large = Usual with { Page = CutPage.Read("24x24").Value };

    private static readonly Lazy<ImmutableArray<(LaidOutCard Card, ImmutableArray<CutSheet> Sheets)>> AllSamples = new(() =>
        [.. Printed.Samples().Select(c => (c, Of([c], Large)))]);

    /// <summary>The sheets of each card in the folder of sketches, made once for all tests.</summary>
    public static ImmutableArray<(LaidOutCard Card, ImmutableArray<CutSheet> Sheets)> Samples() => AllSamples.Value;

    public static ImmutableArray<CutSheet> Of(string text, CutFileOptions? options = null) => Of([Printed.Lay(text)], options);

    public static ImmutableArray<CutSheet> Of(IReadOnlyList<LaidOutCard> cards, CutFileOptions? options = null)
    {
        var findings = new FindingBag();
        var sheets = CutSheets.Make(cards, options ?? Usual, findings);
        Assert.DoesNotContain(findings.ToImmutable(), f => f.Severity == Severity.Error);
        return sheets!.Value;
    }

    /// <summary>The shorter and the longer side, in millimetres.</summary>
    public static (double, double) Sides(double width, double height) =>
        (Math.Min(width, height), Math.Max(width, height));

    public static (double, double) Sides(Size size) => Sides(size.Width.Millimetres, size.Height.Millimetres);
}
