using System.Collections.Immutable;
using Sketch.Stationery;

namespace Sketch.Planning.Post;

/// <summary>As what a service carries an envelope, and why not as its cheapest letter. Guidance: the local service decides.</summary>
/// <param name="Service">The service.</param>
/// <param name="Class">The class; <c>parcel</c> if it is no letter, with <c>, surcharge</c> after it where one is due.</param>
/// <param name="Reasons">What keeps it from being a plain letter, each with what would change that; empty for one.</param>
public sealed record PostalVerdict(string Service, string Class, ImmutableArray<string> Reasons)
{
    private const string Surcharge = ", surcharge";

    /// <summary>The verdict of each service.</summary>
    public static ImmutableArray<PostalVerdict> Of(PostalItem item, ImmutableArray<LetterClass> classes) =>
        [.. classes.GroupBy(c => c.Service).Select(g => OfService(item, [.. g]))];

    private static PostalVerdict OfService(PostalItem item, ImmutableArray<LetterClass> classes)
    {
        var reasons = ImmutableArray.CreateBuilder<string>();
        reasons.AddRange(Against(item, classes[0]));
        if (reasons.Count == 0 && item.HasBumps && classes[0].AreBumpsSurcharged)
        {
            reasons.Add("Foam and gems make it uneven, for which post offices may ask a surcharge.");
        }

        var carried = classes.FirstOrDefault(c => !Against(item, c).Any());
        var ratio = carried?.AgainstRatio(item.Envelope);
        if (ratio is not null)
        {
            reasons.Add(ratio);
        }

        var goesAs = carried is null ? "parcel" : carried.Class + (ratio is null ? "" : Surcharge);
        return new(classes[0].Service, goesAs, reasons.ToImmutable());
    }

    /// <summary>What keeps an envelope out of a class; a ratio that only costs more is not among it.</summary>
    private static IEnumerable<string> Against(PostalItem item, LetterClass of)
    {
        var (thickness, weight) = (item.Thickness, item.Weight);
        string?[] all =
        [
            .. of.AgainstSize(item.Envelope),
            of.Thickness.To is { } most && thickness.High > most
                ? $"It is {Text(thickness, 1)} mm thick, and a {of.Class} is at most {LetterClass.Text(most)} mm: "
                    + Flatter(item, most)
                : of.Thickness.From is { } least && thickness.Low < least
                    ? $"It may be only {LetterClass.Text(thickness.Low)} mm thick, and a {of.Class} is at least "
                        + $"{LetterClass.Text(least)} mm." : null,
            of.WeightTo is { } heaviest && weight.High > heaviest
                ? $"It weighs {Text(weight, 1)} g, and a {of.Class} is at most {LetterClass.Text(heaviest)} g: "
                    + $"use papers that are {Up(weight.High - heaviest)} g lighter in total." : null,
            of.IsRatioSurcharged ? null : of.AgainstRatio(item.Envelope),
        ];
        return all.OfType<string>();
    }

    private static string Text(Spread spread, int decimals)
    {
        var (low, high) = (LetterClass.Text(spread.Low, decimals), LetterClass.Text(spread.High, decimals));
        return low == high ? low : $"{low} to {high}";
    }

    private static string Flatter(PostalItem item, double most)
    {
        var flatter = $"make it {Up(item.Thickness.High - most)} mm flatter";
        return item.Remedies.FirstOrDefault(r => r.Thickness <= most) is { How: not null } remedy
            ? $"{flatter}, or {remedy.How}: then it is at most {LetterClass.Text(Math.Ceiling(remedy.Thickness * 10) / 10, 1)} mm."
            : $"{flatter}.";
    }

    private static string Up(double measure) => LetterClass.Text(Math.Ceiling(measure * 10) / 10, 1);
}
