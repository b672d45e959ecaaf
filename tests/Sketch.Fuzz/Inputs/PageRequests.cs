using System.Text;
using System.Text.Json;
using Sketch.Rows;

namespace Sketch.Fuzz.Inputs;

/// <summary>Random requests to the server of the page.</summary>
internal sealed class PageRequests
{
    private const string Window = "window0000000001";

    private static readonly string[] Files = ["lamp.card", "day.batch", "shelf.stash"];

    private static readonly string[] Names = ["new.card", "../secret.txt", "..\\secret.txt", "/etc/passwd", "a/b.card", ".sketch/x.card",
        "lamp.card\0",
        "con.card", "", "LAMP.CARD", "lamp.card/", "C:\\x.card", "lamp.card/../../secret.txt", "day.count", new string('a', 300)
            + ".card", "ünï.card",
        "\u202e.card", "lamp.card ", "."];

    private static readonly string[] Routes = ["see", "typed", "save", "begin", "forget", "tidy", "put-word", "paint", "put", "hold",
        "hand", "start",
        "copy", "plan", "enough", "count", "keep", "row", "row", "scan", "scan-size", "offers"];

    private static readonly string[] Queries = ["files", "text", "earlier", "earlier-text", "additions", "guide", "layouts", "samples",
        "sample",
        "workbook.pdf", "messages.pdf", "cuts.csv", "left.stash", "answers", "count", "stash", "variants", "orders", "lettering",
            "sizes",
        "templates.pdf", "rows", "scan-allowed"];

    private static readonly string[] Kinds = ["move", "place", "size", "turn", "foam", "words", "letters", "lettering", "paper", "border",
        "showing", "up",
        "down", "copy", "delete", "none"];

    private static readonly string[] Typed = ["1/8", "2", "-1", "0", "65 mm", "1e9", "NaN", "", " ", "script", "navy", "sky", "x",
        "999999999999", "1/0", "½",
        "45", "\"", "a, b", "\n", "# x", "of red", "Infinity", "1/128"];

    private static readonly string[] Papers = ["shells", "", "sky", "a b", "front", "\"", "shells\npaper x: 1 x 1", "../x"];

    private static readonly string[] Sheets = ["12 x 12", "A4", "", "1", "x", "12 x 12, 3 sheets", "0 x 0", "1e9 x 1"];

    private static readonly string[] Values = ["12 x 12", "letter", "3 sheets", "3", "any", "navy", "dots #fff #000", "left 1/4",
        "160 gsm", "0.99", "Sea air",
        "Cliff ward", "lamp.card", "2026-11-20", "by post", "yes", "12 ft long", "1/8", "\"scan.png\"", "a\"b", "front"];

    private readonly Draws _draws;
    private readonly string _card;
    private readonly string[] _paths;

    public PageRequests(Draws draws)
    {
        _draws = draws;
        _card = draws.OnceIn(2) ? RandomCards.Text(draws.Below(1_000_000)) : draws.OnceIn(2) ? GrammarCards.Text(draws)
            : draws.Any(Corpus.Cards);
        var card = Compiler.Compile(new("lamp.card", _card), new Output.Folders.MemoryFiles()).Card;
        _paths = [.. card?.Pieces.Select(p => p.Path.ToString()) ?? [], "front/sky", "nothing"];
    }

    /// <summary>The files of the folder.</summary>
    public IEnumerable<FuzzFile> Folder() => [new("lamp.card", _card), new("shelf.stash", new GrammarStashes(_draws).Stash()),
        new("day.batch", new GrammarStashes(_draws).Batch(["lamp.card"])), new("day.count", "# made so far\n")];

    /// <summary>Requests, each with the route in its name; the first shows a file to the server, as a window does.</summary>
    public IEnumerable<(string Name, byte[] Body)> Sequence(int count)
    {
        yield return ("post-see", Json(Sheet(_draws.Any(Files))));
        for (; count > 0; count--)
        {
            if (_draws.OnceIn(3))
            {
                yield return ("get-" + _draws.Any(Queries), Encoding.UTF8.GetBytes(Query()));
            }
            else
            {
                var route = _draws.Any(Routes);
                var body = route is "scan" or "scan-size" ? Scan() : Json(Body(route));
                yield return ("post-" + route, _draws.OnceIn(6) ? Damage.OfBytes(body, _draws) : body);
            }
        }
    }

    // The query of a request whose body is a picture stands in the first line.
    private byte[] Scan() =>
    [
        .. Encoding.UTF8.GetBytes($"{Query()}&paper={Uri.EscapeDataString(_draws.Any(Papers))}"
            + $"&width={Uri.EscapeDataString(_draws.Any(Typed))}"
            + $"&sheet={Uri.EscapeDataString(_draws.Any(Sheets))}&stock={Uri.EscapeDataString(_draws.Any(Typed))}\n"),
        .. _draws.OnceIn(3) ? Pictures.Damaged(_draws) : Pictures.Any(_draws),
    ];

    private Dictionary<string, object?> Row()
    {
        var sheet = Sheet(_draws.OnceIn(2) ? "shelf.stash" : "day.batch");
        var tables = RowEditing.Tables(new("a.stash", (string)sheet["text"]!));
        var kinds = tables.SelectMany(t => t.Kinds).ToList();
        var kind = kinds.Count == 0 ? null : _draws.Any(kinds);
        var lines = tables.SelectMany(t => t.Rows).Select(r => r.Line).Append(_draws.From(-1, 40)).ToList();
        return new()
        {
            ["sheet"] = sheet,
            ["action"] = _draws.Any<string>(["change", "change", "add", "add", "delete", "x"]),
            ["line"] = _draws.Any(lines),
            ["kind"] = kind?.Word ?? "x",
            ["values"] = Enumerable.Range(0, _draws.OnceIn(2) ? 1 : _draws.Below(5)).Select(_ => new
            {
                field = kind is null || _draws.OnceIn(10) ? "x" : _draws.Any(kind.Fields).Name,
                value = _draws.Any(_draws.OnceIn(3) ? Typed : Values),
            }).ToArray(),
        };
    }

    private string File => _draws.OnceIn(5) ? _draws.Any(Names) : _draws.OnceIn(2) ? "lamp.card" : _draws.Any(Files);

    private string Text => _draws.Below(4) switch
    {
        0 => Damage.OfText(_card, Corpus.All, _draws),
        1 => _draws.Any(Corpus.All),
        _ => _card,
    };

    private Dictionary<string, object?> Sheet(string file) => new()
    {
        ["file"] = file,
        ["window"] = _draws.OnceIn(20) ? _draws.Any(Names) : Window,
        ["text"] = file == "lamp.card" ? Text : file == "shelf.stash" ? new GrammarStashes(_draws).Stash()
            : new GrammarStashes(_draws).Batch(["lamp.card"]),
        ["stamp"] = _draws.Any<string>(["known", "", "x"]),
        ["saved"] = _draws.OnceIn(2),
        ["stash"] = _draws.Any<string>(["", "shelf.stash", "../secret.txt"]),
        ["choices"] = _draws.OnceIn(2) ? Array.Empty<string>() : [_draws.Any<string>(["sky=navy", "sky=sky/back", "=", "a=b/c/d",
            "deep=#fff", "sky=\ud83d"])],
        ["unfolded"] = _draws.OnceIn(4),
    };

    private Dictionary<string, object?> Body(string route) => route switch
    {
        "see" or "typed" => Sheet(File),
        "hold" => new() { ["sheet"] = Sheet("lamp.card"), ["piece"] = _draws.Any(_paths) },
        "row" => Row(),
        "offers" => new()
        {
            ["sheet"] = Sheet(File),
            ["line"] = _draws.OnceIn(8) ? int.MaxValue : _draws.From(-1, 40),
            ["column"] = _draws.OnceIn(8) ? int.MinValue : _draws.From(-1, 60),
        },
        "hand" => new() { ["sheet"] = Sheet("lamp.card"), ["piece"] = _draws.Any(_paths), ["change"] = Change() },
        "put" => Of("kind", _draws.Any<string>([.. GrammarCards.Shapes, "panel", "text", "gem", "mat", "x"]), "face", _draws.Any<string>([
            "front", "inside", "x"]),
            "line", _draws.From(-1, 20), "x", Millimetres, "y", Millimetres),
        "put-word" => Of("word", _draws.Any<string>(["panel", "mat", "on foam", "front", "turn", "role", "x"]), "line", _draws.From(-1,
            20)),
        "paint" => Of("line", _draws.From(-1, 20), "paper", _draws.Any(Typed)),
        "start" => new()
        {
            ["layout"] = _draws.Any<string>(["framed", "window", "words-only", "x"]),
            ["title"] = _draws.Any<string>(["Lamp", "", "../secret", "\"", "con", "é"]),
            ["size"] = "A2",
            ["fold"] = _draws.Any<string>(["left", "top", "7"]),
            ["stash"] = File,
            ["shelf"] = _draws.OnceIn(4),
            ["beside"] = File,
        },
        "copy" => new() { ["sample"] = _draws.Any<string>(["fair-winds.card", "museum.stash", "../secret.txt", "lamp-day.batch"]) },
        "count" => Of("card", _draws.Any<string>(["Lamp", "Card 1", "lamp.card"]), "stage", _draws.Any<string>(["cut", "given", "x"]),
            "number",
            _draws.From(-3, 12), "to", _draws.Any(Typed), "note", _draws.Any(Typed), "id", "5d2c8e0b71f4a936"),
        "keep" => Of("batch", File, "line", _draws.From(-1, 9)),
        "plan" or "enough" => Of("left", _draws.OnceIn(3), "easy", _draws.OnceIn(3)),
        _ => Of("text", Text, "stamp", _draws.Any<string>(["", "known"]), "keep", _draws.OnceIn(2)),
    };

    private Dictionary<string, object?> Of(params object?[] members)
    {
        var body = new Dictionary<string, object?> { ["file"] = File, ["window"] = Window };
        for (var i = 0; i < members.Length; i += 2)
        {
            body[(string)members[i]!] = members[i + 1];
        }

        return body;
    }

    private Dictionary<string, object?> Change() => new()
    {
        ["kind"] = _draws.Any(Kinds),
        ["across"] = Nanometres,
        ["down"] = Nanometres,
        ["centredAcross"] = _draws.OnceIn(6),
        ["centredDown"] = _draws.OnceIn(6),
        ["width"] = _draws.OnceIn(2) ? Nanometres : null,
        ["height"] = _draws.OnceIn(2) ? Nanometres : null,
        ["held"] = _draws.OnceIn(2) ? null : new[] { _draws.Any<string>(["left", "top", "x"]) },
        ["letsGo"] = _draws.OnceIn(4),
        ["text"] = _draws.Any(Typed),
        ["measure"] = _draws.Any<string>(["width", "height", "left", "top", "7", ""]),
        ["lines"] = _draws.OnceIn(3) ? null : new[] { _draws.Any(Typed), _draws.Any(Typed) },
    };

    private long Nanometres => _draws.Below(8) switch
    {
        0 => long.MinValue,
        1 => long.MaxValue,
        2 => 0,
        _ => _draws.From(-30, 60) * 1_587_500L,
    };

    private double Millimetres => _draws.OnceIn(8) ? _draws.Any<double>([1e300, -1e300, 1e15, 0]) : _draws.From(-20, 160);

    private string Query() => string.Join('&', $"file={Uri.EscapeDataString(File)}", $"window={Window}",
        $"name={Uri.EscapeDataString(_draws.Any(Names))}", $"stash={Uri.EscapeDataString(File)}",
            $"page={_draws.Any<string>(["a4", "letter", "x"])}",
        $"mirror={_draws.Any<string>(["yes", "no"])}", $"hollow={_draws.Any<string>(["yes", ""])}",
            $"units={_draws.Any<string>(["mm", "in", "x"])}",
        $"shelf={_draws.Any<string>(["true", "x", ""])}");

    private static byte[] Json(object value) => JsonSerializer.SerializeToUtf8Bytes(value);
}
