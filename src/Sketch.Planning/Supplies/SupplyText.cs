using System.Globalization;
using Sketch.Assembly;
using Sketch.Units;

namespace Sketch.Planning.Supplies;

/// <summary>How needs are written for people.</summary>
internal static class SupplyText
{
    private const int InchesInFoot = 12;
    private const double SquareMillimetresInInch = 25.4 * 25.4;

    /// <summary>The kind, name and measure, such as <c>gem red 1/8</c>.</summary>
    public static string Named(SupplyNeed need, LengthFormat lengths)
    {
        var kind = need.Kind.ToString().ToLowerInvariant();
        var name = need.Name == kind ? kind : $"{kind} {need.Name}";
        return need.Measure is { } measure
            ? $"{name} {(need.Kind == NeedKind.Foam ? LengthFormat.Millimetres(measure) : lengths.Written(measure))}" : name;
    }

    /// <summary>The total length and area of all strips of a foam.</summary>
    public static string Strips(SupplyNeed need, LengthFormat lengths)
    {
        var (area, unit) = lengths.Metric
            ? (need.StripArea / 100, "square cm") : (need.StripArea / SquareMillimetresInInch, "square inches");
        return $"Of {Named(need, lengths)}: {Amount(need with { ByLength = true }, need.Strips.Nanometres, lengths)} of strip "
            + $"{lengths.Text(Fastening.FoamStrip)} wide, {Math.Ceiling(area).ToString(CultureInfo.InvariantCulture)} {unit}.";
    }

    /// <summary>An amount with its unit: pieces, feet or metres; lengths rounded up to a tenth.</summary>
    public static string Amount(SupplyNeed need, long amount, LengthFormat lengths)
    {
        if (!need.ByLength)
        {
            return amount.ToString(CultureInfo.InvariantCulture);
        }

        var unit = lengths.Metric ? 1000 * Length.NanometresPerMillimetre : InchesInFoot * Length.NanometresPerInch;
        var tenths = Math.Ceiling(amount * 10m / unit) / 10;
        return $"{tenths.ToString("0.#", CultureInfo.InvariantCulture)} {(lengths.Metric ? "m" : "ft")}";
    }
}
