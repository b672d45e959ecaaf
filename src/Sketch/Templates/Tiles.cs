using System.Collections.Immutable;
using System.Globalization;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// Splits what is larger than a page into tiles that overlap. The overlaps contain crosses, the same on both sheets: lay one cross over
/// the other against a window and tape the sheets together.
/// </summary>
internal static class Tiles
{
    /// <summary>How to join tiles, for the foot of each.</summary>
    public const string HowToJoin = "To join tiles, lay each cross on the same cross of the next sheet, against a window, and tape them.";

    /// <summary>The name of the crosses.</summary>
    public const string JoiningCross = "joining cross";

    /// <summary>The overlap of neighbours, in millimetres: 1/2 in.</summary>
    public const double Overlap = 12.7;

    /// <summary>The most tiles in a row that anyone would join; about two metres.</summary>
    private const int MostInARow = 10;

    private const double Cross = 3;

    /// <summary>A part of the whole with its place in the grid of tiles, counted from 1.</summary>
    /// <param name="Block">What is in it.</param>
    /// <param name="Words">Which tile it is and what it joins.</param>
    internal sealed record Tile(TemplateBlock Block, string Words);

    /// <summary>
    /// The tiles of that arrangement of a block which needs the fewest, the first of equals; null if each needs too many.
    /// </summary>
    /// <param name="ways">The arrangements, such as upright and turned.</param>
    /// <param name="width">The maximum width of a tile.</param>
    /// <param name="height">The maximum height of a tile.</param>
    public static ImmutableArray<Tile>? Fewest(IEnumerable<TemplateBlock> ways, double width, double height) =>
        ways.Select(w => Of(w, width, height)).Where(t => t is not null).MinBy(t => t!.Value.Length);

    /// <summary>The tiles of a block, row by row from the top; null if there would be too many.</summary>
    /// <param name="whole">The block.</param>
    /// <param name="width">The maximum width of a tile.</param>
    /// <param name="height">The maximum height of a tile.</param>
    public static ImmutableArray<Tile>? Of(TemplateBlock whole, double width, double height)
    {
        var (across, down) = (Count(whole.Width, width), Count(whole.Height, height));
        if (across > MostInARow || down > MostInARow)
        {
            return null;
        }

        var (tileWidth, tileHeight) = (Share(whole.Width, across), Share(whole.Height, down));
        var crosses = Crosses(whole, across, down, tileWidth, tileHeight).ToList();
        var boxes = Enumerable.Range(0, across * down).Select(i => BoxOf(i / across, i % across)).ToList();
        var texts = whole.Texts.Select(t => InOneOf(boxes, t)).ToList();
        var tiles = ImmutableArray.CreateBuilder<Tile>();
        for (var row = 0; row < down; row++)
        {
            for (var column = 0; column < across; column++)
            {
                var box = boxes[row * across + column];
                ImmutableArray<TemplateLine> lines =
                    [.. whole.Lines.SelectMany(l => LineClipping.Clip(l, box)), .. crosses.Where(c => box.Covers(c.Bounds))];
                var part = new TemplateBlock(tileWidth, tileHeight, lines, [.. texts.Where(t => box.Covers(t.Box))]);
                tiles.Add(new(part.Shift(-box.Left, -box.Top), Words(row, column, across, down)));
            }
        }

        return tiles.ToImmutable();

        Bounds BoxOf(int row, int column)
        {
            var (left, top) = (column * (tileWidth - Overlap), row * (tileHeight - Overlap));
            return new(left, top, left + tileWidth, top + tileHeight);
        }
    }

    /// <summary>Words that an edge of a tile would cut move into one tile, clear of the crosses.</summary>
    private static TemplateText InOneOf(List<Bounds> tiles, TemplateText text)
    {
        if (tiles.Exists(t => t.Covers(text.Box)))
        {
            return text;
        }

        var (centre, clear) = (text.Box.Centre, Overlap + 1);
        var tile = tiles.Find(t => t.Left <= centre.X && t.Right >= centre.X && t.Top <= centre.Y && t.Bottom >= centre.Y)
            .Grow(-clear);
        return text.Shift(
            Math.Max(Math.Min(0, tile.Right - text.Box.Right), tile.Left - text.Box.Left),
            Math.Max(Math.Min(0, tile.Bottom - text.Box.Bottom), tile.Top - text.Box.Top));
    }

    private static int Count(double length, double most) =>
        (int)Math.Min(MostInARow + 1, Math.Max(1, Math.Ceiling((length - Overlap) / (most - Overlap) - 1e-9)));

    private static double Share(double length, int count) => (length + (count - 1) * Overlap) / count;

    private static string Words(int row, int column, int across, int down)
    {
        var number = row * across + column + 1;
        List<string> joins = [];
        if (column < across - 1)
        {
            joins.Add(string.Create(CultureInfo.InvariantCulture, $"right to {number + 1}"));
        }

        if (row < down - 1)
        {
            joins.Add(string.Create(CultureInfo.InvariantCulture, $"below to {number + across}"));
        }

        var joined = joins.Count == 0 ? "" : $", joins {string.Join(" and ", joins)}";
        return string.Create(CultureInfo.InvariantCulture, $"tile {number} of {across * down}{joined}");
    }

    /// <summary>Two crosses along each section of an overlap.</summary>
    private static IEnumerable<TemplateLine> Crosses(TemplateBlock whole, int across, int down, double tileWidth, double tileHeight)
    {
        var (stepX, stepY) = (tileWidth - Overlap, tileHeight - Overlap);
        for (var column = 1; column < across; column++)
        {
            for (var i = 0; i < 2 * down; i++)
            {
                yield return At(column * stepX + Overlap / 2, whole.Height * (2 * i + 1) / (4 * down));
            }
        }

        for (var row = 1; row < down; row++)
        {
            for (var i = 0; i < 2 * across; i++)
            {
                yield return At(whole.Width * (2 * i + 1) / (4 * across), row * stepY + Overlap / 2);
            }
        }

        static TemplateLine At(double x, double y) => new(
            LineKind.Mark,
            JoiningCross,
            [
                new(new(x - Cross, y), [Segment.Line(new(x + Cross, y))]),
                new(new(x, y - Cross), [Segment.Line(new(x, y + Cross))]),
            ],
            false);
    }
}
