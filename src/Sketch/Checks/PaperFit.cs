using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Whether every piece can be cut from a sheet of its paper.</summary>
public static class PaperFit
{
    /// <summary>Reports the base and pieces that are larger than their papers; copies of one line are reported once.</summary>
    public static void Check(LaidOutCard card, Stash stash, FindingBag findings)
    {
        var reported = new HashSet<Location>();
        Report("the base, unfolded,", card.Base.Flat, card.Base.Paint, card.Base.Location);
        foreach (var piece in card.Pieces)
        {
            if (piece.Cut is { } cut)
            {
                Report(piece.Path.ToString(), cut, piece.Paint, piece.Location);
            }
        }

        void Report(string what, Size cut, Paint paint, Location location)
        {
            if (paint.Paper is not { } name || stash.Find(name) is not { } paper || Holds(paper, cut) || !reported.Add(location))
            {
                return;
            }

            var turns = paper.Upright && Holds(paper with { Upright = false }, cut)
                ? " unless it is turned, and its print stands upright" : "";
            findings.Add(FindingCatalogue.LargerThanItsPaper, location,
                $"{char.ToUpperInvariant(what[0])}{what[1..]} is cut {Text(cut, card.Units)}, but a sheet of {paper.Name} holds "
                    + $"{Text(paper.Usable, card.Units)}{turns}.",
                "Choose a larger paper for it, or make it smaller.");
        }
    }

    /// <summary>Whether a sheet less its trim holds a cut size, also turned unless the print is upright.</summary>
    public static bool Holds(StockPaper paper, Size cut) =>
        Fits(cut, paper.Usable) || (!paper.Upright && Fits(cut.Turned(), paper.Usable));

    private static bool Fits(Size cut, Size sheet) => cut.Width <= sheet.Width && cut.Height <= sheet.Height;

    private static string Text(Size size, UnitSystem units) => $"{units.Format().Text(size)} {units.Format().Unit}";
}
