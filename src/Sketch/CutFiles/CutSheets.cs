using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Templates;

namespace Sketch.CutFiles;

/// <summary>Lays what cards are made of on sheets for a machine, paper by paper.</summary>
public static class CutSheets
{
    /// <summary>
    /// The sheets of all cards, in the order in which their papers first occur; before a sheet of bases comes what is drawn on its other
    /// side, if there are words inside the cards. The same cards give the same sheets on every machine.
    /// </summary>
    /// <param name="cards">The cards, at least one.</param>
    /// <param name="options">The sheet, the gap and how many.</param>
    /// <param name="findings">Receives what is larger than a sheet, cards without pieces, and those with too much to cut hollow.</param>
    /// <returns>The sheets, or null with an error among the findings.</returns>
    public static ImmutableArray<CutSheet>? Make(IReadOnlyList<LaidOutCard> cards, CutFileOptions options, FindingBag findings)
    {
        ArgumentOutOfRangeException.ThrowIfZero(cards.Count);
        CardTemplates.ReportBare(cards, findings);
        var papers = TemplatePieces.Each(cards, options.Hollow, withInk: true, findings)
            .Where(p => !options.OnlyShapes || !p.IsPlainRectangle).GroupBy(p => p.Stock, StringComparer.Ordinal).ToList();
        var sheets = papers.Select(p => Of(p.Key, [.. p], options, findings)).ToList();
        return findings.HasErrors ? null : [.. sheets.SelectMany(s => s)];
    }

    private static IEnumerable<CutSheet> Of(
        string material, ImmutableArray<TemplatePiece> pieces, CutFileOptions options, FindingBag findings)
    {
        var gap = options.Gap.Millimetres;
        var fill = new PageFill(options.Page.Size.Width.Millimetres - 2 * gap, options.Page.Size.Height.Millimetres - 2 * gap, gap);
        var paths = new Dictionary<TemplateBlock, ImmutableArray<CutPath>>(ReferenceEqualityComparer.Instance);
        var behind = new Dictionary<TemplateBlock, ImmutableArray<CutPath>>(ReferenceEqualityComparer.Instance);
        var items = new List<ImmutableArray<TemplateBlock>>();
        foreach (var piece in pieces)
        {
            var ways = PiecePaths.Ways(piece);
            if (!ways.Any(w => fill.Fits(w.Block)))
            {
                ReportTooLarge(piece, options, findings);
                continue;
            }

            foreach (var way in ways)
            {
                paths.Add(way.Block, way.Paths);
                behind.Add(way.Block, way.Behind);
            }

            items.AddRange(Enumerable.Repeat(ways.Select(w => w.Block).ToImmutableArray(), options.Copies));
        }

        if (items.Count == 0)
        {
            return [];
        }

        var sheets = fill.Fill(items, 0);
        return sheets.SelectMany((blocks, i) =>
        {
            CutSheet[] sides =
            [
                Sheet(
                    $"{material}, other side", blocks.RemoveAll(b => behind[b.Block].IsEmpty), behind,
                    b => OnSheet(b, options).Then(TurnedOver(options))),
                Sheet(material, blocks, paths, b => OnSheet(b, options)),
            ];
            return sides.Where(side => !side.Paths.IsEmpty);

            CutSheet Sheet(
                string title, ImmutableArray<PlacedBlock> shown, Dictionary<TemplateBlock, ImmutableArray<CutPath>> lines,
                Func<PlacedBlock, Affine> place) =>
                new(title, i + 1, sheets.Length, options.Page.Size, options.Page.InInches, shown.Length,
                    InOrder(shown.OrderBy(b => b.Top).ThenBy(b => b.Left)
                        .SelectMany(b => lines[b.Block].Select(p => p.Transform(place(b))))));
        });
    }

    // From left to right, as one turns a page.
    private static Affine TurnedOver(CutFileOptions options) => new(-1, 0, 0, 1, options.Page.Size.Width.Millimetres, 0);

    private static Affine OnSheet(PlacedBlock block, CutFileOptions options)
    {
        var gap = options.Gap.Millimetres;
        var place = Affine.Shift(block.Left + gap, block.Top + gap);
        return options.IsMirrored ? place.Then(TurnedOver(options)) : place;
    }

    private static ImmutableArray<CutPath> InOrder(IEnumerable<CutPath> paths)
    {
        var byLayer = paths.ToLookup(p => p.Layer);
        return [.. CutLayer.All.SelectMany(layer => byLayer[layer])];
    }

    private static void ReportTooLarge(TemplatePiece piece, CutFileOptions options, FindingBag findings)
    {
        var units = piece.IsMetric ? UnitSystem.Millimetres : UnitSystem.Inches;
        findings.Add(FindingCatalogue.TooLargeForMachine, piece.Place,
            $"{piece.Name} is {PieceTitle.Size(piece.Cut, units)}: with {units.Format().WithUnit(options.Gap)} on each side it does "
                + $"not fit a page of {PieceTitle.Size(options.Page.Size, units)}.",
                    "Write a larger page, such as --page 12x24, or a smaller --gap.");
    }
}
