using System.Text.RegularExpressions;
using Sketch.Shapes;

namespace Sketch.Output.Artwork;

/// <summary>The transform attribute of SVG.</summary>
internal static partial class SvgTransform
{
    /// <summary>The product of a list of transforms; the identity for an empty list.</summary>
    /// <exception cref="ArtworkException">The list is malformed.</exception>
    public static Affine Parse(string? list)
    {
        var all = Affine.Identity;
        foreach (Match step in Step().Matches(list ?? ""))
        {
            // The list acts like nested groups: the last transform applies to the shape first.
            all = One(step.Groups[1].Value, SvgLengths.Numbers(step.Groups[2].Value)).Then(all);
        }

        return all;
    }

    private static Affine One(string name, IReadOnlyList<double> values) => (name, values) switch
    {
        ("matrix", [var a, var b, var c, var d, var e, var f]) => new(a, b, c, d, e, f),
        ("translate", [var x]) => Affine.Shift(x, 0),
        ("translate", [var x, var y]) => Affine.Shift(x, y),
        ("scale", [var both]) => Affine.Scale(both, both),
        ("scale", [var x, var y]) => Affine.Scale(x, y),
        ("rotate", [var degrees]) => Affine.Turn(degrees, new(0, 0)),
        ("rotate", [var degrees, var x, var y]) => Affine.Turn(degrees, new(x, y)),
        ("skewX", [var degrees]) => new(1, 0, Math.Tan(degrees * Math.PI / 180), 1, 0, 0),
        ("skewY", [var degrees]) => new(1, Math.Tan(degrees * Math.PI / 180), 0, 1, 0, 0),
        _ => throw new ArtworkException($"has a transform \"{name}\" that cannot be read."),
    };

    [GeneratedRegex(@"([A-Za-z]+)\s*\(([^)]*)\)")]
    private static partial Regex Step();
}
