using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// How thick a letter may be with one postal service. Such limits change: this is guidance, and the local service decides.
/// </summary>
/// <param name="Service">The service.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Wording">The limit as the service words it.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Checked">When it was last compared with the source.</param>
internal sealed record PostalThickness(string Service, Length Limit, string Wording, string Source, DateOnly Checked)
{
    /// <summary>The known limits, smallest first.</summary>
    public static ImmutableArray<PostalThickness> All { get; } =
    [
        new("Royal Mail", Length.Millimetre(5), "5 mm", "Letter, 240 x 165 x 5 mm: ask.ofcom.org.uk/help/post/largeletter",
            new(2026, 11, 25)),
        new("the US Postal Service", Length.Inch(0, 1, 4), "1/4 in", "Domestic Mail Manual 101.1.1, letters: 0.007 to 1/4 in thick",
            new(2026, 11, 25)),
    ];
}
