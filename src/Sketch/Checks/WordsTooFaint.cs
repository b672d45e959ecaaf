using System.Globalization;
using Sketch.Colours;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Words that stand out too little from what they lie on, by the contrast of the Web Content Accessibility Guidelines 2.2: at least 3 for
/// large letters and cut-out words, 4.5 for smaller ones. On a patterned paper the colour that is nearest to the ink counts. Made for
/// screens, so a guide only on paper.
/// </summary>
internal sealed class WordsTooFaint : IFitRule
{
    /// <summary>
    /// The height of a capital in type of 18 points, from which WCAG 2.2 calls text large: 18 pt x 1/72 in x 0.727, the cap height of the
    /// tool's own lettering as a share of its size; about 4.6 mm.
    /// </summary>
    public static readonly Length LargeFrom = Length.NearestMillimetres(18 * 25.4 / 72 * 0.727);

    private static readonly Rgb Black = new(0, 0, 0);
    private static readonly Rgb White = new(255, 255, 255);

    public void Check(FitView view, FindingBag findings)
    {
        var asked = new HashSet<(Location, string?, string?, Rgb, Rgb)>();
        var told = new HashSet<Location>();
        foreach (var piece in view.Pieces)
        {
            if (piece.Words is not { } words)
            {
                continue;
            }

            var (ink, ground) = piece.Kind switch
            {
                "word" => (piece.Paint, view.GroundPaint(piece)),
                "text" => (words.InkPaint, view.GroundPaint(piece)),
                _ => (words.InkPaint, piece.Paint),
            };

            // A paper that is not known is told elsewhere; its stand-in says nothing of contrast.
            if (ink.Look.Pattern == Pattern.Hatched || ground.Look.Pattern == Pattern.Hatched
                || told.Contains(piece.Location) || !asked.Add((piece.Location, ink.Role, ground.Role, ink.Look.Ground, ground.Look.Ground)))
            {
                continue;
            }

            var against = ColoursOf(ground.Look).MinBy(c => Contrast.Ratio(ink.Look.Ground, c));
            var ratio = Contrast.Ratio(ink.Look.Ground, against);
            var isLarge = piece.Kind == "word" || words.LetterHeight >= LargeFrom;
            var least = isLarge ? Contrast.LeastForLargeText : Contrast.LeastForText;
            if (ratio < least)
            {
                told.Add(piece.Location);
                findings.Add(FindingCatalogue.WordsTooFaint, piece.Location,
                    $"“{words.Text.Replace('\n', ' ')}” in {Named(ink, ink.Look.Ground)} on {Named(ground, against)} has a contrast of {Number(ratio)} to 1; {(piece.Kind == "word" ? "cut-out words" : $"letters {view.Say.Length(words.LetterHeight)} high")} need {Number(least)}.",
                    Hint(piece, ground.Look, least));
            }
        }
    }

    /// <summary>The colours that letters may come to lie on. Sheens, teeth and fibres are faint and do not count.</summary>
    private static IEnumerable<Rgb> ColoursOf(PaperLook look)
    {
        yield return look.Ground;
        var figures = look.Pattern switch
        {
            Pattern.Plain or Pattern.Cardstock or Pattern.Kraft or Pattern.Foil or Pattern.Pearl or Pattern.Woodgrain or Pattern.Hatched => look.Figures.Length,
            _ => Math.Max(1, look.Figures.Length),
        };
        for (var i = 0; i < figures; i++)
        {
            yield return Shades.Figure(look, i);
        }
    }

    private static string Hint(Piece piece, PaperLook ground, double least)
    {
        var clause = piece.Kind is "word" or "text" ? "of" : "ink";
        var (black, white) = (Worst(Black, ground), Worst(White, ground));
        return Math.Max(black, white) >= least
            ? $"Write {clause} {(black >= white ? "black" : "white")}."
            : "No one ink stands out from all colours of this paper: put the words on a plain piece, such as a strip of white.";
    }

    private static double Worst(Rgb ink, PaperLook ground) => ColoursOf(ground).Min(c => Contrast.Ratio(ink, c));

    private static string Named(Paint paint, Rgb colour)
    {
        var name = paint.Role ?? paint.Paper;
        return name is not null ? $"{name} ({colour.Hex})" : colour == Black ? "black" : colour == White ? "white" : colour.Hex;
    }

    /// <summary>Cut off, not rounded, so that a ratio below the limit never reads as the limit.</summary>
    private static string Number(double ratio) => (Math.Floor(ratio * 100) / 100).ToString("0.##", CultureInfo.InvariantCulture);
}
