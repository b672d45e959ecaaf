namespace Sketch.Drawing;

/// <summary>Numbers one below the other beside a picture, each as close to the height of what it points to as the others allow.</summary>
public static class CalloutColumn
{
    /// <summary>The top of each number's line, in the unit of the arguments.</summary>
    /// <param name="targets">The heights of what the numbers point to, from the top down.</param>
    /// <param name="lineHeight">The height of a line.</param>
    /// <param name="highest">No line begins above this; negative infinity for no limit.</param>
    /// <param name="top">The top of the picture.</param>
    /// <param name="bottom">Its bottom; lines end below it only if they have no room beside the picture.</param>
    public static IReadOnlyList<double> Tops(IReadOnlyList<double> targets, double lineHeight, double highest, double top, double bottom)
    {
        var tops = new double[targets.Count];
        var next = highest;
        for (var i = 0; i < targets.Count; i++)
        {
            var lowest = Math.Max(bottom, top + targets.Count * lineHeight) - (targets.Count - i) * lineHeight;
            tops[i] = Math.Max(next, Math.Min(targets[i] - lineHeight / 2, lowest));
            next = tops[i] + lineHeight;
        }

        return tops;
    }
}
