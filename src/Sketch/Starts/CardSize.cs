using Sketch.Stationery;
using Sketch.Units;

namespace Sketch.Starts;

/// <summary>A size of closed card to begin with.</summary>
/// <param name="Written">The size as a base line gives it, such as <c>A2, landscape</c>.</param>
/// <param name="Closed">The width and height of the closed card.</param>
/// <param name="IsMetric">Whether a card of that size is written in millimetres.</param>
public sealed record CardSize(string Written, Size Closed, bool IsMetric)
{
    /// <summary>A named size, upright or landscape.</summary>
    internal static CardSize Named(string name, bool isLandscape)
    {
        var card = NamedSizes.Cards.First(c => c.Name == name);
        return new(isLandscape ? $"{name}, landscape" : name, isLandscape ? card.Size.Turned() : card.Size, IsMetricName(name));
    }

    /// <summary>A square without a name.</summary>
    internal static CardSize Square(Length side, bool isMetric)
    {
        var length = new LengthFormat(isMetric).Text(side);
        return new($"{length} x {length}", new(side, side), isMetric);
    }

    private static bool IsMetricName(string name) => NamedSizes.FindCard("ISO", name.Replace("ISO ", "", StringComparison.Ordinal))
        .Found?.Name == name;
}
