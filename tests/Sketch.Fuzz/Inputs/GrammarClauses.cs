namespace Sketch.Fuzz.Inputs;

/// <summary>Random clauses of pieces, each spelt as the grammar in sketches/LANGUAGE.md has it.</summary>
/// <param name="draws">The random numbers.</param>
/// <param name="lengths">Lengths.</param>
/// <param name="names">The names of pieces that a clause may refer to.</param>
internal sealed class GrammarClauses(Draws draws, GrammarLengths lengths, IReadOnlyList<string> names)
{
    public static readonly string[] Roles = ["sky", "deep", "band", "shape", "light"];

    private static readonly string[] Colours =
        ["navy", "silver", "red", "gold foil", "kraft", "light blue", "#9fc9e8", "#fff", "white cardstock", "pearl", "dots", "sky blue"];

    private static readonly string[] Edges = ["left", "right", "top", "bottom"];
    private static readonly string[] Directions = ["left", "right", "up", "down"];
    private static readonly string[] Letterings = ["plain", "formal", "script", "handwriting", "print", "narrow", "typewriter", "slab",
        "serif", "rounded", "stencil"];

    /// <summary>A role of the card, or a paper.</summary>
    public string Paint => draws.OnceIn(3) ? draws.Any(Colours) : draws.Any(Roles);

    /// <summary>What gives a paper.</summary>
    public string Of => $"of {Paint}";

    /// <summary>What gives papers to copies.</summary>
    public string OfCopies => draws.Below(4) switch
    {
        0 => $"of {Paint} and {Paint}, alternating",
        1 => $"of {Paint} and {Paint}, in turn",
        _ => Of,
    };

    private string Edge => draws.Any(Edges);

    private string Name => names.Count == 0 || draws.OnceIn(20) ? draws.Any<string>(["lamp", "front/sky", "sky/mat"]) : draws.Any(names);

    /// <summary>Clauses that a maker would put together on a piece of this kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="hasWords">Whether words stand on the piece.</param>
    /// <param name="isPlaced">Whether it has a place of its own.</param>
    public List<string> Suited(string kind, bool hasWords, bool isPlaced)
    {
        var isPaper = GrammarCards.Shapes.Contains(kind) || kind is "panel" or "strip";
        var isStraight = kind is "panel" or "strip" or "square";
        var clauses = new List<string>();
        Add(isPlaced, 2, () => $"{draws.Any<string>(["left", "right"])} {lengths.Signed(0, 24)}");
        Add(isPlaced, 2, () => $"{draws.Any<string>(["top", "bottom"])} {lengths.Signed(0, 40)}");
        Add(isPaper, 8, () => $"turn {(draws.OnceIn(3) ? "left " : "")}{draws.From(0, 180)}");
        Add(isPaper, 6, () => draws.Any<string>(["on foam", "raised 1 mm", "raised 3 mm", "on foam tape"]));
        Add(isPaper, 12, () => $"stitched {lengths.Between(1, 3)}");
        Add(isStraight, 8, () => $"{draws.Any<string>(["torn", "wavy", "scalloped", "pointed"])} {Sides}");
        Add(kind == "strip", 6, () => $"wrap {lengths.Between(2, 10)}");
        Add(kind is "rounded" or "ticket" or "notched", 2, () => $"corners {lengths.Between(1, 6)}");
        Add(kind == "banner", 2, () => $"swallowtail {draws.Any<string>(["left", "right", "both"])}");
        Add(kind == "star", 4, () => $"{draws.From(3, 60)} points");
        Add(hasWords, 4, () => $"lettering {draws.Any(Letterings)}");
        Add(hasWords, 4, () => $"letters {lengths.Between(2, 6)}");
        Add(hasWords, 10, () => "capitals");
        Add(hasWords, 10, () => $"spaced {draws.From(-40, 150)} percent");
        Add(kind == "text", 6, () => draws.Any<string>(["arched 90", "arched down 120 degrees", $"on circle {lengths.Between(20, 40)}"]));
        Add(kind is "word", 6, () => $"shadow {lengths.Between(1, 3)} of {Paint}");
        return clauses;

        void Add(bool isPossible, int times, Func<string> clause)
        {
            if (isPossible && draws.OnceIn(times))
            {
                clauses.Add(clause());
            }
        }
    }

    /// <summary>Where a piece is and how it lies.</summary>
    public string Place => draws.Below(22) switch
    {
        0 => $"left {lengths.Signed(0, 40)}",
        1 => $"right {lengths.Signed(0, 40)}",
        2 => $"top {lengths.Signed(0, 40)}",
        3 => $"bottom {lengths.Signed(0, 40)}",
        4 => $"left {lengths.Signed(0, 24)}, top {lengths.Signed(0, 40)}",
        5 => $"{draws.Any<string>(["upper", "lower"])} {draws.Any<string>(["left", "right"])} {lengths.Signed(0, 16)}",
        6 => draws.Any<string>(["centre", "center", "centred"]),
        7 => $"shift {draws.Any(Directions)} {lengths.Between(1, 24)}",
        8 => $"above {Name}{(draws.OnceIn(2) ? $" by {lengths.Signed(0, 8)}" : "")}",
        9 => $"below {Name}{(draws.OnceIn(2) ? $" by {lengths.Signed(0, 8)}" : "")}",
        10 => $"{draws.Any<string>(["left", "right"])} of {Name}",
        11 => $"measured from {Name}",
        12 => $"over {Edge} of {Name}",
        13 => $"along {Edge}",
        14 => $"along {Edge} of {Name}",
        15 => $"around {Name}",
        16 => $"turn {(draws.OnceIn(3) ? "left " : "")}{draws.From(0, 180)}{draws.Any<string>(["", " degrees", " deg"])}",
        17 => $"raised {draws.From(1, 4)} mm",
        18 => $"on foam{draws.Any<string>(["", " tape", " pads 1 mm", " squares", " dots 3 mm"])}",
        19 => $"tucked under{(draws.OnceIn(2) ? "" : $" {Name}")}",
        20 => $"tucked under {Name}",
        _ => "through",
    };

    /// <summary>How a piece looks, or how large it is.</summary>
    public string Look => draws.Below(26) switch
    {
        0 => $"showing {lengths.Between(0, 8)}",
        1 => $"showing {Edge} {lengths.Between(0, 8)}",
        2 => $"border {lengths.Between(1, 4)}",
        3 => $"border {Edge} {lengths.Between(0, 4)}",
        4 => $"same size as {Name}",
        5 => $"wrap {lengths.Between(2, 10)}",
        6 => $"wrap {Edge} {lengths.Between(2, 10)}",
        7 => $"stitched {lengths.Between(1, 3)}",
        8 => $"shadow {lengths.Between(1, 3)} of {Paint}",
        9 => $"scored {Edge} {lengths.Between(1, 20)}",
        10 or 11 => $"{draws.Any<string>(["torn", "wavy", "scalloped", "pointed"])} {Sides}",
        12 => $"swallowtail {draws.Any<string>(["left", "right", "both"])}",
        13 => $"corners {lengths.Between(1, 6)}",
        14 => $"notch {lengths.Between(1, 8)}",
        15 => $"letters {lengths.Between(2, 6)}",
        16 => $"lettering {draws.Any(Letterings)}{draws.Any<string>(["", " bold", " italic", " bold italic"])}",
        17 => draws.Any<string>(["arched 90", "arched down 120 degrees", $"on circle {lengths.Between(20, 40)}", "arched 359"]),
        18 => $"spaced {draws.From(-40, 150)} percent",
        19 => $"ranged {draws.Any<string>(["left", "right"])}",
        20 => "capitals",
        21 => $"ink {Paint}",
        22 => $"file \"{draws.Any<string>(["boat.svg", "gull.svg", "none.svg"])}\"",
        23 => $"lines {lengths.Between(4, 8)} apart",
        24 => $"{draws.From(2, 61)} points",
        _ => $"tails {lengths.Between(1, 8)}",
    };

    /// <summary>How several of one kind lie.</summary>
    public string Several => draws.Below(12) switch
    {
        0 or 1 => "in a row",
        2 => "in a column",
        3 => $"in a grid {draws.From(1, 5)} across",
        4 => $"in a grid {draws.From(1, 4)} x {draws.From(1, 4)}",
        5 => $"in a honeycomb {draws.From(1, 5)} across",
        6 => $"in a row, gap {lengths.Signed(0, 6)}",
        7 => $"in a column, gap {lengths.Signed(0, 6)}, lined up {Edge}",
        8 => "in a row, spread",
        9 => "in a row, spread edge to edge",
        10 => $"in a row, step {draws.Any(Directions)} {lengths.Between(0, 8)}",
        _ => $"gap {lengths.Signed(0, 6)} x {lengths.Signed(0, 6)}",
    };

    private string Sides => draws.Below(5) switch
    {
        0 => "all round",
        1 => $"{Edge} edge",
        2 => $"{Edge} edge {lengths.Between(1, 4)}",
        3 => $"edges {lengths.Between(1, 4)}",
        _ => Edge,
    };
}
