using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// The paper that inner cuts free: what is cut out of windows and frames, and the hidden middles of layers that are cut hollow.
/// </summary>
public static class FreedPaper
{
    /// <summary>A part smaller than 1/2 in in either direction is not worth cutting out (common practice, no source).</summary>
    private const double SmallestSide = 12.7;

    // The largest rectangle is accurate to a few thousandths of a millimetre.
    private const double Crumb = 0.005;

    /// <summary>All paper worth keeping that the inner cuts of a piece free, on its face as if nothing were turned.</summary>
    /// <param name="card">The card.</param>
    /// <param name="index">The piece, in the card's pieces.</param>
    /// <param name="gluing">The margin for glue that stays round the hidden part of a hollow layer.</param>
    public static ImmutableArray<FreedPart> Of(LaidOutCard card, int index, Length gluing) =>
        [.. HolesOf(card.Pieces[index].Outline), .. new HollowParts(card, gluing).Of(index)];

    /// <summary>The paper worth keeping that the windows of the front free; the base is never cut hollow.</summary>
    public static ImmutableArray<FreedPart> OfBase(LaidOutCard card) => card.Base.Windows is not { IsEmpty: false } cut ? []
        : [.. card.Base.Sheet.Outside.Where(p => p.Face == FaceKind.Front)
            .SelectMany(p => WorthKeeping(Outline.Rectangle(p.Part).Intersect(cut.Clockwise())))];

    /// <summary>
    /// The parts of an outline that are worth keeping. Where paper that must stay lies inside a part, only a rectangle beside it is cut
    /// out.
    /// </summary>
    internal static ImmutableArray<FreedPart> WorthKeeping(Outline cut) =>
    [
        .. Parts(cut)
            .Where(p => IsWorthwhile(p.Bounds))
            .Select(p => (Part: p, Box: p.LargestRectangleInside()))
            .Where(f => f.Box is { } box && IsWorthwhile(box.Grow(Crumb)))
            .Select(f => new FreedPart(f.Part.Contours.Length == 1 ? f.Part : Outline.Rectangle(f.Box!.Value.ToRect()), f.Box!.Value)),
    ];

    private static ImmutableArray<FreedPart> HolesOf(Outline outline) =>
        outline.Contours.Length > 1 && outline.Contours.Count(c => IsWorthwhile(c.Bounds)) > 1
            ? WorthKeeping(outline.WithoutHoles().Subtract(outline)) : [];

    private static bool IsWorthwhile(Bounds box) => box is { Width: >= SmallestSide, Height: >= SmallestSide };

    /// <summary>Each outer contour with the holes in it; a hole belongs to the smallest contour around it.</summary>
    private static IEnumerable<Outline> Parts(Outline outline)
    {
        var turned = outline.Clockwise();
        var outer = turned.Contours.Where(c => c.SignedArea > 0).OrderBy(c => c.SignedArea).Select(c => new Outline([c])).ToList();
        var holes = turned.Contours.Where(c => c.SignedArea < 0).ToLookup(h => outer.FindIndex(o => o.Covers(new([h]))));
        return outer.Select((o, i) => new Outline([.. o.Contours, .. holes[i]]));
    }
}
