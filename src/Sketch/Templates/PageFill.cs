using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>A block on a page, with its top left corner in the page's drawing area.</summary>
/// <param name="Block">The block.</param>
/// <param name="Left">Millimetres of the finished card from the left of that area.</param>
/// <param name="Top">Millimetres from its top.</param>
public sealed record PlacedBlock(TemplateBlock Block, double Left, double Top)
{
    /// <summary>Its box.</summary>
    public Bounds Box => new(Left, Top, Left + Block.Width, Top + Block.Height);
}

/// <summary>
/// Fills pages with blocks: each goes into the free rectangle that it fits best, larger ones first; several orders are tried and the one
/// with the fewest pages is kept. The true minimum is as hard as any packing; for cards this comes within a page of it.
/// </summary>
/// <param name="width">Width of a page, in millimetres.</param>
/// <param name="height">Height of a page.</param>
/// <param name="gap">Room between blocks.</param>
internal sealed class PageFill(double width, double height, double gap = PageFill.Gap)
{
    /// <summary>Room between blocks in millimetres, so that a knife that overruns cuts into nothing.</summary>
    public const double Gap = 4;

    // Edges that should meet may differ in the last digits after a division.
    private const double Crumb = 1e-6;

    private static readonly Func<TemplateBlock, double>[] Orders =
        [b => b.Area, b => Math.Max(b.Width, b.Height), b => Math.Min(b.Width, b.Height), b => b.Width + b.Height];

    /// <summary>Whether a block fits a page by itself.</summary>
    public bool Fits(TemplateBlock block) => block.Width <= width + Crumb && block.Height <= height + Crumb;

    /// <summary>Places every item in one of its arrangements; each has at least one that fits a page.</summary>
    /// <param name="items">The items with the possible arrangements of each.</param>
    /// <param name="taken">The height already used at the top of the first page.</param>
    /// <param name="last">Items that come after all others, in their order, where these leave room.</param>
    public ImmutableArray<ImmutableArray<PlacedBlock>> Fill(
        IReadOnlyList<ImmutableArray<TemplateBlock>> items, double taken, IReadOnlyList<ImmutableArray<TemplateBlock>>? last = null)
    {
        var fitting = items.Select(FittingOf).ToList();
        var fittingLast = (last ?? []).Select(FittingOf).ToList();
        return Orders.Select(o => PagesOf([.. fitting.OrderByDescending(ways => ways.Min(o)), .. fittingLast], taken))
            .OrderBy(p => p.Count).ThenBy(p => p[^1].Blocks.Sum(b => b.Block.Area)).First()
            .Select(p => p.Blocks.ToImmutableArray()).ToImmutableArray();
    }

    private ImmutableArray<TemplateBlock> FittingOf(ImmutableArray<TemplateBlock> ways) => [.. ways.Where(Fits)];

    private List<Page> PagesOf(IEnumerable<ImmutableArray<TemplateBlock>> items, double taken)
    {
        List<Page> pages = [new(new(0, taken, width + gap, height + gap), gap)];
        foreach (var ways in items)
        {
            if (!pages.Exists(p => p.Add(ways)))
            {
                pages.Add(new(new(0, 0, width + gap, height + gap), gap));
                pages[^1].Add(ways);
            }
        }

        return pages;
    }

    /// <summary>
    /// A page with its free rectangles, which may overlap (maximal rectangles); each block includes its gap to the right and below.
    /// </summary>
    private sealed class Page(Bounds area, double gap)
    {
        private List<Bounds> _free = [area];

        public List<PlacedBlock> Blocks { get; } = [];

        public bool Add(ImmutableArray<TemplateBlock> ways)
        {
            PlacedBlock? best = null;
            var least = double.MaxValue;
            foreach (var way in ways)
            {
                foreach (var free in _free)
                {
                    var (across, down) = (free.Width - way.Width - gap, free.Height - way.Height - gap);
                    if (across < -Crumb || down < -Crumb)
                    {
                        continue;
                    }

                    // An arrangement with the label beside takes more of the page; the narrowest remaining strip breaks ties.
                    var waste = way.Area - ways.Min(w => w.Area) + Math.Min(across, down);
                    if (waste < least)
                    {
                        least = waste;
                        best = new(way, free.Left, free.Top);
                    }
                }
            }

            if (best is null)
            {
                return false;
            }

            Blocks.Add(best);
            Take(new(best.Left, best.Top, best.Left + best.Block.Width + gap, best.Top + best.Block.Height + gap));
            return true;
        }

        private void Take(Bounds box)
        {
            var pieces = _free.SelectMany(f => f.Overlaps(box) ? Around(f, box) : [f]).ToList();
            _free = [.. pieces.Where((f, i) => !pieces.Where((g, j) => j != i && g.Covers(f) && (g != f || j < i)).Any())];
        }

        private IEnumerable<Bounds> Around(Bounds free, Bounds box)
        {
            return new[]
            {
                free with { Right = Math.Min(free.Right, box.Left) },
                free with { Left = Math.Max(free.Left, box.Right) },
                free with { Bottom = Math.Min(free.Bottom, box.Top) },
                free with { Top = Math.Max(free.Top, box.Bottom) },
            }.Where(f => f.Width > gap && f.Height > gap);
        }
    }
}
