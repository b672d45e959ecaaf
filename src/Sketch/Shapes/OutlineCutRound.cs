namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>The narrowest place by which an outline cut round words hangs together, in millimetres: 1/16 in.</summary>
    public const double LeastBridge = 25.4 / 16;

    /// <summary>How many widths of bays are tried.</summary>
    private const int MostFilling = 24;

    /// <summary>
    /// The outline along which paper is cut round letters, in one piece. The letters are grown by the border and their holes are filled,
    /// so every point of the edge is at least the border away from all ink. Bays narrower than a width are filled: the outline is grown by
    /// half of it and shrunk again, which mathematical morphology calls closing. If that leaves several parts, or parts that hang together
    /// by less than <see cref="LeastBridge"/>, the closing is repeated with twice the width, three times and so on.
    /// </summary>
    /// <param name="border">Millimetres of paper around the letters, more than 0.</param>
    /// <param name="bays">Millimetres; bays narrower than this are filled.</param>
    /// <returns>The outline; in several parts if even the widest closing does not join them.</returns>
    public Outline CutRound(double border, double bays)
    {
        var grown = Grow(border, closeHoles: true).WithoutHoles();
        var closed = grown;
        for (var filling = 1; filling <= MostFilling; filling++)
        {
            var radius = bays / 2 * filling;
            closed = grown.Grow(radius).WithoutHoles().Grow(-radius).Union(grown).WithoutHoles();
            if (closed.HangsTogether(LeastBridge))
            {
                return closed;
            }
        }

        return closed;
    }

    /// <summary>Whether it is one part, even where all that is narrower than a width in millimetres is cut away.</summary>
    public bool HangsTogether(double width) => Parts == 1 && Grow(-width / 2).Parts == 1;
}
