using System.Text;

namespace Sketch.Tests.Language;

/// <summary>Texts that ask for too much of everything.</summary>
internal static class HostileInputs
{
    private const string Head = "card \"Storm\"\nbase A2, fold left, of white\n";

    private static readonly Dictionary<string, Func<string>> Texts = new()
    {
        ["nothing"] = () => "",
        ["blank lines"] = () => "\n\n  \n\t\n",
        ["one byte order mark"] = () => "\ufeff",
        ["zero bytes"] = () => new string('\0', 1000),
        ["lone surrogates"] = () => "card \"\ud800\"\nbase A2\nfront\n  text \"\udc00\ud800\"\n",
        ["a binary file"] = Binary,
        ["a million digits"] = () => Head + "front\n  panel " + new string('9', 990_000),
        ["more than a million characters"] = () => new string('#', 1_000_001),
        ["a line of a hundred thousand clauses"] = () => Head + "front\n  panel 1 x 1" + Repeat(", top 1", 100_000),
        ["eighty thousand continuation lines"] = () => Head + "front\n  panel 1 x 1,\n" + Repeat("top 1, # x\n", 80_000),
        ["a hundred thousand names in one clause"] = () => Head + "front\n  panel 1 x 1, of red" + Repeat(" and red", 100_000),
        ["a million characters of nonsense"] = () => Repeat("qwertz\n", 142_000),
        ["ten million characters of nonsense"] = () => Repeat("qwertz\n", 1_428_000),
        ["fifty thousand roles"] = () => Head + Lines(50_000, i => $"role r{i}: red"),
        ["fifty thousand fronts"] = () => Head + Repeat("front\n panel 1 x 1\n", 50_000),
        ["five hundred pieces"] = () => Head + "front\n  500 square 1/64, in a grid 50 across, of red\n",
        ["a hundred thousand pieces"] = () => Head + "front\n  100000 square 1/64, in a grid 300 across, of red\n",
        ["five hundred pieces with words"] = () => Head + "front\n  500 panel 1 x 1 \"lamp\", in a grid 50 across, of red\n",
        ["a hundred thousand pieces with words"] = () => Head + "front\n  100000 oval 1 x 2 \"ahoy\"\n",
        ["five hundred blocks of writing lines"] = () => Head + "front\n  500 ruled 3 x 100, lines 0.02 mm apart, in a grid 50 across\n",
        ["a text of ninety-five thousand letters"] = () => Head + $"front\n  text \"{Letters(95_000)}\"\n",
        ["a text of all letters that a card may have"] = () => Head + $"front\n  text \"{Letters(5_000)}\"\n",
        ["texts of all letters that a card may have"] = () => Head + "front\n  text" + Repeat($" \"{Letters(50)}\"", 100) + "\n",
        ["a cut-out word of eight hundred letters"] = () =>
            Head + $"front\n  word \"{Letters(800)}\", letters 1/4, of red\n    mat +1/8, of navy\n",
        ["a cut-out word of all letters that a card may have"] = () =>
            Head + $"front\n  word \"{Letters(150)}\", letters 1/4, of red\n    mat +1/8, of navy\n",
        ["cut-out words of all letters that a card may have"] = () =>
            Head
                + "front\n  15 word \"lighthouse\", letters 1/4, in a grid 20 across, of red\n    mat +1/8, of navy\n"
                + "    mat +1/8, of red\n",
        ["four hundred windows"] = () => Head + "front\n  panel 4 x 5, of red\n    400 window circle 1/64, in a grid 50 across\n",
        ["a hundred windows through two layers"] = () =>
            Head + "front\n" + Lines(2, i => new string(' ', i + 1) + "panel 4 x 4, turn 1, of red") + new string(' ', 3)
                + "100 window scallop 1/4, in a grid 20 across, through\n",
        ["windows through a tower"] = () =>
            Head + "front\n" + Lines(60, i => new string(' ', i + 1) + "panel 4 x 4, of red") + new string(' ', 61)
                + "199 window circle 1/64, in a grid 30 across, through\n",
        ["five hundred lines of pieces"] = () =>
            Head + "front\n" + Lines(500, i => $"  p{i}: panel 1 x 1.{1000 + i}, left {i % 4}, of red"),
        ["twenty thousand lines of pieces"] = () => Head + "front\n" + Lines(20_000, i => $"  p{i}: panel 1 x 1, left {i % 4}, of red"),
        ["copies of copies of copies"] = () =>
            Head + "front\n  500 panel 1 x 1, of red\n    500 panel 1 x 1, of red\n      500 panel 1 x 1, of red\n",
        ["nested copies in seven lines"] = () => Head + "front\n" + Lines(7, i => new string(' ', 2 * i + 2) + "9 star 1, of red, on foam"),
        ["items that name all copies"] = () =>
            Head + "front\n  500 square 1/64, of red\n" + Repeat("    item " + string.Join(" and ", Enumerable.Range(1, 400))
                + ": of blue\n", 200),
        ["fifty thousand mats"] = () => Head + "front\n  square 1, of red\n" + Repeat("    mat +1/8, of red\n", 50_000),
        ["a heart with two thousand mats"] = () => Head + "front\n  heart 2, of red\n" + Repeat("    mat +1/64, of navy\n", 2_000),
        ["twenty-five hearts with nineteen mats"] = () =>
            Head + "front\n" + Repeat("  heart 2, of red\n" + Repeat("    mat +1/64, of navy\n", 19), 25),
        ["twenty stars of sixty points with a mat"] = () => Head + "front\n  20 star 1, 60 points, of red\n    mat +1/8, of navy\n",
        ["five thousand stars of sixty points with a mat"] = () =>
            Head + "front\n  5000 star 1, 60 points, of red\n    mat +1/8, of navy\n",
        ["two hundred and fifty scalloped circles with a mat, all unlike"] = () =>
            Head + "front\n" + Lines(250, i => $"  scallop 2.{1000 + i}, left 1, turn {i % 90}, of red\n    mat +1/8, of navy"),
        ["five hundred pieces on foam"] = () => Head + "front\n  500 panel 1/4 x 1/4, in a grid 50 across, of red, on foam\n",
        ["twenty thousand pieces on foam"] = () => Head + "front\n  20000 panel 1/4 x 1/4, in a grid 200 across, of red, on foam\n",
        ["two hundred and fifty pieces with mats, all unlike, on foam"] = () =>
            Head + "front\n" + Lines(250, i =>
                $"  panel 2.{1000 + i} x 3, left 0.{1000 + i}, turn {i % 90}, of woodgrain, raised 6 mm\n    mat +1/8, of stars"),
        ["ninety thousand pieces with mats"] = () =>
            Head + "front\n  90000 panel 1/4 x 1/4, in a grid 300 across, of red\n    mat +1/8, of navy\n",
        ["mats that no copy can have"] = () =>
            Head + "front\n  600 strip 1 x 1, of red\n    item 600: full x share 1/9999\n    mat 1 x 1\n    mat 2 x 1/64\n",
        ["a thousand deep"] = () => Head + "front\n" + Lines(1000, i => new string(' ', i + 1) + "panel full x full, of red"),
        ["ten thousand steps in and out"] = () =>
            Head + "front\n" + string.Concat(Enumerable.Range(0, 100).Select(_ => Lines(80, i => new string(' ', i + 1) + "group 1 x 1"))),
        ["a count of 999999999"] = () => Head + "front\n  999999999 gem 1/8, in a row, of red\n",
        ["a grid of 99999 x 99999"] = () => Head + "front\n  gem 1/8, in a grid 99999 x 99999, of red\n",
        ["a size of a billion inches"] = () => Head + "front\n  panel 1000000000 x 1000000000, of red\n",
        ["the longest sizes there are"] = () =>
            Head
                + "front\n  500 panel 999 m x 999 m, gap 999 m, step right 999 m, shift right 999 m, of red\n    mat +999 m, of red\n"
                + "    text \"lamp\", letters 999 m\n",
        ["a base of a kilometre"] = () =>
            "card \"Storm\"\nbase 1000 m x 1000 m, of white\nfront\n  panel, showing 1/64, of red\n    star 500 m, 60 points, of red\n "
                + "     mat border 100 m, of red\n",
        ["a base of a nanometre"] = () =>
            "card \"Storm\"\nbase 0.000001 mm x 0.000001 mm, of white\nfront\n  panel share 1/10000 x full, of red\n  scallop 1 m, of "
                + "red\n  tag 0.000001 mm, of red\n    mat +1/64, of red\n",
        ["each the size of the next"] = () => Head + "front\n" + Lines(2_000, i => $"  p{i}: panel, same size as p{i + 1}, of red"),
        ["each above the next"] = () => Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, above p{i + 1}, of red"),
        ["each above the one before"] = () =>
            Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, above p{Math.Max(0, i - 1)}, of red"),
        ["each tucked under the next"] = () => Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, tucked under p{i + 1}, of red"),
        ["each tucked under the one before"] = () =>
            Head + "front\n" + Lines(2_000, i => $"  p{i}: panel 1 x 1, tucked under p{i - 1}, of red"),
        ["two that are as large as each other"] = () =>
            Head + "front\n  a: panel, same size as b, of red\n  b: panel, same size as a, of red\n",
        ["two that lie above each other"] = () => Head + "front\n  a: panel 1 x 1, above b, of red\n  b: panel 1 x 1, above a, of red\n",
        ["parts that double forty times"] = () =>
            Head + "part p0 1 x 1\n  panel 1 x 1, of red\n" + Lines(40, i => $"part p{i + 1} 1 x 1\n  use p{i}\n  use p{i}")
                + "front\n  use p40\n",
        ["parts that double forty times, refitted"] = () => "card \"Storm\"\nlike \"doubling.card\"\nbase 5 x 7\nrefit all\n",
        ["twenty thousand parts in a chain"] = () =>
            Head + "part p0 1 x 1\n  panel 1 x 1, of red\n" + Lines(20_000, i => $"part p{i + 1} 1 x 1\n  use p{i}")
                + "front\n  use p20000\n",
        ["a card like itself"] = () => "card \"Storm\"\nlike \"storm.card\"\n",
        ["a card like one that is like it"] = () => "card \"Storm\"\nlike \"echo.card\"\n",
        ["a refit to a kilometre"] = () => "card \"Storm\"\nlike \"speck.card\"\nbase 1000 m x 1000 m\nrefit all\n",
        ["a refit to a nanometre"] = () => "card \"Storm\"\nlike \"large.card\"\nbase 0.000001 mm x 0.000001 mm\nrefit all\n",
    };

    public static IEnumerable<string> Names => Texts.Keys;

    public static string Text(string name) => Texts[name]();

    public static TestSurroundings World() => new TestSurroundings()
        .WithText("storm.card", Text("a card like itself"))
        .WithText("echo.card", Text("a card like one that is like it"))
        .WithText("doubling.card", Text("parts that double forty times"))
        .WithText("speck.card", "card \"Speck\"\nbase 0.000001 mm x 1 mm, of white\nfront\n  a: panel 900 m x 1, left 999 m, shift up "
            + "900 m, of red\n    mat +900 m, of red\n    2 text \"a\", letters 900 m, gap 900 m\n  star 1, above a by 999 m, of red\n")
        .WithText("large.card", Text("the longest sizes there are"));

    /// <summary>Letters without a blank, each unlike its neighbours.</summary>
    private static string Letters(int count) => string.Concat(Enumerable.Range(0, count).Select(i => (char)('a' + i * 7 % 26)));

    private static string Binary()
    {
        var bytes = new byte[1_000_000];
        new Random(20261125).NextBytes(bytes);
        return Encoding.Latin1.GetString(bytes);
    }

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
