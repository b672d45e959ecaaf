using Sketch.Output.Pictures;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>What is known of a picture before it becomes a paper, to be corrected.</summary>
/// <param name="Name">A name for the paper.</param>
/// <param name="Sheet">The size of its sheet, as a stash writes it.</param>
/// <param name="Width">The width that the picture shows; empty for that of the whole sheet.</param>
/// <param name="Says">What the file says, in a sentence.</param>
internal sealed record ScanView(string Name, string Sheet, string Width, string Says)
{
    private const int Crumb = 50;
    private const string Fallback = "paper";

    /// <summary>What is known of a picture.</summary>
    /// <param name="scan">The picture.</param>
    /// <param name="stem">The name of its file, without its extension.</param>
    /// <param name="stash">The stash for which it is meant.</param>
    public static ScanView Of(ScanFile scan, string stem, Stash stash)
    {
        var format = stash.Units.Format();
        var usual = format.Metric ? new Size(Length.Millimetre(305), Length.Millimetre(305)) : new Size(Length.Inch(12), Length.Inch(12));
        var pixels = $"The picture has {scan.Width} x {scan.Height} pixels";
        if (scan.DotsPerInch is not { } dots)
        {
            return new(NameOf(stem, stash), format.Text(usual), "", $"{pixels}. Its file does not say how large it is.");
        }

        var (width, height) = (Inches(scan.Width / dots, format), Inches(scan.Height / dots, format));
        var says = $"{pixels} at {dots:0} dots per inch, so it shows {format.Text(new Size(width, height))} {format.Unit}.";
        // A sheet is seldom scanned to its very edge.
        var isPart = width < usual.Width - usual.Width / Crumb || height < usual.Height - usual.Height / Crumb;
        return isPart ? new(NameOf(stem, stash), format.Text(usual), format.Text(width), says)
            : new(NameOf(stem, stash), format.Text(new Size(width, height)), "", says);
    }

    private static Length Inches(double inches, LengthFormat format) =>
        format.Nearest(new((long)Math.Min(inches * Length.NanometresPerInch, Length.Limit.Nanometres)));

    /// <summary>The name of the file as one word that no other paper has.</summary>
    private static string NameOf(string stem, Stash stash)
    {
        var letters = string.Concat(stem.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-'))
            .Split('-', StringSplitOptions.RemoveEmptyEntries);
        var joined = string.Join('-', letters).TrimStart('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '-');
        var name = joined.Length == 0 || Vocabulary.NotNames.Contains(joined) ? Fallback : joined;
        return Enumerable.Range(1, stash.Papers.Length + 1).Select(n => n == 1 ? name : $"{name}-{n}").First(n => stash.Find(n) is null);
    }
}
