using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Stashes;

/// <summary>What is in the stash.</summary>
/// <param name="Title">The words after <c>stash</c>.</param>
/// <param name="Papers">Patterned papers and cardstock, in the file's order; names are unique.</param>
/// <param name="Units">The units that the file is written in.</param>
/// <param name="Location">The title line.</param>
public sealed record Stash(string Title, ImmutableArray<StockPaper> Papers, UnitSystem Units, Location Location)
{
    /// <summary>Leftover pieces of those papers.</summary>
    public ImmutableArray<Offcut> Offcuts { get; init; } = [];

    /// <summary>What is not paper.</summary>
    public ImmutableArray<Supply> Supplies { get; init; } = [];

    /// <summary>The maker's notes in Markdown; empty when there are none.</summary>
    public string Notes { get; init; } = "";

    /// <summary>A paper by its name, ignoring case; null when there is none.</summary>
    public StockPaper? Find(string name) => Papers.FirstOrDefault(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Something that is not paper by its name, ignoring case; null when there is none.</summary>
    public Supply? FindSupply(string name) => Supplies.FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The leftovers of a paper.</summary>
    public IEnumerable<Offcut> OffcutsOf(StockPaper paper) =>
        Offcuts.Where(o => o.Paper.Equals(paper.Name, StringComparison.OrdinalIgnoreCase));
}

/// <summary>The two kinds of sheet.</summary>
public enum StockKind
{
    /// <summary>Patterned paper, usually printed on both sides.</summary>
    Patterned,

    /// <summary>Cardstock, one colour through and through.</summary>
    Cardstock,
}

/// <summary>A paper in the stash.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">Patterned paper or cardstock.</param>
/// <param name="Size">The whole sheet, trim included, front side up.</param>
/// <param name="Front">The front.</param>
/// <param name="Back">The back; the same as the front for cardstock.</param>
/// <param name="Location">The line that lists it.</param>
public sealed record StockPaper(string Name, StockKind Kind, Size Size, PaperFace Front, PaperFace Back, Location Location)
{
    /// <summary>Sheets on hand, or null for any number.</summary>
    public int? Sheets { get; init; }

    /// <summary>What is cut off each edge first, such as a printed strip.</summary>
    public Insets Trim { get; init; }

    /// <summary>Whether the print has a direction, so that pieces are not turned.</summary>
    public bool Upright { get; init; }

    /// <summary>The name of the collection that it belongs to, or null.</summary>
    public string? Collection { get; init; }

    /// <summary>Grams per square metre, or null when not known.</summary>
    public double? Grammage { get; init; }

    /// <summary>Thickness of one sheet: measured, else estimated from its weight; null when neither is known.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Price of a sheet in the file's currency, or null.</summary>
    public decimal? Price { get; init; }

    /// <summary>Whether there is any of it at all: sheets on hand, an unlimited number of them, or leftovers.</summary>
    /// <param name="stash">The stash that lists its offcuts.</param>
    public bool IsOnHand(Stash stash) => Sheets is null or > 0 || stash.OffcutsOf(this).Any();

    /// <summary>One of its sides.</summary>
    public PaperFace Side(PaperSide side) => side == PaperSide.Back ? Back : Front;

    /// <summary>The largest piece that a sheet holds: the sheet less its trim.</summary>
    public Size Usable => new(Size.Width - Trim.Left - Trim.Right, Size.Height - Trim.Top - Trim.Bottom);
}

/// <summary>One side of a paper.</summary>
/// <param name="Label">What the maker calls its print, or null.</param>
/// <param name="Look">How it is drawn.</param>
/// <param name="IsDescribed">Whether the file describes it or the paper has the name of a built-in one; else the side is white.</param>
public sealed record PaperFace(string? Label, PaperLook Look, bool IsDescribed);

/// <summary>Leftover pieces of a paper.</summary>
/// <param name="Paper">The paper's name.</param>
/// <param name="Size">The piece as it lies, front side up.</param>
/// <param name="Count">How many.</param>
/// <param name="Location">The line that lists it.</param>
public sealed record Offcut(string Paper, Size Size, int Count, Location Location);
