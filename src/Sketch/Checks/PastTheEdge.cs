using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Pieces that reach past the edge of their face, by their true turned outlines: across the fold, raised, or otherwise. What lies flush on
/// a piece that reaches too far itself is not reported again.
/// </summary>
internal sealed class PastTheEdge : IFitRule
{
    /// <summary>
    /// The findings of one line: the first such piece, how many, the farthest reach on each side, and how far all copies of the line can
    /// be moved towards each side.
    /// </summary>
    private sealed record Reach(int First, int Count, Insets Past, Insets Room);

    public void Check(FitView view, FindingBag findings)
    {
        var lines = new Dictionary<Location, Reach>();
        var rooms = new Dictionary<Location, Insets>();
        for (var i = 0; i < view.Pieces.Length; i++)
        {
            if (view.OwnerOf(i) != i)
            {
                continue;
            }

            var stack = view.StackOf(i).ToList();
            var ground = view.GroundOf(i) is var g and >= 0 ? view.PastFace(g) : default;
            var (face, box, location) = (view.Card.SizeOf(view.Pieces[i].Face), view.Pieces[stack[0]].Box, view.Pieces[i].Location);
            var room = new Insets(box.Left, box.Top, face.Width - box.Right, face.Height - box.Bottom);
            rooms[location] = rooms.TryGetValue(location, out var least) ? Sides.Of(s => Length.Min(least.On(s), room.On(s))) : room;
            var reach = stack.Select(view.PastFace).Aggregate(Sides.Larger);
            var past = Sides.Of(s => reach.On(s) > ground.On(s) + FitView.Tolerance ? reach.On(s) : Length.Zero);
            if (past != default)
            {
                var known = lines.GetValueOrDefault(location) ?? new(i, 0, default, default);
                lines[location] = known with { Count = known.Count + 1, Past = Sides.Larger(known.Past, past) };
            }
        }

        foreach (var (location, reach) in lines)
        {
            Report(view, findings, location, reach with { Room = rooms[location] });
        }
    }

    private static void Report(FitView view, FindingBag findings, Location location, Reach reach)
    {
        var piece = view.Pieces[reach.First];
        var copies = view.CopiesOf(piece);
        var subject = CheckText.Begin(CheckText.Called(piece, reach.Count, copies));
        var verb = reach.Count == 1 ? "reaches" : "reach up to";
        var face = FaceName(piece.Face);
        var folds = view.Card.Base.FoldsOf(piece.Face);
        Edge? fold = folds.IsEmpty ? null : folds.OrderByDescending(f => reach.Past.On(f)).First();
        // What is too wide for the face reaches past both sides, and that is one mistake.
        var isAcross = fold is { } side && reach.Past.On(side) > Length.Zero && reach.Past.On(side.Opposite()) > Length.Zero;
        var edges = Sides.All.Where(s => (isAcross || s != fold) && reach.Past.On(s) > Length.Zero)
            .Select(s => $"{view.Say.Length(reach.Past.On(s))} "
                + $"{(s == fold ? $"across the fold at the {s.Name()}" : $"past the {s.Name()} edge")}").ToList();
        var hint = Hint(view, reach, piece);
        if (edges.Count > 0)
        {
            var past = $"{verb} {CheckText.List(edges)} of {face}.";
            if (piece.Raised > Length.Zero)
            {
                findings.Add(FindingCatalogue.RaisedOverTheEdge, location,
                    $"{subject} {(reach.Count == 1 ? "is" : "are")} raised {LengthFormat.Millimetres(piece.Raised)} and {past}", hint);
            }
            else
            {
                findings.Add(FindingCatalogue.PastTheEdge, location, $"{subject} {past}", hint);
            }
        }

        if (!isAcross && fold is { } folded && reach.Past.On(folded) > Length.Zero)
        {
            findings.Add(FindingCatalogue.AcrossTheFold, location,
                $"{subject} {verb} {view.Say.Length(reach.Past.On(folded))} across the fold at the {folded.Name()} of {face}.", hint);
        }
    }

    private static string Hint(FitView view, Reach reach, Piece piece)
    {
        var (size, own) = (view.Card.SizeOf(piece.Face), view.Pieces[view.StackOf(reach.First).First()].Box.Size);
        if (piece.Turn != 0 && own.Width <= size.Width && own.Height <= size.Height)
        {
            return "Turn it less, make it smaller, or move it in.";
        }

        if (reach.Count > 1 && ((reach.Past.Left > Length.Zero && reach.Past.Right > Length.Zero)
            || (reach.Past.Top > Length.Zero && reach.Past.Bottom > Length.Zero)))
        {
            return "Make the copies fewer or smaller, or the gap between them.";
        }

        if (!piece.Turning.IsIdentity)
        {
            return "Make it smaller, or move its parent in.";
        }

        return Shifts(view, reach, piece)
            ?? (view.CopiesOf(piece) == 1 ? SmallerPiece.Hint(view, reach.First) : null)
            ?? "Make it smaller, or move it in.";
    }

    /// <summary>
    /// The shifts that bring a piece back onto a face that is large enough for it and all its copies; null where it is not, or where its
    /// line shifts it already.
    /// </summary>
    private static string? Shifts(FitView view, Reach reach, Piece piece)
    {
        var across = Along(Edge.Left, Edge.Right);
        var down = Along(Edge.Top, Edge.Bottom);
        var isAgain = (across is { Length: > 0 } && piece.IsShifted.Across) || (down is { Length: > 0 } && piece.IsShifted.Down);
        if (across is null || down is null || isAgain)
        {
            return null;
        }

        return $"Add {string.Join(", ", new[] { across, down }.Where(s => s.Length > 0))}, or make it smaller.";

        string? Along(Edge low, Edge high)
        {
            var (over, under) = (reach.Past.On(low), reach.Past.On(high));
            if (over == Length.Zero && under == Length.Zero)
            {
                return "";
            }

            // Rounded up to a mark, it must not reach past the other edge.
            var (side, by) = over > Length.Zero ? (high, over) : (low, under);
            var shift = view.Say.UpToMark(by);
            return (over > Length.Zero && under > Length.Zero) || shift > reach.Room.On(side) ? null
                : $"shift {Direction(side)} {view.Say.Typed(shift)}";
        }
    }

    private static string Direction(Edge side) => side switch
    {
        Edge.Top => "up",
        Edge.Bottom => "down",
        _ => side.Name(),
    };

    private static string FaceName(FaceKind face) => face switch
    {
        FaceKind.InsideLeft => "the inside left",
        FaceKind.InsideTop => "the inside top",
        FaceKind.EnvelopeBack => "the envelope's back",
        _ => "the " + Face.NameOf(face),
    };
}
