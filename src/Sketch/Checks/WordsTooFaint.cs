using System.Collections.Immutable;
using System.Globalization;
using Sketch.Colours;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Words with too little contrast with what is beneath them, by the contrast ratio of the Web Content Accessibility Guidelines 2.2: at
/// least 3 for large letters and cut-out words, 4.5 for smaller ones. On a patterned paper the colour nearest to the ink counts. The
/// guidelines are made for screens, so on paper they are a guide only; and light words on a paper that shimmers, which depend on how the
/// light falls, are a note.
/// </summary>
internal sealed class WordsTooFaint : IFitRule
{
    /// <summary>
    /// The height of a capital in type of 18 points, from which WCAG 2.2 calls text large: 18 pt x 1/72 in x 0.727, the cap height of the
    /// tool's own lettering as a share of its size; about 4.6 mm.
    /// </summary>
    public static readonly Length LargeFrom = Length.NearestMillimetres(18 * 25.4 / 72 * 0.727);

    /// <summary>Words of one copy of a line and a paper beneath them.</summary>
    private sealed record Written(Piece Piece, PieceWords Words, Paint Ink, Paint Ground)
    {
        public double Least => Piece.Kind == PieceKind.Word || Words.LetterHeight >= LargeFrom
            ? Contrast.LeastForLargeText : Contrast.LeastForText;

        public Rgb Nearest => ColoursOf(Ground.Look).MinBy(c => Contrast.Ratio(Ink.Look.Ground, c));

        public double Ratio => Contrast.Ratio(Ink.Look.Ground, Nearest);

        public bool IsChosenForItsShimmer =>
            Words.NamedInk is not null && Ground.Look.Pattern is PaperPattern.Foil or PaperPattern.Pearl
            && Contrast.RelativeLuminance(Ink.Look.Ground) > Contrast.RelativeLuminance(Ground.Look.Ground);
    }

    public void Check(FitView view, FindingBag findings)
    {
        foreach (var found in Find(view))
        {
            findings.Add(found.Finding);
        }
    }

    /// <summary>The findings with the papers that they concern.</summary>
    public static IEnumerable<PaperFinding> Find(FitView view)
    {
        var behind = new BehindWords(view);
        foreach (var line in Enumerable.Range(0, view.Pieces.Length).Where(i => view.Pieces[i].Words is not null)
            .GroupBy(i => view.Pieces[i].Location))
        {
            // Equal copies are checked once. An unknown paper is reported elsewhere, and its hatching says nothing about contrast.
            var written = line.SelectMany(i => Of(view.Pieces[i], i, behind)).DistinctBy(w => (w.Ink, w.Ground, w.Least))
                .Where(w => IsKnown(w.Ink) && IsKnown(w.Ground)).ToImmutableArray();
            var faint = written.Where(w => w.Ratio < w.Least).ToImmutableArray();
            if (faint.FirstOrDefault(w => !w.IsChosenForItsShimmer) is { } first)
            {
                yield return Finding(FindingCatalogue.WordsTooFaint, first,
                    $"“{OneLine(first.Words)}” in {NamedInk(first)} on {Named(first.Ground, first.Nearest)} has a contrast of "
                    + $"{Number(first.Ratio)} to 1; {Subject(view, first)} need {Number(first.Least)}.",
                    Hint(view, first, written));
            }
            else if (faint is [var shimmering, ..])
            {
                yield return Finding(FindingCatalogue.WordsShimmer, shimmering,
                    $"“{OneLine(shimmering.Words)}” in {NamedInk(shimmering)} on {Named(shimmering.Ground, shimmering.Nearest)}, "
                    + "which shimmers, is read only where the light falls well.",
                    "This is fine if you want it so. Try it on a scrap of that paper first.");
            }
        }
    }

    private static PaperFinding Finding(FindingKind kind, Written words, string message, string hint) =>
        new(new(kind, words.Piece.Location, message, hint), [words.Ground, words.Ink]);

    private static bool IsKnown(Paint paint) => paint.Knowledge != PaperKnowledge.Nothing;

    private static IEnumerable<Written> Of(Piece piece, int index, BehindWords behind)
    {
        var words = piece.Words!;
        return piece.Kind switch
        {
            PieceKind.Word => behind.Of(index).Select(ground => new Written(piece, words, piece.Paint, ground)),
            PieceKind.Text => behind.Of(index).Select(ground => new Written(piece, words, words.InkPaint, ground)),
            _ => [new(piece, words, words.InkPaint, piece.Paint)],
        };
    }

    /// <summary>The colours that may lie behind letters. Sheens, teeth and fibres are faint and do not count.</summary>
    private static IEnumerable<Rgb> ColoursOf(PaperLook look)
    {
        yield return look.Ground;
        var figures = look.Pattern switch
        {
            PaperPattern.Plain or PaperPattern.Cardstock or PaperPattern.Kraft or PaperPattern.Foil or PaperPattern.Pearl
                or PaperPattern.Woodgrain => look.Figures.Length,
            _ => Math.Max(1, look.Figures.Length),
        };
        for (var i = 0; i < figures; i++)
        {
            yield return Shades.Figure(look, i);
        }
    }

    /// <summary>
    /// What makes all copies of the line legible: black if that is enough; else white, which no printer prints, so by hand, or a light
    /// label with the same words.
    /// </summary>
    private static string Hint(FitView view, Written first, ImmutableArray<Written> line)
    {
        var clause = first.Words.InkClause;
        if ((Cures("black") ?? Cures("#000000")) is { } black)
        {
            return $"Write {clause} {black}.";
        }

        var white = Cures("white");
        if (first.Piece.Kind == PieceKind.Word)
        {
            return white is not null ? $"Write {clause} {white}."
                : "Neither black nor white stands out from every colour of this paper. Put a plain mat beneath the word.";
        }

        // A piece that fits its words would have no size without them.
        if (first.Piece.Sizing.Width == Sizing.Words || first.Piece.Sizing.Height == Sizing.Words)
        {
            return white is not null
                ? $"Write {clause} {white} and letter it by hand, for example with a white gel pen; or take a light paper."
                : "Neither black nor white stands out from every colour of this paper: take a plain, light one.";
        }

        var label = first.Piece.Kind == PieceKind.Text ? "in place of the text" : "that lies on it";
        var quoted = string.Join(' ', first.Words.Text.Split('\n').Select(t => $"\"{t.Replace("\"", "\"\"", StringComparison.Ordinal)}\""));
        var letters = view.Say.Typed(first.Words.LetterHeight);
        var typed = $"print the words on a light label {label}: strip fit x fit {quoted}, letters {letters}, of white";
        return white is not null
            ? $"Write {clause} {white} and letter it by hand, for example with a white gel pen; or {typed}."
            : $"Neither black nor white stands out from every colour of this paper, so {typed}.";

        string? Cures(string word)
        {
            var colour = ColourWords.TryGet(word, out var look) ? look.Ground : Rgb.FromHex(word[1..]);
            var cures = line.All(w => ColoursOf(w.Ground.Look).All(c => Contrast.Ratio(colour, c) >= w.Least));
            return !cures ? null : view.Card.Roles.Any(r => r.Name.Equals(word, StringComparison.OrdinalIgnoreCase)) ? colour.Hex : word;
        }
    }

    private static string OneLine(PieceWords words) => words.Text.Replace('\n', ' ');

    private static string Subject(FitView view, Written written) =>
        written.Piece.Kind == PieceKind.Word ? "cut-out words" : $"letters {view.Say.Length(written.Words.LetterHeight)} high";

    private static string NamedInk(Written written) =>
        written.Words.NamedInk is null ? "black, as no ink is named," : Named(written.Ink, written.Ink.Look.Ground);

    private static string Named(Paint paint, Rgb colour) =>
        (paint.Role ?? paint.Paper) is { } name ? $"{name} ({colour.Hex})" : colour == Paint.BlackInk.Look.Ground ? "black" : colour.Hex;

    /// <summary>Truncated, not rounded, so that a ratio below the limit never reads as the limit.</summary>
    private static string Number(double ratio) => (Math.Floor(ratio * 100) / 100).ToString("0.##", CultureInfo.InvariantCulture);
}
