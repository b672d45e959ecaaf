using System.Collections.Immutable;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>One shape to cut, drawn once however many are needed.</summary>
/// <param name="Names">The names of the pieces of this shape, each once, such as "lamp: star" or "mat behind sky".</param>
/// <param name="Material">Role and paper.</param>
/// <param name="Cut">The box of the cut outline, wraps included.</param>
/// <param name="Outline">What to cut, in millimetres from the top left of that box; windows, notches and holes included.</param>
/// <param name="Place">Where its outline lies on its face or flat base, so that messages can distinguish several pieces of one
/// card.</param>
public sealed record TemplatePiece(ImmutableArray<string> Names, string Material, Size Cut, Outline Outline, Text.Location Place)
{
    /// <summary>How many to cut for one card of each file.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The paper that it is cut from, without the role: the same for all that can be cut from one sheet.</summary>
    public required string Stock { get; init; }

    /// <summary>Whether the print of its paper has a direction, so that it may not be turned on the sheet.</summary>
    public bool IsUpright { get; init; }

    /// <summary>Where to score and fold, each from one end to the other.</summary>
    public ImmutableArray<(Point From, Point To)> Folds { get; init; } = [];

    /// <summary>How many of the folds, the first ones, are those of paper that wraps to the back; the others are scored.</summary>
    public int Wraps { get; init; }

    /// <summary>
    /// The middle of an arrow along the grain of the paper, and half its length downwards or to the right; null for none.
    /// </summary>
    public (Point Middle, Point Half)? Grain { get; init; }

    /// <summary>For a flat base the parts that become the front, in millimetres on it; empty for other pieces.</summary>
    public ImmutableArray<Bounds> Fronts { get; init; } = [];

    /// <summary>Whether all its scores are made on the side that the template shows.</summary>
    public bool IsScoredHere { get; init; }

    /// <summary>
    /// Whether a ruler and its size are enough to cut it: a rectangle without holes, letters, stitches or wraps. A base is scored too.
    /// </summary>
    public bool IsPlainRectangle => Outline.AsRectangle() is not null && (Folds.IsEmpty || Grain is not null)
        && Stamped.IsEmpty && Inked.IsEmpty && InkedBehind.IsEmpty && Stitches.IsEmpty && Freed.IsEmpty;

    /// <summary>The letters to stamp or print on it, so that they can be placed; empty for none.</summary>
    public Outline Stamped { get; init; } = Outline.Empty;

    /// <summary>
    /// All that is written, stamped or printed on the side that shows, clipped to it; empty for nothing, and where nobody asked.
    /// </summary>
    public Outline Inked { get; init; } = Outline.Empty;

    /// <summary>The same on the other side, as seen through the paper.</summary>
    public Outline InkedBehind { get; init; } = Outline.Empty;

    /// <summary>Its stitches, each an open line.</summary>
    public ImmutableArray<Contour> Stitches { get; init; } = [];

    /// <summary>The hidden parts that inner cuts free.</summary>
    public ImmutableArray<FreedPart> Freed { get; init; } = [];

    /// <summary>Whether its file is in millimetres or centimetres.</summary>
    public bool IsMetric { get; init; }

    /// <summary>Whether it is bought by its thickness, which is then shown as written.</summary>
    public bool IsReadyMade { get; init; }

    /// <summary>How many parts it falls into when it is cut.</summary>
    public int Parts { get; init; } = 1;

    /// <summary>How many to cut, such as "cut 2, 5 parts each".</summary>
    public string CutCount => Parts == 1 ? $"cut {Count}" : Count == 1 ? $"cut 1, {Parts} parts" : $"cut {Count}, {Parts} parts each";

    /// <summary>The inner cuts together; empty for none.</summary>
    public Outline Hollow => new([.. Freed.SelectMany(f => f.Outline.Contours)]);

    /// <summary>All names, the first two in full.</summary>
    public string Name => Names.Length <= 2 ? string.Join(", ", Names) : $"{Names[0]}, {Names[1]} and {Names.Length - 2} more";
}

/// <summary>A part that an inner cut frees.</summary>
/// <param name="Outline">Its outline, in millimetres where it lies on its piece.</param>
/// <param name="Reusable">The largest upright rectangle in it, for a smaller layer.</param>
public sealed record FreedPart(Outline Outline, Bounds Reusable)
{
    /// <summary>The part shifted.</summary>
    public FreedPart Shift(double x, double y) =>
        new(Outline.Transform(Affine.Shift(x, y)), new(Reusable.Left + x, Reusable.Top + y, Reusable.Right + x, Reusable.Bottom + y));

    /// <summary>Width and height of the rectangle, rounded down to whole thousandths of a millimetre.</summary>
    public Size Size => new(Down(Reusable.Width, Length.NanometresPerMillimetre / 1000),
        Down(Reusable.Height, Length.NanometresPerMillimetre / 1000));

    /// <summary>
    /// Rectangles to cut from the part: the largest, then the largest in what is left of the part, and so on, each rounded down to the
    /// step by which makers cut.
    /// </summary>
    /// <param name="lengths">How lengths are written, with that step.</param>
    /// <param name="smallest">The shortest side worth keeping.</param>
    public IEnumerable<Size> Rectangles(LengthFormat lengths, Length smallest)
    {
        const int most = 6;
        var (rest, box) = (Outline, (Bounds?)Reusable);
        for (var i = 0; i < most && box is { } largest; i++)
        {
            var step = lengths.Step.Nanometres;
            var size = new Size(Down(largest.Width, step), Down(largest.Height, step));
            if (Length.Min(size.Width, size.Height) < smallest)
            {
                yield break;
            }

            yield return size;
            rest = rest.Subtract(Shapes.Outline.Rectangle(largest.ToRect()));
            box = rest.IsEmpty ? null : rest.LargestRectangleInside();
        }
    }

    /// <summary>
    /// The size for people, rounded down to whole sixteenths of an inch or millimetres, so that it can be cut from the part.
    /// </summary>
    public string Words(bool isMetric)
    {
        var lengths = new LengthFormat(isMetric);
        return lengths.About(new Size(Down(Reusable.Width, lengths.Step.Nanometres), Down(Reusable.Height, lengths.Step.Nanometres)));
    }

    /// <summary>
    /// Rounds down to whole steps; a length short of a step by less than the error of the rectangle search counts as that step.
    /// </summary>
    private static Length Down(double millimetres, long step)
    {
        const double strays = 0.003;
        return new((long)Math.Floor((millimetres + Math.Min(strays, 1e-6 * step / 2)) * Length.NanometresPerMillimetre / step) * step);
    }
}
