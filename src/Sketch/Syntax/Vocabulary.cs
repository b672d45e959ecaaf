using System.Collections.Frozen;
using System.Globalization;
using Sketch.Kinds;

namespace Sketch.Syntax;

/// <summary>The words of the language.</summary>
public static class Vocabulary
{
    /// <summary>Words that open a face.</summary>
    public static readonly FrozenSet<string> Faces = Set("front", "inside", "back", "envelope");

    /// <summary>Shapes: kinds of piece with an outline of their own.</summary>
    public static readonly FrozenSet<string> Shapes = Set([.. PieceKinds.All.Where(k => k.Traits.IsShape).Select(k => k.Name)]);

    /// <summary>All kinds of piece that are written on lines of their own.</summary>
    public static readonly FrozenSet<string> Kinds = Set([.. PieceKinds.All.Where(k => k.Traits.HasLine).Select(k => k.Name)]);

    /// <summary>Kinds of stock in a stash.</summary>
    public static readonly FrozenSet<string> Stock = Set("paper", "cardstock", "offcut", "gem", "dot", "brad", "button", "bow",
        "sticker", "line", "tape", "ribbon", "twine", "stamp", "die", "foam", "envelope");

    /// <summary>Sides.</summary>
    public static readonly FrozenSet<string> Edges = Set("left", "right", "top", "bottom");

    /// <summary>Words that begin a line but are not kinds of piece.</summary>
    public static readonly FrozenSet<string> Openers =
        Set("card", "batch", "stash", "like", "message", "units", "refit", "base", "role", "part", "use", "item", "change", "leave", "add",
            "make", "makers", "spare", "for", "rules", "rule", "names", "cut", "date", "note", "font", "lettering");

    /// <summary>Words that are often followed by a needless colon.</summary>
    public static readonly FrozenSet<string> WithoutColon =
        Set("card", "batch", "stash", "like", "message", "note", "font", "lettering", "date", "units", "refit", "base", "make",
            "makers", "spare", "for", "rules", "rule", "names", "cut");

    /// <summary>Words of clauses that take one length.</summary>
    public static readonly FrozenSet<string> BeforeLengths =
        Set("border", "showing", "raised", "shadow", "stitched", "gap", "wrap", "letters", "notch", "corners", "thick",
            "tails");

    /// <summary>Words that begin a line of a batch.</summary>
    public static readonly FrozenSet<string> BatchLines =
        Set("batch", "stash", "units", "for", "rules", "rule", "names", "makers", "spare", "make", "use", "role", "message", "cut",
            "date", "note");

    /// <summary>Words that begin a line of a stash.</summary>
    public static readonly FrozenSet<string> StashLines = Set([.. Stock, "stash", "units", "note"]);

    /// <summary>Words that begin a line of a card.</summary>
    public static readonly FrozenSet<string> CardLines =
        Set([.. Kinds, .. Faces, "card", "like", "units", "refit", "base", "role", "part", "use", "item", "change", "leave", "add", "note",
            "font", "lettering", "message"]);

    /// <summary>Words that begin a clause.</summary>
    public static readonly FrozenSet<string> ClauseWords =
        Set("of", "ink", "alternating", "in", "with", "showing", "border", "left", "right", "top", "bottom", "upper", "lower", "centre",
            "shift", "above", "below", "measured", "over", "along", "around", "same", "gap", "spread", "lined", "step", "turn", "raised",
            "on", "shadow", "torn", "wavy", "scalloped", "pointed", "stitched", "scored", "wrap", "tucked", "through", "swallowtail",
            "notch", "corners", "letters", "lines", "file", "font", "lettering", "arched", "spaced", "ranged", "capitals", "fold",
            "landscape", "flap", "front", "back", "upright", "by", "trim", "weight", "thick", "price", "any", "spare", "kerf",
            "blanks", "hollow", "tails", "using", "collection", "made");

    /// <summary>Words that cannot be names, since a line or a relation could not be distinguished from them.</summary>
    public static readonly FrozenSet<string> NotNames =
        Set([.. Kinds, .. Faces, .. Edges, "x", "of", "and", "by", "in", "as"]);

    /// <summary>Counts written as words.</summary>
    public static readonly FrozenDictionary<string,
        string> Counts = new[] { "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve" }
        .Select((word, i) => (Word: word, Digits: (i + 1).ToString(CultureInfo.InvariantCulture)))
        .ToFrozenDictionary(c => c.Word, c => c.Digits, StringComparer.OrdinalIgnoreCase);

    private static FrozenSet<string> Set(params string[] words) => words.ToFrozenSet(StringComparer.OrdinalIgnoreCase);
}
