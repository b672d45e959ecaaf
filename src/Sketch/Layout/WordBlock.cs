using System.Collections.Immutable;
using Sketch.Lettering;
using Sketch.Shapes;

namespace Sketch.Layout;

/// <summary>Lines of words set beneath each other, measured in cap heights.</summary>
/// <param name="Lines">The shaped lines, at least one.</param>
/// <param name="Range">Where shorter lines stand.</param>
/// <param name="IsBent">Whether the only line stands on an arc, so that its box is that of its ink.</param>
internal sealed record WordBlock(ImmutableArray<ShapedWords> Lines, LineRange Range, bool IsBent)
{
    /// <summary>
    /// Room outside a circle of words in cap heights: letters with accents, whose flat tops reach further out than round ones.
    /// </summary>
    private const double RoomOnCircle = 1.25;

    /// <summary>
    /// The diameter of the circle round which the only line runs, or null. The block is then as large as the circle with letters all round.
    /// </summary>
    public double? Diameter { get; init; }

    /// <summary>From one baseline to the next, in cap heights: common practice for type of usual proportions, no source.</summary>
    public const double LinePitch = 1.75;

    /// <summary>Width of the widest line, at least a hundredth, so that blank words can be measured.</summary>
    public double Width => Diameter + 2 * RoomOnCircle ?? Widest;

    /// <summary>From the top of the first capital to the last baseline; for bent words that of their ink.</summary>
    public double Height => Diameter + 2 * RoomOnCircle ?? (IsBent && !Ink.IsEmpty ? Ink.Bounds.Height : HeightOf(Lines.Length));

    /// <summary>All letters, with the middle of the block at 0, 0.</summary>
    public Outline Ink => _ink ??= Set();

    private Outline? _ink;

    private double Widest { get; } = Lines.Max(l => Math.Max(0.01, l.Outline.IsEmpty ? 0 : l.Outline.Bounds.Width));

    /// <summary>The height of straight lines.</summary>
    public static double HeightOf(int lines) => 1 + (lines - 1) * LinePitch;

    /// <summary>The letters centred in a box.</summary>
    /// <param name="box">The box, in millimetres.</param>
    /// <param name="letters">The height of a capital in millimetres.</param>
    public Outline In(Bounds box, double letters) =>
        Ink.Transform(Affine.Scale(letters, letters).Then(Affine.Shift(box.Centre.X, box.Centre.Y)));

    private Outline Set()
    {
        if (Diameter is not null)
        {
            var centre = Lines[0].CircleCentre;
            return Lines[0].Outline.Transform(Affine.Shift(-centre.X, -centre.Y));
        }

        var contours = ImmutableArray.CreateBuilder<Contour>();
        var baseline = 1 - HeightOf(Lines.Length) / 2;
        foreach (var line in Lines)
        {
            if (!line.Outline.IsEmpty)
            {
                var ink = line.Outline.Bounds;
                var left = Range switch
                {
                    LineRange.Left => -Widest / 2 - ink.Left,
                    LineRange.Right => Widest / 2 - ink.Right,
                    _ => -ink.Centre.X,
                };
                var top = IsBent ? -ink.Centre.Y : baseline;
                contours.AddRange(line.Outline.Transform(Affine.Shift(left, top)).Contours);
            }

            baseline += LinePitch;
        }

        return new(contours.ToImmutable());
    }
}
