using System.Collections.Frozen;

namespace Sketch.Syntax;

/// <summary>
/// Words that a maker says and the language does not, with what to type instead. They are words of the trade or plain English.
/// </summary>
public static class EverydayWords
{
    /// <summary>What to type, with the words that mean it.</summary>
    private static readonly (string Meant, string Words)[] Table =
    [
        ("card", "title"),

        // Kinds of piece. A word stands beneath several kinds where a line may mean either; the first is proposed.
        ("panel", "rectangle layer background backdrop block box plate photo paper sheet overlay vellum acetate cardboard"),
        ("strip", "band wave belly belly-band bellyband belt edging trim streamer sash"),
        ("line", "foil-line peel-off border-line"),
        ("ribbon", "satin grosgrain organza lace"),
        ("twine", "string thread cord yarn raffia jute tassel bakers"),
        ("mat", "backing underlay underlayer matting"),
        ("frame", "border ring surround photo"),
        ("tag", "label gift hang shipping luggage fold-over foldover bookmark"),
        ("banner", "flag scroll fishtail"),
        ("pennant", "flag pennon bunting triangle garland"),
        ("ticket", "coupon admission plaque"),
        ("quatrefoil", "clover cloverleaf"),
        ("pocket", "pouch sleeve library"),
        ("circle", "disc disk round spot ball"),
        ("gem", "rhinestone sequin jewel crystal bead stud pearl gemstone bling diamante"),
        ("dot", "enamel-dot spot confetti enamel"),
        ("brad", "fastener eyelet split-pin"),
        ("bow", "knot"),
        ("sticker", "decal seal stick-on paperclip wax wax-seal pompom charm embellishment"),
        ("drop", "teardrop raindrop tear"),
        ("tape", "washi masking-tape"),
        ("oval", "ellipse"),
        ("rounded", "lozenge pill bubble speech speech-bubble callout"),
        ("scallop", "doily rosette badge medallion"),
        ("star", "starburst burst sunburst"),
        ("outline", "silhouette flower butterfly leaf snowflake tree bird cloud moon sun arrow cross house boat anchor lighthouse diamond "
            + "octagon trapezoid parallelogram crescent semicircle half-circle balloon feather pinwheel die svg"),
        ("notched", "nameplate cartouche bracket"),
        ("word", "cut-out cutout die-cut diecut alphabet number numeral digit"),
        ("sentiment", "greeting phrase stamped"),
        ("text", "words wording title heading caption verse saying quote printed"),
        ("stamp", "picture image stamped"),
        ("using", "die diecut die-cut"),
        ("tails", "ends"),
        ("ruled", "writing-lines"),
        ("window", "hole opening aperture cutaway porthole shaker"),

        // Faces.
        ("front", "cover outside"),
        ("inside", "interior"),

        // Clauses.
        ("of", "color colour coloured colored from made"),
        ("torn", "ripped tear deckled deckle frayed ragged"),
        ("wavy", "wave rippled"),
        ("scalloped", "scallops"),
        ("pointed", "zigzag zig-zag pinked serrated jagged"),
        ("stitched", "sewn stitching stitch stitches"),
        ("scored", "score creased crease"),
        ("centre", "middle mid"),
        ("upright", "portrait vertical"),
        ("landscape", "horizontal"),
        ("fold gate", "gate gatefold gate-fold"),
        ("fold z", "z z-fold zfold accordion concertina trifold tri-fold"),
        ("fold top", "tent tent-fold top-fold topfold"),
        ("fold left", "side side-fold book book-fold"),
        ("z", "accordion concertina zigzag"),
        ("gate", "doors french"),
        ("showing", "margin reveal"),
        ("turn", "rotate rotated tilt tilted angle angled slanted turned"),
        ("on foam", "foam popped pop"),
        ("raised", "lifted"),
        ("swallowtail", "fishtail fish-tail swallow-tail forked"),
        ("arched", "curved curve arc bent bowed"),
        ("lettering script", "cursive joined"),
        ("lettering formal", "calligraphy copperplate"),
        ("lettering handwriting", "handwritten"),
        ("lettering typewriter", "typed typewritten"),
        ("script", "cursive joined brush"),
        ("formal", "calligraphy copperplate fancy elegant"),
        ("handwriting", "handwritten"),
        ("plain", "sans sans-serif normal"),
        ("typewriter", "typed monospace typewritten"),
        ("capitals", "uppercase upper-case caps all-caps allcaps"),
        ("spaced", "tracking letterspaced letter-spaced"),
        ("gap", "spacing"),
        ("ranged left", "left-aligned flush-left left-justified"),
        ("ranged right", "right-aligned flush-right"),
        ("lined up", "aligned align"),
        ("corners", "rounded radius"),
        ("tucked under", "behind underneath beneath under"),
        ("wrap", "wrapped wraps"),
        ("around", "round"),

        // Units.
        ("in", "inch inches"),
        ("mm", "metric millimetres millimeters"),
        ("cm", "centimetres centimeters"),
        ("gsm", "gram grams"),
        ("lb", "pounds"),

        // Lines of a batch.
        ("for", "recipients recipient deliver"),
        ("date", "deadline due when by before"),
        ("make", "produce"),
        ("stash", "uses inventory supplies"),
    ];

    private static readonly FrozenDictionary<string, string[]> Meanings = Table
        .SelectMany(row => row.Words.Split(' ').Select(word => (word, row.Meant)))
        .GroupBy(pair => pair.word, pair => pair.Meant)
        .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.OrdinalIgnoreCase);

    /// <summary>Every word of the table with what is proposed for it, wherever that fits.</summary>
    public static IEnumerable<(string Word, string Meant)> All =>
        Meanings.SelectMany(m => m.Value.Select(meant => (m.Key, meant)));

    /// <summary>What to type for a word, in the singular or the plural, where one of these words may stand; the likeliest first.</summary>
    /// <param name="word">The word; capitals do not matter.</param>
    /// <param name="known">The words that may stand there: a proposal of two words begins with one of them.</param>
    public static string[] Meant(string word, IReadOnlyCollection<string> known)
    {
        if (!Meanings.TryGetValue(word, out var meanings)
            && !(word.EndsWith('s') && Meanings.TryGetValue(word[..^1], out meanings)))
        {
            return [];
        }

        return [.. meanings.Where(m => known.Contains(m.Split(' ')[0], StringComparer.OrdinalIgnoreCase))];
    }
}
