using System.Globalization;
using Sketch.Panels;

namespace Sketch.Tests.Panels;

/// <summary>Parses paths of pieces as written in tests.</summary>
internal static class Paths
{
    /// <summary>Parses a path such as <c>front/gem[2]/mat</c>.</summary>
    public static PiecePath Path(this string written)
    {
        var steps = written.Split('/');
        var face = Enum.GetValues<FaceKind>().Single(f => Face.NameOf(f) == steps[0]);
        var path = PiecePath.On(face, Name(steps[1]), Copy(steps[1]));
        return steps.Skip(2).Aggregate(path, (on, step) => on.Then(Name(step), Copy(step)));
    }

    private static string Name(string step) => step.Split('[')[0];

    private static int? Copy(string step) =>
        step.Split('[') is [_, var number] ? int.Parse(number.TrimEnd(']'), CultureInfo.InvariantCulture) : null;
}
