using System.Globalization;
using Sketch.Assembly;
using Sketch.Stashes;
using Sketch.Text;
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
        var kind = need.Kind.Traits.Word;
        var name = need.Name == kind ? kind : $"{kind} {need.Name}";
        return need is { Size: { } size, Kind: not SupplyKind.Envelope } ? $"{name} {lengths.Text(size)}"
            : need.Measure is { } measure ? $"{name} {Measure(need.Kind, measure, lengths)}" : name;
    }

    // Foam is sold in millimetres, and so is what is on no mark of an inch ruler.
    private static string Measure(SupplyKind kind, Length measure, LengthFormat lengths) =>
        kind == SupplyKind.Foam || (!lengths.Metric && !LengthFormat.IsOnMark(measure, LengthFormat.FinestMarks))
            ? LengthFormat.Millimetres(measure) : lengths.Written(measure);

    /// <summary>The total length and area of all strips of a foam.</summary>
    public static string Strips(SupplyNeed need, LengthFormat lengths)
    {
        var (area, unit) = lengths.Metric
            ? (need.StripArea / 100, "square cm") : (need.StripArea / SquareMillimetresInInch, "square inches");
        return $"Of {Named(need, lengths)}: {Amount(need with { ByLength = true }, need.Strips.Nanometres, lengths)} of strip "
            + $"{lengths.Text(Fastening.FoamStrip)} wide, {Math.Ceiling(area).ToString(CultureInfo.InvariantCulture)} {unit}.";
    }

    /// <summary>Whether its strips are proved the fewest, and what to cut from which strip, one sentence each.</summary>
    public static IEnumerable<string> Cuts(SupplyNeed need, LengthFormat lengths)
    {
        if (need.Cutting is not { } cutting)
        {
            yield break;
        }

        yield return $"{Named(need, lengths)}: {Counted.Of(cutting.Plan.Sheets, cutting.Noun)}, "
            + (cutting.Plan.IsProved ? "proved the fewest." : $"at least {cutting.Plan.LowerBound}.");
        foreach (var layout in cutting.Plan.Layouts)
        {
            var cuts = cutting.Cut(layout).Select(c => $"{c.Count} x {lengths.Text(c.Length)}");
            var from = (layout.Times == 1 ? $"1 {cutting.Noun}" : $"each of {layout.Times} {cutting.Noun}s")
                + (layout.IsOffcut ? $" of {Long(layout.Stock.Width, lengths)}" : "");
            yield return $"From {from} cut {string.Join(", ", cuts)}; {Left(cutting.Left(layout), lengths)} is left.";
        }
    }

    /// <summary>
    /// The length of a strip or roll with its units: from a yard on in feet and inches, from a metre on in whole metres. What lies between
    /// the marks of a ruler is rounded down, because no more of it can be counted on.
    /// </summary>
    private static string Long(Length length, LengthFormat lengths)
    {
        if (lengths.Metric)
        {
            var metre = Length.Millimetre(1000);
            return length >= metre && length.Nanometres % metre.Nanometres == 0
                ? $"{(length.Nanometres / metre.Nanometres).ToString(CultureInfo.InvariantCulture)} m" : lengths.WithUnit(length);
        }

        var foot = Length.Inch(InchesInFoot);
        var read = LengthFormat.IsOnMark(length, LengthFormat.FinestMarks) ? length : lengths.Down(length);
        if (read < foot * 3)
        {
            return lengths.WithUnit(read);
        }

        var feet = read.Nanometres / foot.Nanometres;
        var rest = read - foot * feet;
        return $"{feet.ToString(CultureInfo.InvariantCulture)} ft" + (rest == Length.Zero ? "" : $" {lengths.WithUnit(rest)}");
    }

    /// <summary>What is left of a strip: as a ruler reads it, or from a yard or metre on with its units.</summary>
    private static string Left(Length length, LengthFormat lengths) =>
        length >= (lengths.Metric ? Length.Millimetre(1000) : Length.Inch(InchesInFoot * 3))
            ? Long(lengths.Down(length), lengths) : lengths.Text(lengths.Down(length));

    /// <summary>An amount with its unit: pieces, feet or metres; lengths rounded up to a tenth.</summary>
    public static string Amount(SupplyNeed need, long amount, LengthFormat lengths)
    {
        if (need.Cutting is { } cutting)
        {
            return $"{Counted.Of(amount, cutting.Noun)} of {Long(cutting.Strip, lengths)}";
        }

        if (!need.ByLength)
        {
            return amount.ToString(CultureInfo.InvariantCulture);
        }

        var unit = lengths.Metric ? 1000 * Length.NanometresPerMillimetre : InchesInFoot * Length.NanometresPerInch;
        var tenths = Math.Ceiling(amount * 10m / unit) / 10;
        return $"{tenths.ToString("0.#", CultureInfo.InvariantCulture)} {(lengths.Metric ? "m" : "ft")}";
    }
}
