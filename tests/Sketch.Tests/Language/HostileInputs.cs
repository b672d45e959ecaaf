using System.Text;

namespace Sketch.Tests.Language;

/// <summary>Texts that exceed the limits of the language or come close to them.</summary>
internal static class HostileInputs
{
    private const string Head = "card \"Storm\"\nbase A2, fold left, of white\n";

    /// <summary>Each text by its name, as a function of a divisor of its large counts.</summary>
    private static readonly Dictionary<string, Func<int, string>> Texts = new()
    {
        ["nothing"] = _ => "",
        ["blank lines"] = _ => "\n\n  \n\t\n",
        ["only a byte order mark"] = _ => "\ufeff",
        ["zero bytes"] = _ => new string('\0', 1000),
        ["lone surrogates"] = _ => "card \"\ud800\"\nbase A2\nfront\n  text \"\udc00\ud800\"\n",
        ["a binary file"] = n => Binary(1_000_000 / n),
        ["a million digits"] = _ => Head + "front\n  panel " + new string('9', 990_000),
        ["more than a million characters"] = _ => new string('#', 1_000_001),
        ["a line of a hundred thousand clauses"] = n => Head + "front\n  panel 1 x 1" + Repeat(", top 1", 100_000 / n),
        ["eighty thousand continuation lines"] = n => Head + "front\n  panel 1 x 1,\n" + Repeat("top 1, # x\n", 80_000 / n),
        ["a hundred thousand names in one clause"] = n => Head + "front\n  panel 1 x 1, of red" + Repeat(" and red", 100_000 / n),
        ["a million characters of nonsense"] = n => Repeat("qwertz\n", 142_000 / n),
        ["ten million characters of nonsense"] = _ => Repeat("qwertz\n", 1_428_000),
        ["fifty thousand roles"] = n => Head + Lines(50_000 / n, i => $"role r{i}: red"),
        ["fifty thousand fronts"] = n => Head + Repeat("front\n panel 1 x 1\n", 50_000 / n),
        ["five hundred pieces"] = _ => Head + "front\n  500 square 1/64, in a grid 50 across, of red\n",
        ["a hundred thousand pieces"] = _ => Head + "front\n  100000 square 1/64, in a grid 300 across, of red\n",
        ["five hundred pieces with words"] = _ => Head + "front\n  500 panel 1 x 1 \"lamp\", in a grid 50 across, of red\n",
        ["a hundred thousand pieces with words"] = _ => Head + "front\n  100000 oval 1 x 2 \"ahoy\"\n",
        ["five hundred blocks of writing lines"] = _ => Head + "front\n  500 ruled 3 x 100, lines 0.02 mm apart, in a grid 50 across\n",
        ["a text of ninety-five thousand letters"] = _ => Head + $"front\n  text \"{Letters(95_000)}\"\n",
        ["a text of as many letters as a card may have"] = n => Head + $"front\n  text \"{Letters(4_500 / n)}\"\n",
        ["texts of as many letters as a card may have"] = n => Head + "front\n  text" + Repeat($" \"{Letters(50)}\"", 100 / n) + "\n",
        ["a cut-out word of eight hundred letters"] = _ =>
            Head + $"front\n  word \"{Letters(800)}\", letters 1/4, of red\n    mat +1/8, of navy\n",
        ["a cut-out word of as many letters as a card may have"] = n =>
            Head + $"front\n  word \"{Letters(150 / n)}\", letters 1/4, of red\n    mat +1/8, of navy\n",
        ["cut-out words of as many letters as a card may have"] = n =>
            Head
                + $"front\n  {Math.Max(1, 15 / n)} word \"lighthouse\", letters 1/4, in a grid 20 across, of red\n    mat +1/8, of navy\n"
                + "    mat +1/8, of red\n",
        ["four hundred windows"] = _ => Head + "front\n  panel 4 x 5, of red\n    400 window circle 1/64, in a grid 50 across\n",
        ["scalloped windows with as many corners as a card may have"] = n => WindowsThroughTwoLayers($"{28 / n} window scallop 1/4"),
        ["as many windows as a card may have, through two layers"] = n => WindowsThroughTwoLayers($"{200 / n} window circle 1/8"),
        ["windows through sixty layers"] = _ =>
            Head + "front\n" + Lines(60, i => new string(' ', i + 1) + "panel 4 x 4, of red") + new string(' ', 61)
                + "199 window circle 1/64, in a grid 30 across, through\n",
        ["five hundred lines of pieces"] = _ =>
            Head + "front\n" + Lines(500, i => $"  p{i}: panel 1 x 1.{1000 + i}, left {i % 4}, of red"),
        ["twenty thousand lines of pieces"] = n => Head + "front\n" + Lines(20_000 / n, i => $"  p{i}: panel 1 x 1, left {i % 4}, of red"),
        ["copies of copies of copies"] = _ =>
            Head + "front\n  500 panel 1 x 1, of red\n    500 panel 1 x 1, of red\n      500 panel 1 x 1, of red\n",
        ["nested copies in seven lines"] = _ => Head + "front\n" + Lines(7, i => new string(' ', 2 * i + 2) + "9 star 1, of red, on foam"),
        ["items that name all copies"] = n =>
            Head + "front\n  500 square 1/64, of red\n" + Repeat("    item " + string.Join(" and ", Enumerable.Range(1, 400))
                + ": of blue\n", 200 / n),
        ["fifty thousand mats"] = n => Head + "front\n  square 1, of red\n" + Repeat("    mat +1/8, of red\n", 50_000 / n),
        ["a heart with two thousand mats"] = n => Head + "front\n  heart 2, of red\n" + Repeat("    mat +1/64, of navy\n", 2_000 / n),
        ["twenty-five hearts with nineteen mats"] = n =>
            Head + "front\n" + Repeat("  heart 2, of red\n" + Repeat("    mat +1/64, of navy\n", 19), Math.Max(1, 25 / n)),
        ["twenty stars of sixty points with a mat"] = _ => Head + "front\n  20 star 1, 60 points, of red\n    mat +1/8, of navy\n",
        ["five thousand stars of sixty points with a mat"] = _ =>
            Head + "front\n  5000 star 1, 60 points, of red\n    mat +1/8, of navy\n",
        ["two hundred and fifty scalloped circles with a mat, all different"] = n =>
            Head + "front\n" + Lines(250 / n, i => $"  scallop 2.{1000 + i}, left 1, turn {i % 90}, of red\n    mat +1/8, of navy"),
        ["five hundred pieces on foam"] = _ => Head + "front\n  500 panel 1/4 x 1/4, in a grid 50 across, of red, on foam\n",
        ["twenty thousand pieces on foam"] = _ => Head + "front\n  20000 panel 1/4 x 1/4, in a grid 200 across, of red, on foam\n",
        ["two hundred and fifty pieces with mats, all different, on foam"] = n =>
            Head + "front\n" + Lines(250 / n, i =>
                $"  panel 2.{1000 + i} x 3, left 0.{1000 + i}, turn {i % 90}, of woodgrain, raised 6 mm\n    mat +1/8, of stars"),
        ["ninety thousand pieces with mats"] = _ =>
            Head + "front\n  90000 panel 1/4 x 1/4, in a grid 300 across, of red\n    mat +1/8, of navy\n",
        ["mats that fit no copy"] = _ =>
            Head + "front\n  600 strip 1 x 1, of red\n    item 600: full x share 1/9999\n    mat 1 x 1\n    mat 2 x 1/64\n",
        ["nested a thousand deep"] = _ => Head + "front\n" + Lines(1000, i => new string(' ', i + 1) + "panel full x full, of red"),
        ["ten thousand changes of indentation"] = _ =>
            Head + "front\n" + string.Concat(Enumerable.Range(0, 100).Select(_ => Lines(80, i => new string(' ', i + 1) + "group 1 x 1"))),
        ["a count of 999999999"] = _ => Head + "front\n  999999999 gem 1/8, in a row, of red\n",
        ["a grid of 99999 x 99999"] = _ => Head + "front\n  gem 1/8, in a grid 99999 x 99999, of red\n",
        ["a size of a billion inches"] = _ => Head + "front\n  panel 1000000000 x 1000000000, of red\n",
        ["the longest possible sizes"] = _ =>
            Head
                + "front\n  500 panel 999 m x 999 m, gap 999 m, step right 999 m, shift right 999 m, of red\n    mat +999 m, of red\n"
                + "    text \"lamp\", letters 999 m\n",
        ["a base of a kilometre"] = _ =>
            "card \"Storm\"\nbase 1000 m x 1000 m, of white\nfront\n  panel, showing 1/64, of red\n    star 500 m, 60 points, of red\n "
                + "     mat border 100 m, of red\n",
        ["a base of a nanometre"] = _ =>
            "card \"Storm\"\nbase 0.000001 mm x 0.000001 mm, of white\nfront\n  panel share 1/10000 x full, of red\n  scallop 1 m, of "
                + "red\n  tag 0.000001 mm, of red\n    mat +1/64, of red\n",
        ["each piece the size of the next"] = _ => Head + "front\n" + Lines(2_000, i => $"  p{i}: panel, same size as p{i + 1}, of red"),
        ["each piece above the next"] = _ => Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, above p{i + 1}, of red"),
        ["each piece above the previous one"] = _ =>
            Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, above p{Math.Max(0, i - 1)}, of red"),
        ["each piece tucked under the next"] = _ =>
            Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, tucked under p{i + 1}, of red"),
        ["each piece tucked under the previous one"] = _ =>
            Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, tucked under p{i - 1}, of red"),
        ["two pieces of the size of each other"] = _ =>
            Head + "front\n  a: panel, same size as b, of red\n  b: panel, same size as a, of red\n",
        ["two pieces above each other"] = _ => Head + "front\n  a: panel 1 x 1, above b, of red\n  b: panel 1 x 1, above a, of red\n",
        ["parts that double forty times"] = _ =>
            Head + "part p0 1 x 1\n  panel 1 x 1, of red\n" + Lines(40, i => $"part p{i + 1} 1 x 1\n  a: use p{i}\n  b: use p{i}")
                + "front\n  c: use p40\n",
        ["parts that double forty times, with changes of what they lack"] = _ =>
            "card \"Storm\"\nlike \"doubling.card\"\nchange lamp: of red\nchange star: of red\nleave out tag\n",
        ["parts that double forty times, refitted"] = _ => "card \"Storm\"\nlike \"doubling.card\"\nbase 5 x 7\nrefit all\n",
        ["twenty thousand parts in a chain"] = n =>
            Head + "part p0 1 x 1\n  panel 1 x 1, of red\n" + Lines(20_000 / n, i => $"part p{i + 1} 1 x 1\n  use p{i}")
                + $"front\n  use p{20_000 / n}\n",
        ["a card like itself"] = _ => "card \"Storm\"\nlike \"storm.card\"\n",
        ["two cards like each other"] = _ => "card \"Storm\"\nlike \"echo.card\"\n",
        ["a refit to a kilometre"] = _ => "card \"Storm\"\nlike \"speck.card\"\nbase 1000 m x 1000 m\nrefit all\n",
        ["a refit to a nanometre"] = _ => "card \"Storm\"\nlike \"large.card\"\nbase 0.000001 mm x 0.000001 mm\nrefit all\n",
    };

    public static IEnumerable<string> Names => Texts.Keys;

    /// <summary>A text at full size, as the benchmark measures it, or with its counts divided.</summary>
    public static string Text(string name, int divisor = 1) => Texts[name](divisor);

    public static TestWorld World() => new TestWorld()
        .WithText("storm.card", Text("a card like itself"))
        .WithText("echo.card", Text("two cards like each other"))
        .WithText("doubling.card", Text("parts that double forty times"))
        .WithText("speck.card", "card \"Speck\"\nbase 0.000001 mm x 1 mm, of white\nfront\n  a: panel 900 m x 1, left 999 m, shift up "
            + "900 m, of red\n    mat +900 m, of red\n    2 text \"a\", letters 900 m, gap 900 m\n  star 1, above a by 999 m, of red\n")
        .WithText("large.card", Text("the longest possible sizes"));

    /// <summary>Letters without a space, each different from its neighbours.</summary>
    private static string Letters(int count) => string.Concat(Enumerable.Range(0, count).Select(i => (char)('a' + i * 7 % 26)));

    private static string Binary(int count)
    {
        var bytes = new byte[count];
        new Random(20261125).NextBytes(bytes);
        return Encoding.Latin1.GetString(bytes);
    }

    private static string WindowsThroughTwoLayers(string windows) =>
        Head + "front\n  panel 4 x 4, turn 1, of red\n    panel 4 x 4, turn 1, of red\n      " + windows
            + ", in a grid 20 across, through\n";

    private static string Repeat(string text, int times) => new StringBuilder(text.Length * times).Insert(0, text, times).ToString();

    private static string Lines(int count, Func<int, string> line)
    {
        var text = new StringBuilder();
        for (var i = 0; i < count; i++)
        {
            text.Append(line(i)).Append('\n');
        }

        return text.ToString();
    }
}
