using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Stationery;

/// <summary>From and to, both included; a limit that is null does not apply.</summary>
public readonly record struct Allowed(double? From, double? To);

/// <summary>A class of letters of one postal service. Lengths are in millimetres, weights in grams.</summary>
/// <param name="Service">The service.</param>
/// <param name="Class">The class, as the service calls it.</param>
/// <param name="Length">The long side of the envelope.</param>
/// <param name="Height">The short side.</param>
/// <param name="Thickness">The thickness.</param>
/// <param name="WeightTo">The largest weight, or null.</param>
/// <param name="Ratio">Length divided by height.</param>
public sealed record LetterClass(
    string Service, string Class, Allowed Length, Allowed Height, Allowed Thickness, double? WeightTo, Allowed Ratio)
{
    private const string BuiltIn = "letter-limits.csv";
    private const int Columns = 16;

    /// <summary>Whether an envelope of another ratio goes as this class at a surcharge.</summary>
    public bool IsRatioSurcharged { get; init; }

    /// <summary>Whether foam and gems may cost a surcharge because they make the envelope uneven.</summary>
    public bool AreBumpsSurcharged { get; init; }

    /// <summary>Where the limits are published.</summary>
    public required string Source { get; init; }

    /// <summary>When they were last compared with the source, as written.</summary>
    public required string Checked { get; init; }

    /// <summary>The classes that come with the tool.</summary>
    public static ImmutableArray<LetterClass> Known { get; } = ReadBuiltIn();

    /// <summary>
    /// Reads classes from lines of comma-separated values, with the columns of <c>letter-limits.csv</c>; a line that cannot be read is an
    /// error and left out.
    /// </summary>
    public static ImmutableArray<LetterClass> Read(SourceText source, FindingBag findings)
    {
        var classes = ImmutableArray.CreateBuilder<LetterClass>();
        for (var line = 0; line < source.LineCount; line++)
        {
            var text = source.Line(line);
            var cells = text.Split(',').Select(c => c.Trim()).ToArray();
            if (text.Trim().Length == 0 || text.StartsWith('#') || cells[0] == "service")
            {
                continue;
            }

            var place = new Location(source, new(source.LineStart(line), source.LineStart(line) + text.Length));
            var wrong = cells.Length != Columns ? $"This line has {Counted.Of(cells.Length, "cell")} instead of {Columns}."
                : Enumerable.Range(2, 9).FirstOrDefault(i => cells[i].Length > 0 && Number(cells[i]) is null) is var bad and > 0
                    ? $"\"{cells[bad]}\" is not a number greater than zero." : null;
            if (wrong is null)
            {
                classes.Add(Of(cells));
            }
            else
            {
                findings.Add(FindingCatalogue.BadPostLimits, place, wrong,
                    "Write service, class, the limits in millimetres and grams, source, status and date, separated by commas.");
            }
        }

        return classes.ToImmutable();
    }

    /// <summary>What keeps an envelope out of this class by its length and height, each with what would change that.</summary>
    public IEnumerable<string> AgainstSize(Size envelope)
    {
        var (length, height) = Sides(envelope);
        return new[] { Outside("mm long", length, Length), Outside("mm high", height, Height) }.OfType<string>();
    }

    /// <summary>What keeps it out by its ratio of length to height, or costs a surcharge; null if nothing does.</summary>
    public string? AgainstRatio(Size envelope)
    {
        var (length, height) = Sides(envelope);
        var ratio = length / height;
        return ratio < Ratio.From ? Sentence($"at least {Text(Ratio.From.Value)}", "longer")
            : ratio > Ratio.To ? Sentence($"at most {Text(Ratio.To.Value)}", "shorter")
            : null;

        string Sentence(string limit, string better)
        {
            var times = Text(ratio) is "1" ? "" : $"{Text(ratio)} times ";
            return $"It is {times}as long as it is high, and a {Class} is {limit} times as long: use a {better} envelope.";
        }
    }

    private string? Outside(string what, double measure, Allowed allowed) =>
        measure > allowed.To ? $"It is {Text(measure)} {what}, and a {Class} is at most {Text(allowed.To.Value)}: use a smaller envelope."
        : measure < allowed.From
            ? $"It is {Text(measure)} {what}, and a {Class} is at least {Text(allowed.From.Value)}: use a larger envelope."
        : null;

    private static (double Length, double Height) Sides(Size envelope) => (
        Units.Length.Max(envelope.Width, envelope.Height).Millimetres, Units.Length.Min(envelope.Width, envelope.Height).Millimetres);

    /// <summary>A number as its sentences write it.</summary>
    public static string Text(double number, int decimals = 3) =>
        Math.Round(number, decimals, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    private static LetterClass Of(string[] cells) => new(
        cells[0], cells[1], Between(cells, 2), Between(cells, 4), Between(cells, 6), Number(cells[8]), Between(cells, 9))
    {
        IsRatioSurcharged = cells[11] == "surcharge",
        AreBumpsSurcharged = cells[12] == "surcharge",
        Source = cells[13],
        Checked = cells[15],
    };

    private static Allowed Between(string[] cells, int at) => new(Number(cells[at]), Number(cells[at + 1]));

    private static double? Number(string cell) =>
        double.TryParse(cell, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : null;

    private static ImmutableArray<LetterClass> ReadBuiltIn()
    {
        using var reader = new StreamReader(typeof(LetterClass).Assembly.GetManifestResourceStream(BuiltIn)!, Encoding.UTF8);
        return Read(new SourceText(BuiltIn, reader.ReadToEnd()), new FindingBag());
    }
}
