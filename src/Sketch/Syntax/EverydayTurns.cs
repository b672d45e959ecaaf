using System.Collections.Frozen;

namespace Sketch.Syntax;

/// <summary>
/// Plain turns of speech that begin no clause and mean more than one word of the language: what to type instead, as a sentence.
/// </summary>
internal static class EverydayTurns
{
    private const string Mat = "A mat goes on a line of its own, indented under its piece: mat +1/8, of navy.";
    private const string Window = "A window goes on a line of its own, indented under the piece that it cuts: window circle 2.";
    private const string Size = "Write the size after the kind, as width x height: panel 3 x 2.";
    private const string Even = "Write spread for equal gaps, or gap 1/8 between copies.";
    private const string Place = "Write the side with its distance: top 1/4, or upper left 1/4.";
    private const string Note = "Say it in a note below the title: note \"Emboss the panel.\"";
    private const string Row = "Write a count before the kind, and in a row: 5 pennant 1/2, in a row.";

    private const string Board = "Write raised 1 mm for thick board, or sticker star 1 for a shape that is bought.";

    /// <summary>What to type in place of a line that begins with such a word.</summary>
    private static readonly FrozenDictionary<string, string> Lines = Table(
        ("A corner is a position: square 1/2, upper left 0. To round the corners of a piece, write corners 1/8.",
            "corner corners photo-corner photo-corners"),
        (Mat, "matted layered double backed"),
        ("Glitter is a paper: panel 3 x 2, of glitter, with role glitter: silver above the faces.", "glitter"),
        ("Write panel 1 x 1 1/4, scalloped 1/16: paper with the edge of a postage stamp.", "postage postage-stamp faux-postage"),
        ("Write the shape of an edge after the size: strip 4 x 1, torn bottom.", "torn ripped"),
        ("Write the shape of an edge after the size: strip 4 x 1, wavy bottom.", "wavy"),
        ("Write the shape of an edge after the size: strip 4 x 1, pointed bottom.", "pointed zigzag"),
        ("Write scallop 2 for a round piece. Write the shape of an edge after the size: strip 4 x 1, scalloped bottom.", "scalloped"),
        ("Write stitches after the size: panel 3 x 2, stitched 1/8.", "stitched sewn"),
        ("Write the bend after the words: text \"ahoy\", arched 60.", "arched curved"),
        ("Write the turn after the size: panel 3 x 2, turn left 5.", "tilted slanted turned"),
        (Note, "embossed debossed embossing distressed inked"),
        (Board, "chipboard wooden wood resin acrylic felt cork"));

    private static readonly FrozenDictionary<string, string> InCards = Table(
        (Mat, "matted double backed backing underlay layered larger bigger"),
        (Window, "cut hole pierced punched"),
        ("Leave out the size and write showing 1/8: an eighth of the layer below is then seen on every side.", "inset smaller"),
        (Size, "width height wide tall x measures measuring"),
        (Even, "evenly equally spread-out distributed"),
        (Place, "at near towards toward against"),
        ("Write a half as 1/2, and a quarter as 1/4.", "half quarter"),
        ("Write the size as a number after the kind: heart 1.", "small large medium big little tiny"),
        ("Write shift right 1/8 to move it from its place.", "offset moved nudged"),
        ("Write the side with its distance: left 0 at the edge, left -1/8 past it.", "flush from off"),
        ("Pieces are glued anyway; write on foam, or on foam 3 mm, to lift one.", "glued stuck taped"),
        ("Write on foam, or on foam 3 mm.", "foam-mounted"),
        ("Write lettering script bold: a kind of letters, then bold or italic. Letters cannot be underlined.", "underline underlined"),
        ("Write right of sky by 1/8: a neighbour with its distance.", "beside next"),
        (Row, "row rows line"),
        ("Write a count before the kind, and in a column: 3 star 1/2, in a column.", "column stacked stack"),
        ("Write a count before the kind, and in a grid 2 across: 4 star 1/2, in a grid 2 across.", "grid"),
        ("Write a negative gap: gap -1/8.", "overlapping overlapped overlap"),
        (Note, "embossed debossed embossing distressed inked glittered glittery textured"),
        ("Write full for the width of the piece below: strip full x 1/2.", "full full-width across"),
        ("Write letters 1/4 for the height of letters; a piece has its size after its kind.", "size sized"),
        ("Write capitals.", "all"),
        ("Write spaced 10 percent for the room between letters.", "letter"),
        ("Its words are stamped or printed anyway; ink navy names their ink.", "stamped printed"),
        ("A square base has two equal sides: base 5 x 5.", "square"));

    private static readonly FrozenDictionary<string, string> InBatches = Table(
        ("Write 2 makers.", "shared split divided between among people"),
        ("Write spare 1.", "extra extras additional"),
        ("Write by post, or by hand.", "mail mailed post posted hand"));

    private static readonly FrozenDictionary<string, string> InStashes = Table(
        ("Write the size after the colon, as width x height: paper gulls: 12 x 12.", "size width height"),
        ("Write price 0.99, for one sheet, piece or roll.", "cost costs"),
        ("Write 10 strips, 12 long for the length of each, or price 0.99 for the price of each.", "each"),
        ("Write 3 sheets, 20 pieces or 2 rolls.", "quantity count have pack packs"));

    /// <summary>What to type in place of a clause that begins with this word; null for other words.</summary>
    /// <param name="opening">The first word of the file: card, batch or stash.</param>
    /// <param name="word">The word; capitals do not matter.</param>
    /// <param name="next">The word after it.</param>
    public static string? HintFor(string opening, string word, string next)
    {
        if (opening == "card" && word.Equals("drop", StringComparison.OrdinalIgnoreCase)
            && next.Equals("shadow", StringComparison.OrdinalIgnoreCase))
        {
            return "Write shadow 1/16 of navy.";
        }

        var table = opening switch
        {
            "batch" => InBatches,
            "stash" => InStashes,
            _ => InCards,
        };
        return table.GetValueOrDefault(word);
    }

    /// <summary>What to type in place of a line of a card that begins with this word, also before a kind of piece.</summary>
    /// <param name="word">The word; capitals do not matter.</param>
    /// <returns>The hint; null for other words.</returns>
    public static string? HintForLine(string word) => Lines.GetValueOrDefault(word);

    private static FrozenDictionary<string, string> Table(params (string Hint, string Words)[] rows) =>
        rows.SelectMany(r => r.Words.Split(' ').Select(word => (word, r.Hint)))
            .ToFrozenDictionary(p => p.word, p => p.Hint, StringComparer.OrdinalIgnoreCase);
}
