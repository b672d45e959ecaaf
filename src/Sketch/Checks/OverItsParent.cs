using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Pieces that reach over the edge of the piece that they lie on. Often intended, so a note. Wraps do not count, for they go round to the
/// back; nor does a side on which both run past the edge of the face, which is reported there.
/// </summary>
internal sealed class OverItsParent : IFitRule
{
    /// <summary>The findings of one line.</summary>
    private sealed record Reach(int First, int Count, Insets Over, Length Farthest);

    public void Check(FitView view, FindingBag findings)
    {
        var covers = new Dictionary<int, Cover>();
        var lines = new Dictionary<Location, Reach>();
        for (var i = 0; i < view.Pieces.Length; i++)
        {
            var ground = view.GroundOf(i);
            if (view.OwnerOf(i) != i || ground < 0 || view.Pieces[ground].Matter is not (PieceMatter.Paper or PieceMatter.Ready)
                || !FitView.IsThere(view.Pieces[ground]))
            {
                continue;
            }

            foreach (var layer in view.StackOf(i).Where(l => FitView.IsThere(view.Pieces[l])).Take(1))
            {
                var (over, farthest) = Measure(view, layer, ground, covers);
                if (farthest > Length.Zero)
                {
                    var location = view.Pieces[i].Location;
                    var known = lines.GetValueOrDefault(location) ?? new(i, 0, default, Length.Zero);
                    lines[location] = new(known.First, known.Count + 1, Sides.Larger(known.Over, over),
                        Length.Max(known.Farthest, farthest));
                }
            }
        }

        foreach (var (location, reach) in lines)
        {
            Report(view, findings, location, reach);
        }
    }

    /// <summary>
    /// How far a layer reaches over each side of what it lies on, both as if the latter were not turned, and the farthest reach of all.
    /// </summary>
    private static (Insets Over, Length Farthest) Measure(FitView view, int layer, int ground, Dictionary<int, Cover> covers)
    {
        var (piece, parent) = (view.Pieces[layer], view.Pieces[ground]);
        if (!covers.TryGetValue(ground, out var cover))
        {
            covers[ground] = cover = new(parent.Outline.WithoutHoles());
        }

        var together = piece.Turning == parent.Turning;
        var outline = together ? piece.Outline : piece.TurnedOutline.Transform(parent.Turning.Inverse());
        var box = together ? FitView.Extent(piece) : FitView.Drawn(outline);
        var over = FitView.Beyond(box, parent.Box);
        if (parent.Turning.IsIdentity && view.PastFace(layer) is var past && past != default)
        {
            var parentPast = view.PastFace(ground);
            var size = view.Card.SizeOf(piece.Face);
            var inside = FitView.Beyond(new(Length.Zero, Length.Zero, size.Width, size.Height), parent.Box);
            over = Sides.Of(s => past.On(s) > Length.Zero && (parentPast.On(s) > Length.Zero || inside.On(s) == Length.Zero)
                ? Length.Zero : over.On(s));
        }

        if (over != default)
        {
            return (over, Sides.All.Max(s => over.On(s)));
        }

        // Within the parent's box, yet perhaps over the edge of a parent that is not a rectangle.
        if (cover.IsRectangle || cover.Covers(outline) || FitView.Beyond(box, parent.Box) != default)
        {
            return default;
        }

        var beyond = Length.NearestMillimetres(cover.Beyond(outline));
        return (default, beyond > FitView.Tolerance ? beyond : Length.Zero);
    }

    private static void Report(FitView view, FindingBag findings, Location location, Reach reach)
    {
        var piece = view.Pieces[reach.First];
        var subject = CheckText.Begin(CheckText.Called(piece, reach.Count, view.CopiesOf(piece)));
        var verb = reach.Count == 1 ? "hangs" : "hang up to";
        var parent = CheckText.Called(view.Pieces[view.GroundOf(reach.First)]);
        var sides = Sides.All.Where(s => reach.Over.On(s) > Length.Zero)
            .Select(s => $"{view.Say.Length(reach.Over.On(s))} over the {s.Name()} edge").ToList();
        var how = sides.Count > 0 ? CheckText.List(sides) : $"{view.Say.Length(reach.Farthest)} over the outline";
        findings.Add(FindingCatalogue.OverItsParent, location, $"{subject} {verb} {how} of {parent}.",
            "If this is not intended, move it in or make it smaller; otherwise put it on a larger piece.");
    }
}
