using System.Globalization;
using System.Text.RegularExpressions;
using Sketch.Cutting.Model;
using Sketch.Planning.CutSteps;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.CutSteps;

/// <summary>
/// A person with a trimmer that has one stop, who follows the printed words of the steps. The picture only shows which part a cut
/// divides; where the blade comes down is read from the words alone.
/// </summary>
internal static partial class Trimmer
{
    /// <summary>The parts in hand after all steps, without waste; their places are those they had on the sheet.</summary>
    public static List<Rect> PartsOf(SheetWork work, LengthFormat lengths, Length kerf)
    {
        var hand = new List<Rect> { new(Length.Zero, Length.Zero, work.Layout.Stock.Width, work.Layout.Stock.Height) };
        foreach (var step in work.Steps)
        {
            var words = Sentence().Match(step.Text(lengths));
            Assert.True(words.Success, step.Text(lengths));
            var (edge, waste) = (words.Groups["edge"].Value, words.Groups["waste"].Value);
            Assert.Equal(step.Cuts.Length, int.Parse(words.Groups["cuts"].Value, CultureInfo.InvariantCulture));
            Assert.Equal(edge is "left" or "right" ? "down" : "across", words.Groups["way"].Value);
            foreach (var cut in step.Cuts)
            {
                var part = hand.MinBy(p => Away(p, cut));
                hand.Remove(part);
                var halves = Halves(part, edge, Read(words.Groups["setting"].Value, lengths), kerf);
                hand.AddRange(halves.Where(h => h.Side != waste && h.Part is { Width.Nanometres: > 0, Height.Nanometres: > 0 })
                    .Select(h => h.Part));
            }
        }

        return hand;
    }

    private static (string Side, Rect Part)[] Halves(Rect part, string stop, Length setting, Length kerf)
    {
        var rest = (stop is "left" or "right" ? part.Width : part.Height) - setting - kerf;
        return stop switch
        {
            "left" =>
                [("left", part with { Width = setting }), ("right", part with { Left = part.Right - rest, Width = rest })],
            "right" =>
                [("right", part with { Left = part.Right - setting, Width = setting }), ("left", part with { Width = rest })],
            "top" =>
                [("top", part with { Height = setting }), ("bottom", part with { Top = part.Bottom - rest, Height = rest })],
            _ =>
                [("bottom", part with { Top = part.Bottom - setting, Height = setting }), ("top", part with { Height = rest })],
        };
    }

    // How far the middle of a cut in the picture is from a part; zero within it.
    private static long Away(Rect part, Cut cut)
    {
        var left = (cut.From.Left.Nanometres + cut.To.Left.Nanometres) / 2;
        var top = (cut.From.Top.Nanometres + cut.To.Top.Nanometres) / 2;
        return Math.Max(0, Math.Max(part.Left.Nanometres - left, left - part.Right.Nanometres))
            + Math.Max(0, Math.Max(part.Top.Nanometres - top, top - part.Bottom.Nanometres));
    }

    private static Length Read(string words, LengthFormat lengths)
    {
        if (lengths.Metric)
        {
            return Length.NearestMillimetres(double.Parse(words, CultureInfo.InvariantCulture));
        }

        var sixtyFourths = 0L;
        foreach (var number in words.Split(' '))
        {
            var fraction = number.Split('/').Select(n => long.Parse(n, CultureInfo.InvariantCulture)).ToArray();
            sixtyFourths += fraction[0] * LengthFormat.FinestMarks / fraction.ElementAtOrDefault(1, 1);
        }

        return Length.Inch(0, (int)sixtyFourths, LengthFormat.FinestMarks);
    }

    private static long ElementAtOrDefault(this long[] numbers, int index, long otherwise) =>
        index < numbers.Length ? numbers[index] : otherwise;

    [GeneratedRegex(@"^set (?<setting>[\d/. ]+) from the (?<edge>left|right|top|bottom)(?<parts> of [^:]+)?: "
        + @"(?<cuts>\d+) cuts? (?<way>down|across)"
        + @"(, the (?<waste>left|right|top|bottom) trim is waste)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Sentence();
}
