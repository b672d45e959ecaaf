using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Shapes;

namespace Sketch.Checks;

/// <summary>
/// Pieces that are completely hidden by paper over them: one sheet or several together. Windows reveal; ink, gems and tape
/// hide nothing. Each face is traversed from the top down: a hidden piece need not be remembered as hiding others, so a thick
/// stack stays cheap. If a card has so many pieces that the check would take long, the rest is not examined, which is reported.
/// </summary>
internal sealed class HiddenCompletely : IFitRule
{
    /// <summary>
    /// Corners of a piece that are examined first: one that is uncovered shows that the piece is visible. A piece has at least one.
    /// </summary>
    private const int CornersTried = 12;

    /// <summary>Limit per card: pieces examined near a corner or piece, in total.</summary>
    private const int LookLimit = 20_000_000;

    /// <summary>Limit per card: corners of outlines united, in total, to see whether they hide something together.</summary>
    private const int UnionLimit = 10_000;

    /// <summary>Limit per card: corners of outlines compared, in total, to see whether one that is not a rectangle hides another.</summary>
    private const int CompareLimit = 50_000;

    /// <summary>A sheet of paper above, with its piece.</summary>
    private readonly record struct Sheet(int Index, Cover Cover);

    private enum Answer
    {
        Seen,
        Hidden,
        NotExamined,
    }

    public void Check(FitView view, FindingBag findings)
    {
        var hidden = new SortedDictionary<int, List<int>>();
        var search = new Search();
        var left = new List<int>();
        foreach (var face in view.Pieces.Select((p, i) => (p.Face, Index: i)).GroupBy(p => p.Face, p => p.Index))
        {
            var above = new LooseGrid<Sheet>();
            foreach (var index in face.Reverse())
            {
                var piece = view.Pieces[index];
                if (!FitView.IsThere(piece) || piece.Matter == PieceMatter.Hole)
                {
                    continue;
                }

                var outline = piece.TurnedOutline;
                var cover = new Cover(outline);
                var answer = search.Examine(outline, cover, above, out var hiders);
                if (answer == Answer.Hidden)
                {
                    hidden[index] = hiders;
                    continue;
                }

                if (answer == Answer.NotExamined)
                {
                    left.Add(index);
                }

                if (piece.Matter == PieceMatter.Paper)
                {
                    above.Add(cover.Bounds, new(index, cover));
                }
            }
        }

        Report(view, findings, hidden);
        if (left.Count > 0)
        {
            findings.Add(FindingCatalogue.HidingNotExamined, view.Pieces[left.Min()].Location,
                $"The card is so crowded that {Number(left.Count)} not checked for being hidden completely, beginning on this line.",
                "Look at the drawing, or make fewer copies.");
        }
    }

    private static void Report(FitView view, FindingBag findings, SortedDictionary<int, List<int>> hidden)
    {
        // A hidden piece covers the report for its mats, and what lies on a hidden stack is hidden with it.
        var reported = hidden.Where(h => !IsSpokenFor(h.Key)).GroupBy(h => view.Pieces[h.Key].Location);
        foreach (var line in reported)
        {
            var (first, hiders) = line.First();
            var piece = view.Pieces[first];
            var subject = CheckText.Begin(CheckText.Called(piece, line.Count(), view.CopiesOf(piece)));
            findings.Add(FindingCatalogue.HiddenCompletely, line.Key,
                $"{subject} cannot be seen: {Covering(view, hiders)} over all of {(line.Count() == 1 ? "it" : "them")}.",
                "Write it further down so that it lies on top, move it out, or remove the line.");
        }

        bool IsSpokenFor(int index) =>
            (view.OwnerOf(index) is var owner && owner != index && hidden.ContainsKey(owner))
            || (view.GroundOf(index) is var ground and >= 0 && hidden.ContainsKey(ground));
    }

    private static string Number(int pieces) =>
        pieces == 1 ? "one of its pieces was" : string.Create(CultureInfo.InvariantCulture, $"{pieces:N0} of its pieces were");

    /// <summary>What hides a piece, with its verb: "sea lies", "one and two lie", "2 of the 3 copies of lamp lie".</summary>
    private static string Covering(FitView view, List<int> hiders)
    {
        var names = hiders.Order().Select(h => view.Pieces[h]).GroupBy(p => p.Location)
            .Select(line => CheckText.Called(line.First(), line.Count(), view.CopiesOf(line.First()))).Distinct().ToList();
        var listed = names.Count <= 3 ? CheckText.List(names) : $"{string.Join(", ", names.Take(2))} and {names.Count - 2} more";
        return $"{listed} {(hiders.Count == 1 ? "lies" : "lie")}";
    }

    /// <summary>The questions asked of one card, within their limits.</summary>
    private sealed class Search
    {
        private int _looks;
        private int _united;
        private long _compared;

        public Answer Examine(Outline outline, Cover own, LooseGrid<Sheet> above, out List<int> hiders)
        {
            hiders = [];
            var corners = Corners(outline).ToList();
            if (!(corners.TrueForAll(c => LiesUnder(c, above)) && Within(corners, own).All(p => LiesUnder(p, above))))
            {
                return _looks > LookLimit ? Answer.NotExamined : Answer.Seen;
            }

            var start = corners[0];
            foreach (var sheet in At(new(start.X, start.Y, start.X, start.Y), above))
            {
                // Most sheets that lie over one corner leave another uncovered, which is found at once.
                if (!corners.TrueForAll(c => sheet.Cover.Holds(c)))
                {
                    continue;
                }

                if (!sheet.Cover.IsRectangle && (_compared += sheet.Cover.Corners + outline.Corners) > CompareLimit)
                {
                    return Answer.NotExamined;
                }

                if (sheet.Cover.Covers(outline))
                {
                    hiders.Add(sheet.Index);
                    return Answer.Hidden;
                }
            }

            var bounds = outline.Bounds;
            var near = At(bounds, above).Where(s => s.Cover.Bounds.Overlaps(bounds)).ToList();
            var cost = near.Sum(s => (long)s.Cover.Corners);
            if (_looks > LookLimit || cost > UnionLimit - _united)
            {
                return Answer.NotExamined;
            }

            _united += (int)cost;
            if (near.Count < 2 || !Cover.CoverTogether([.. near.Select(s => s.Cover)], outline))
            {
                return Answer.Seen;
            }

            hiders.AddRange(near.Select(s => s.Index));
            return Answer.Hidden;
        }

        /// <summary>
        /// The middle and points half-way to the corners, if they lie on the piece: neighbours that only touch leave them uncovered.
        /// </summary>
        private static IEnumerable<Point> Within(List<Point> corners, Cover own)
        {
            var middle = own.Bounds.Centre;
            return corners.Select(c => new Point((c.X + middle.X) / 2, (c.Y + middle.Y) / 2)).Prepend(middle).Where(own.Holds);
        }

        private bool LiesUnder(Point point, LooseGrid<Sheet> above) =>
            At(new(point.X, point.Y, point.X, point.Y), above).Any(s => s.Cover.Holds(point));

        private IEnumerable<Sheet> At(Bounds box, LooseGrid<Sheet> above)
        {
            foreach (var (sheet, touches) in above.Near(box))
            {
                if (++_looks > LookLimit)
                {
                    yield break;
                }

                if (touches)
                {
                    yield return sheet;
                }
            }
        }

        private static IEnumerable<Point> Corners(Outline outline)
        {
            var all = outline.Contours.Sum(c => c.Segments.Length);
            var step = Math.Max(1, all / CornersTried);
            return outline.Contours.SelectMany(c => c.Segments).Where((_, i) => i % step == 0).Select(s => s.End);
        }
    }
}
