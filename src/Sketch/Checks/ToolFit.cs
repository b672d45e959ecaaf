using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Reports dies and rubber stamps of the stash that do not suit the pieces that name them. A die cuts one size; a stamp needs paper at
/// least as large as itself.
/// </summary>
public static class ToolFit
{
    /// <summary>Less than this is neither seen nor measured on a die (common practice, no source).</summary>
    private static readonly Length Tolerance = Length.Inch(0, 1, 32);

    /// <summary>Reports each line of the cards once.</summary>
    /// <param name="cards">The cards; several may be made from one file.</param>
    /// <param name="stash">The stash that lists the dies and stamps; what it does not list is not compared.</param>
    /// <param name="findings">Takes the findings.</param>
    public static void Check(IEnumerable<LaidOutCard> cards, Stash stash, FindingBag findings)
    {
        var reported = new HashSet<Location>();
        foreach (var (card, piece) in cards.SelectMany(c => c.Pieces.Where(p => p.Tool is not null).Select(p => (c, p))))
        {
            var tools = stash.Supplies.Where(s => s.Kind.Traits.Count == SupplyCount.Tool
                && s.Name.Equals(piece.Tool, StringComparison.OrdinalIgnoreCase)).ToList();
            if (tools.Count > 0 && !tools.Exists(t => Suits(t, piece)) && reported.Add(piece.Location))
            {
                Report(tools[0], piece, card.Units.Format(LengthFormat.FinestMarks), findings);
            }
        }
    }

    private static void Report(Supply tool, Piece piece, LengthFormat lengths, FindingBag findings)
    {
        var own = tool.Size is { } size ? lengths.About(size) : lengths.About(tool.Measure!.Value);
        var (name, box) = (piece.Path.WithinFace, lengths.About(piece.Finished.Size));
        findings.Add(FindingCatalogue.ToolDoesNotFit, piece.Location,
            tool.Kind == SupplyKind.Die ? $"Die {tool.Name} cuts {own}, but {name} is {box}."
                : $"Stamp {tool.Name} is {own}, and {name} is only {box}.",
            tool.Kind == SupplyKind.Die ? $"Make it {Written(tool, lengths)}, or use a die of its size."
                : "Make it larger, or use a smaller stamp.");
    }

    private static string Written(Supply tool, LengthFormat lengths) =>
        tool.Size is { } size ? lengths.Text(size) : $"{lengths.Text(tool.Measure!.Value)} wide";

    private static bool Suits(Supply tool, Piece piece)
    {
        var box = piece.Finished.Size;
        return tool.Kind == SupplyKind.Die
            ? tool.Size is { } cut ? Same(cut, box) || Same(cut.Turned(), box)
                : tool.Measure is not { } width || IsSame(width, box.Width) || IsSame(width, box.Height)
            : piece.Matter != PieceMatter.Paper || tool.Size is not { } inked || Holds(box, inked) || Holds(box, inked.Turned());
    }

    private static bool Same(Size one, Size other) => IsSame(one.Width, other.Width) && IsSame(one.Height, other.Height);

    private static bool IsSame(Length one, Length other) => (one - other).Abs() <= Tolerance;

    private static bool Holds(Size paper, Size stamp) =>
        paper.Width + Tolerance >= stamp.Width && paper.Height + Tolerance >= stamp.Height;
}
