using Sketch.Drawing;
using Sketch.Planning.CutSteps;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>What is written on the pieces and leftovers of a sheet.</summary>
/// <param name="work">The sheet.</param>
/// <param name="lengths">The format of sizes.</param>
/// <param name="lettering">The letters.</param>
/// <param name="taken">What is already written; the labels are added.</param>
internal sealed class PieceLabels(SheetWork work, LengthFormat lengths, Lettering lettering, List<Bounds> taken)
{
    private const double LineSpacing = 5.2;
    private const string Quiet = "#5b5a57";

    private readonly HashSet<string> _named = [];
    private readonly List<(string[] Lines, Bounds Place, string Colour)> _labels = [];

    /// <summary>
    /// Labels a piece with its letter, the first of each size with more; false if it has no room for a label clear of the cuts' numbers.
    /// </summary>
    public bool AddPiece(string key, Bounds piece)
    {
        var pieces = work.Pieces.First(p => p.Key == key);
        if (!_named.Contains(key))
        {
            string[] lines = [key, pieces.Uses[0].Card ?? "", pieces.Uses[0].Name, lengths.Text(pieces.Size)];
            string[][] shorter = [lines, [key, lines[2], lines[3]], [key, lines[3]], [$"{key}  {lines[3]}"]];
            if (shorter.Any(l => Fits(piece, [.. l.Where(x => x.Length > 0)])))
            {
                _named.Add(key);
                return true;
            }
        }

        return Fits(piece, [key]);
    }

    /// <summary>Labels a leftover as such, with its size, as far as there is room.</summary>
    public void AddLeftover(Size leftover, Bounds box)
    {
        var size = lengths.Text(leftover);
        string[][] forms = [["left over", size], [$"left over {size}"], [size], size.Replace(" x ", " x\n", StringComparison.Ordinal)
            .Split('\n')];
        _ = forms.Any(f => Fits(box, f, Quiet));
    }

    /// <summary>Writes all labels.</summary>
    public void Write(SvgWriter svg)
    {
        foreach (var (lines, place, colour) in _labels)
        {
            for (var i = 0; i < lines.Length; i++)
            {
                lettering.Write(svg, lines[i], place.Centre.X, place.Top + Lettering.CapitalHeight(PageFlow.Points) * 1.2
                    + i * LineSpacing, PageFlow.Points, Alignment.Centre, colour);
            }
        }
    }

    // Finds room for lines in a box, clear of the cuts' numbers: in its middle, else nearer to an edge.
    private bool Fits(Bounds box, string[] lines, string colour = PageFlow.Ink)
    {
        var (width, height) = (lines.Max(l => lettering.Width(l, PageFlow.Points)) + 1.2, (lines.Length - 1) * LineSpacing
            + Lettering.CapitalHeight(PageFlow.Points) * 1.4);
        var (spareX, spareY) = (box.Width - width, box.Height - height);
        if (spareX < 0 || spareY < 0)
        {
            return false;
        }

        foreach (var (x, y) in new[] { (0.5, 0.5), (0.5, 0.8), (0.5, 0.2), (0.8, 0.5), (0.2, 0.5), (1.0, 1.0), (1.0, 0.0), (0.0, 1.0),
            (0.0, 0.0) })
        {
            var place = new Bounds(box.Left + spareX * x, box.Top + spareY * y, box.Left + spareX * x + width, box.Top + spareY * y
                + height);
            if (taken.Exists(t => t.Overlaps(place)))
            {
                continue;
            }

            taken.Add(place);
            _labels.Add((lines, place, colour));
            return true;
        }

        return false;
    }
}
