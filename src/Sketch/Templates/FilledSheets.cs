using System.Collections.Immutable;
using Sketch.Diagnostics;

namespace Sketch.Templates;

/// <summary>The pages with the pieces to cut and, where there is room, the placement guides.</summary>
internal sealed class FilledSheets(double width, double height, TemplateLettering lettering)
{
    private readonly PieceBlock _block = new(lettering);
    private readonly PieceLabel _label = new(lettering);
    private readonly PageFill _fill = new(width, height);

    /// <summary>The pages; a piece that cannot even be tiled is reported and left out.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="guides">
    /// The guides. Those that take whole pages come before the pages with guides only; the others keep their order.
    /// </param>
    /// <param name="title">What the pieces are for.</param>
    /// <param name="notes">Placed at the top of the first page.</param>
    /// <param name="findings">Receives what is too large.</param>
    public ImmutableArray<TemplateSheet> Of(
        ImmutableArray<TemplatePiece> pieces, ImmutableArray<Guide> guides, string title, TemplateBlock notes, FindingBag findings)
    {
        var items = pieces.SelectMany(p => Items(p, findings)).ToList();
        var pages = _fill.Fill(
            items, notes.Height + PageFill.Gap, [.. guides.Where(g => g.Pages.IsEmpty).Select(g => g.Ways)]);
        var titles = guides.SelectMany(g => g.Ways.Select(w => (w, g.Title))).ToDictionary();
        // The first page may have room for guides, or for nothing but the notes, where a large piece is on the second.
        var withPieces = Math.Max(1, Enumerable.Range(1, pages.Length)
            .LastOrDefault(count => pages[count - 1].Any(b => !titles.ContainsKey(b.Block))));
        return
        [
            .. pages.Take(withPieces).Select((blocks, i) =>
                new TemplateSheet($"Templates for {title}", i == 0 ? blocks.Insert(0, new(notes, 0, 0)) : blocks)),
            .. guides.SelectMany(g => g.Pages),
            .. pages.Skip(withPieces).Select(blocks =>
                new TemplateSheet(string.Join("; ", blocks.Select(b => titles[b.Block])), blocks)),
        ];
    }

    private List<ImmutableArray<TemplateBlock>> Items(TemplatePiece piece, FindingBag findings)
    {
        var bare = _block.Bare(piece);
        var isSmallEnough = Math.Max(bare.Width, bare.Height) <= Math.Max(width, height)
            && Math.Min(bare.Width, bare.Height) <= Math.Min(width, height);
        if (isSmallEnough && _block.Ways(piece) is var ways && ways.Any(_fill.Fits))
        {
            return [ways];
        }

        // The label takes at most six lines at the foot of a tile.
        var labelHeight = PieceLabel.Room + 6 * TemplateLettering.LineHeight;
        if (Tiles.Fewest([bare, _block.Turned(piece)], width, height - labelHeight) is not { } tiles)
        {
            var (first, second) = PieceLabel.Sizes(piece);
            findings.Add(FindingCatalogue.TooLargeForTemplates, piece.Place,
                $"{piece.Name} is {first} ({second}): that would be more than ten pages in a row to join.",
                    "Make it smaller, or cut it with a ruler by the sizes that \"sizes\" lists.");
            return [];
        }

        return [.. tiles.Select(t => Labelled(t, piece))];
    }

    private ImmutableArray<TemplateBlock> Labelled(Tiles.Tile tile, TemplatePiece piece)
    {
        var label = _label.OfTile(piece, tile.Words, Math.Max(tile.Block.Width, width / 2));
        var block = tile.Block;
        return
        [
            new(
                Math.Max(block.Width, label.Box.Width), block.Height + PieceLabel.Room + label.Box.Height, block.Lines,
                block.Texts.Add(label.Shift(0, block.Height + PieceLabel.Room))),
        ];
    }
}
