using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.World;

namespace Sketch.Templates;

/// <summary>Full-size templates of cards.</summary>
/// <param name="Pages">The pages, each of exactly the size of the printer's paper.</param>
/// <param name="Sheets">The same pages before drawing.</param>
/// <param name="Pieces">What to cut.</param>
public sealed record CardTemplates(
    ImmutableArray<DrawnPage> Pages, ImmutableArray<TemplateSheet> Sheets, ImmutableArray<TemplatePiece> Pieces)
{
    /// <summary>
    /// Makes the templates of cards: pages with all pieces, packed together, and for each face of each card a guide to where its pieces
    /// go, on the same pages where there is room. The same cards give the same pages on every machine.
    /// </summary>
    /// <param name="cards">The cards, at least one.</param>
    /// <param name="options">Page, printer and extras.</param>
    /// <param name="world">Shapes the words.</param>
    /// <param name="findings">Receives what is too large to print, cards without pieces, and those with too much to cut hollow.</param>
    /// <returns>The templates, or null with an error among the findings.</returns>
    public static CardTemplates? Make(IReadOnlyList<LaidOutCard> cards, TemplateOptions options, IWorld world, FindingBag findings)
    {
        ArgumentOutOfRangeException.ThrowIfZero(cards.Count);
        var lettering = new TemplateLettering(world);
        var page = new TemplatePage(options, lettering);
        var all = TemplatePieces.Of(cards, options.Hollow, findings);
        ImmutableArray<TemplatePiece> pieces = options.OnlyShapes ? [.. all.Where(p => !p.IsPlainRectangle)] : all;
        ReportBare(cards, findings);
        var title = string.Join(", ", cards.Select(c => c.Title).Distinct());
        var guide = new PlacementGuide(page.Width, page.Height, lettering);
        ImmutableArray<Guide> guides = [.. cards.SelectMany(c => guide.Of(c, options.Mirror, findings))];
        var sheets = new FilledSheets(page.Width, page.Height, lettering).Of(
            pieces, guides, title, SafetyNotes.Of(title, options, lettering, page.Width), findings);
        return findings.HasErrors
            ? null
            : new([.. sheets.Select((s, i) => page.Draw(s, i + 1, sheets.Length))], sheets, pieces);
    }

    /// <summary>Reports cards that consist of a base only.</summary>
    internal static void ReportBare(IReadOnlyList<LaidOutCard> cards, FindingBag findings)
    {
        foreach (var card in cards.Where(c => !c.Pieces.Any(p => p.Matter == PieceMatter.Paper)))
        {
            findings.Add(FindingCatalogue.OnlyBase, card.Location,
                $"Nothing on \"{card.Title}\" is cut from paper, so only its base is drawn.",
                    "Write the pieces beneath front, such as: panel, showing 1/8, of blue.");
        }
    }
}
