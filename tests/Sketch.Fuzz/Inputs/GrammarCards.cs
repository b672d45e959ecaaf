using System.Text;

namespace Sketch.Fuzz.Inputs;

/// <summary>
/// Random cards of every construct of the language. Most can be read, about half can be laid out, and few are pretty: clauses meet that
/// no maker would put together.
/// </summary>
internal sealed class GrammarCards
{
    private const int Deepest = 4;

    private static readonly string[] Bases = ["A2, fold left", "A2, landscape, fold top", "US A6, fold left", "5 x 7, fold left",
        "130 mm x 180 mm, fold left", "slimline, landscape, fold top", "A2, fold gate", "A2, fold z", "5 x 5", "DL, fold top",
        "A2, fold left, by post", "US A7"];

    private static readonly string[] Faces = ["inside", "back", "inside left", "inside top", "envelope", "envelope back"];

    private static readonly string[] Papers = ["dots #9fc4d8 #ffffff", "stripes #f3e7cf #c9a06a", "gingham #eef3e2 #7f9f63",
        "plaid #e9dfca #3f6a7d #b5523f", "chevron", "waves #d8e9ee #8fbccb", "stars #22375c #f4e3b0 #ffffff", "woodgrain", "pearl #eef4f7",
        "kraft", "cardstock #f2ead8", "coral #d9644f", "navy", "foil gold", "#123456"];

    public static readonly string[] Shapes = ["square", "rounded", "circle", "oval", "star", "heart", "hexagon", "drop", "scallop", "arch",
        "tag", "banner", "ticket", "notched", "tile", "quatrefoil", "pennant", "pocket", "outline"];

    private static readonly string[] Words = ["Fair winds", "ahoy", "keep a good light", "A", "thank \"\"you\"\"", "café", "=1+1",
        "<b>&</b>",
        "", " ", "über 1/2", "@home", "灯台", "\ud83d\udea2", "ffi", "-"];

    private static readonly string[] Names = ["sky", "lamp", "glow", "words", "rope", "buoy-1", "sail", "a", "b-1", "keeper"];

    private static readonly string[] Letters = ["", ", letters 3 mm", ", lettering script"];

    private static readonly string[] Borders = ["+1/8 in", "+1/4 in", "+3 mm", "border 1/16 in", "", "+1/8 in x 1/4 in"];

    private readonly StringBuilder _text = new();
    private readonly Draws _draws;
    private readonly GrammarLengths _lengths;
    private readonly bool _isMetric;
    private readonly bool _hasPart;
    private readonly bool _isSensible;
    private int _names;

    private GrammarCards(Draws draws)
    {
        _draws = draws;
        _isMetric = draws.OnceIn(4);
        _hasPart = draws.OnceIn(6);
        _isSensible = !draws.OnceIn(5);
        _lengths = new(draws, _isMetric);
    }

    /// <summary>The text of a card.</summary>
    public static string Text(Draws draws) => new GrammarCards(draws).Write();

    private string Write()
    {
        Line($"card \"{_draws.Any(Words)}\"");
        if (_draws.OnceIn(12))
        {
            Line($"like \"{_draws.Any<string>(["first.card", "second.card"])}\"");
            Changes();
            return _text.ToString();
        }

        if (_isMetric)
        {
            Line("units mm");
        }

        Line($"base {_draws.Any(Bases)}, of {(_draws.OnceIn(4) ? _draws.Any(GrammarClauses.Roles) : "white")}");
        foreach (var role in GrammarClauses.Roles)
        {
            Line($"role {role}: {_draws.Any(Papers)}");
        }

        Maybe(8, $"lettering {_draws.Any<string>(["script", "serif bold", "print italic"])}");
        Maybe(10, $"note \"{_draws.Any(Words)}\"");
        Maybe(6, $"message \"{_draws.Any(Words)}\" \"{_draws.Any(Words)}\"{_draws.Any(Letters)}");
        if (_hasPart)
        {
            Line($"part buoy {_lengths.Between(10, 40)} x {_lengths.Between(10, 40)}");
            Pieces(1, 3);
        }

        Line("front");
        Pieces(1, 5);
        foreach (var face in Faces.Where(f => _draws.OnceIn(_isSensible && f.StartsWith("inside ", StringComparison.Ordinal) ? 20 : 3)))
        {
            Line(face);
            Pieces(1, 3);
        }

        return _text.ToString();
    }

    private void Changes()
    {
        Maybe(2, $"base {_draws.Any(Bases)}, of white");
        Maybe(2, $"refit {_draws.Any<string>(["sizes", "margins", "all"])}");
        Maybe(2, $"role sky: {_draws.Any(Papers)}");
        for (var changes = _draws.Below(4); changes > 0; changes--)
        {
            var path = _draws.Any<string>(["sky", "front/sky", "sky/lamp", "words", "lamp", "sky/mat", "rope"]);
            var clauses = new GrammarClauses(_draws, _lengths, Names);
            Line(_draws.Below(4) switch
            {
                0 => $"leave out {path}",
                1 => $"change {path}: {Head(_draws.Any(Shapes))}, {clauses.Look}",
                2 => $"change {path}: {clauses.Place}, {clauses.Of}",
                _ => $"add to {_draws.Any<string>(["front", "inside", path])}",
            });
            if (_draws.OnceIn(4))
            {
                Pieces(1, 2);
            }
        }
    }

    private void Pieces(int depth, int most)
    {
        var names = new List<string>();
        for (var count = _draws.From(1, most); count > 0; count--)
        {
            Piece(depth, names);
        }
    }

    private void Piece(int depth, List<string> names)
    {
        var clauses = new GrammarClauses(_draws, _lengths, [.. names]);
        var count = _draws.OnceIn(5) ? _draws.From(2, 9) : 1;
        var kind = Kind(depth);
        var name = _draws.OnceIn(2) ? Name() : null;
        var head = kind == "use" ? "use buoy" : Head(kind);
        var line = new List<string> { $"{(name is null ? "" : name + ": ")}{(count == 1 ? "" : count + " ")}{head}" };
        if (count > 1)
        {
            line.Add(clauses.Several);
        }

        if (kind is not ("window" or "group" or "use" or "text" or "ruled" or "stamp"))
        {
            line.Add(count > 1 ? clauses.OfCopies : clauses.Of);
        }

        if (kind is "stamp" or "outline")
        {
            line.Add("file \"boat.svg\"");
        }

        if (_isSensible)
        {
            var isPlaced = count == 1 && kind != "strip" && !head.Contains("showing", StringComparison.Ordinal);
            line.AddRange(clauses.Suited(kind, head.Contains('"', StringComparison.Ordinal), isPlaced));
        }
        else
        {
            line.AddRange(Enumerable.Range(0, _draws.Below(3)).Select(_ => clauses.Place));
            line.AddRange(Enumerable.Range(0, _draws.Below(2)).Select(_ => clauses.Look));
        }

        Line(new string(' ', 2 * depth) + string.Join(", ", line) + (_draws.OnceIn(30) ? "  # with a comment" : ""));
        if (name is not null)
        {
            names.Add(name);
        }

        var below = new string(' ', 2 * depth + 2);
        if (count > 1 && _draws.OnceIn(4))
        {
            Line($"{below}item {_draws.From(1, count)}: {clauses.Of}");
        }

        var isPaper = Shapes.Contains(kind) || kind is "panel" or "strip";
        for (var mats = _draws.Below(8); mats > 5 && (isPaper || kind is "word" or "sentiment"); mats--)
        {
            Line($"{below}mat {_draws.Any(Borders)}, {clauses.Of}");
        }

        if (depth < Deepest && _draws.OnceIn(depth + 1) && (isPaper || kind == "group"))
        {
            Pieces(depth + 1, 3);
        }
    }

    // Each name is unique, unless a mistake is wanted.
    private string Name() => _draws.Any(Names) + (_isSensible ? (++_names).ToString(System.Globalization.CultureInfo.InvariantCulture)
        : "");

    private string Kind(int depth) => _draws.Below(20) switch
    {
        < 5 => "panel",
        < 7 => "strip",
        < 12 => _draws.Any(Shapes),
        12 => "text",
        13 => _draws.Any<string>(["word", "sentiment"]),
        14 => "group",
        15 => depth > 1 ? "window" : "panel",
        16 => _draws.Any<string>(["gem", "dot", "brad", "button", "bow", "sticker"]),
        17 => _draws.Any<string>(["line", "tape", "ribbon", "twine"]),
        18 => _draws.Any<string>(["frame", "stamp", "ruled"]),
        _ => _hasPart ? "use" : "banner",
    };

    private string Head(string kind) => kind switch
    {
        "text" or "word" or "sentiment" =>
            $"{kind} \"{_draws.Any(Words)}\"{(!_isSensible && _draws.OnceIn(4) ? $" \"{_draws.Any(Words)}\"" : "")}",
        "line" or "tape" or "ribbon" or "twine" => $"{kind} {_draws.Any<string>(["1/16", "1/8", "full x 1/4", "3/8 x full"])}",
        "gem" or "dot" or "brad" or "button" or "bow" => $"{kind} {_lengths.Between(2, 12)}",
        "banner" or "tag" or "panel" when _draws.OnceIn(4) => $"{kind} fit x {_lengths.Between(8, 20)} \"{_draws.Any(Words)}\"",
        "panel" when _draws.OnceIn(3) => $"{kind}, showing {_lengths.Between(0, 8)}",
        "strip" => $"{kind} {(_draws.OnceIn(2) ? $"full x {_lengths.Between(4, 24)}" : $"{_lengths.Between(4, 24)} x full")}",
        "window" when _draws.OnceIn(2) => $"{kind} {_lengths.Between(4, 24)} x {_lengths.Between(4, 24)}",
        "window" => $"{kind} {_draws.Any(Shapes[..^1])} {_lengths.Between(4, 24)} x {_lengths.Between(4, 24)}",
        "frame" or "ruled" or "sticker" or "group" or "rounded" or "oval" or "banner" or "ticket" or "notched" or "panel" or "pocket" =>
            $"{kind} {_lengths.Between(6, 64)} x {_lengths.Between(6, 64)}",
        _ => $"{kind}{Measure()}",
    };

    private string Measure() => _draws.Below(8) switch
    {
        0 when !_isSensible => "",
        1 => $" share {_draws.From(1, 3)}/{_draws.From(3, 8)} x full",
        2 => $" full x share 1/{_draws.From(2, 6)}",
        3 => $" {_lengths.Between(8, 40)} {_draws.Any<string>(["wide", "high"])}",
        < 6 => $" {_lengths.Between(8, 40)}",
        _ => $" {_lengths.Between(6, 64)} x {_lengths.Between(6, 64)}",
    };

    private void Maybe(int times, string line)
    {
        if (_draws.OnceIn(times))
        {
            Line(line);
        }
    }

    private void Line(string line) => _text.Append(line).Append('\n');
}
