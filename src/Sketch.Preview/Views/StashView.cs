using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>A side of a paper.</summary>
/// <param name="Choice">The choice that assigns it to a role.</param>
/// <param name="Name">Its name, in words.</param>
/// <param name="Stock">Sheets and offcuts, in words.</param>
/// <param name="Line">The line of the paper in the stash.</param>
/// <param name="Svg">A swatch at true scale.</param>
internal sealed record PaperView(string Choice, string Name, string Stock, int Line, string Svg);

/// <summary>The papers of a stash as swatches at true scale.</summary>
/// <param name="Papers">Each side of each paper.</param>
internal sealed record StashView(IEnumerable<PaperView> Papers)
{
    private static readonly Size Swatched = new(Length.Inch(1, 1, 4), Length.Inch(1, 1, 4));

    /// <summary>The papers of a stash; none for no stash.</summary>
    public static StashView Of(Stash? stash) => new(stash is null ? [] : stash.Papers.SelectMany(paper =>
        SidesOf(paper).Select(side => Side(stash, paper, side))));

    private static PaperSide[] SidesOf(StockPaper paper) =>
        paper.Kind == StockKind.Patterned ? [PaperSide.Front, PaperSide.Back] : [PaperSide.Front];

    private static PaperView Side(Stash stash, StockPaper paper, PaperSide side)
    {
        var face = paper.Side(side);
        var name = paper.Kind == StockKind.Cardstock ? paper.Name : $"{paper.Name}, {(side == PaperSide.Back ? "back" : "front")}";
        return new(
            side == PaperSide.Back ? $"{paper.Name}/back" : paper.Name,
            face.Label is { } label ? $"{name} ({label})" : name,
            StockOf(stash, paper),
            paper.Location.Start.Line,
            Swatch.Draw(face.Look, Swatched, name, stash.Units));
    }

    private static string StockOf(Stash stash, StockPaper paper)
    {
        var sheets = paper.Sheets switch
        {
            null => "any sheets",
            { } count => Counted.Of(count, "sheet"),
        };
        var offcuts = stash.OffcutsOf(paper).Sum(o => o.Count);
        return $"{sheets}, {PieceTitle.Size(paper.Size, stash.Units)}"
            + (offcuts > 0 ? $", {Counted.Of(offcuts, "offcut")}" : "")
            + (paper.Upright ? ", print stands upright" : "");
    }
}
