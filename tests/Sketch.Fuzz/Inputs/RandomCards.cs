using System.Text;

namespace Sketch.Fuzz.Inputs;

/// <summary>
/// Random cards like those of makers: a panel of patterned paper with mats, strips with foil lines, a few shapes in a row or
/// column, a banner with words, gems, and words inside. The same number always gives the same card.
/// </summary>
internal sealed class RandomCards
{
    private static readonly string[] Bases =
        ["A2, fold left", "A2, landscape, fold top", "US A6, fold left", "5 x 7, fold left", "5 x 5, fold left",
            "slimline, landscape, fold top"];

    private static readonly string[] Papers =
    [
        "dots #9fc4d8 #ffffff", "stripes #f3e7cf #c9a06a", "gingham #eef3e2 #7f9f63", "plaid #e9dfca #3f6a7d #b5523f",
            "chevron #e4eef0 #7fb0bf",
        "waves #d8e9ee #8fbccb", "stars #22375c #f4e3b0 #ffffff", "woodgrain #d9b98c", "pearl #eef4f7", "kraft", "cardstock #f2ead8",
            "coral #d9644f",
    ];

    private static readonly string[] Shapes = ["star", "heart", "circle", "tag", "hexagon", "scallop", "square", "arch"];

    private static readonly string[] Words = ["Fair winds", "ahoy", "keep a good light", "Lamp day", "thank you", "calm seas ahead"];

    private readonly StringBuilder _text = new();
    private readonly Draws _draws;

    private RandomCards(ulong seed) => _draws = new(seed);

    /// <summary>The text of a card.</summary>
    public static string Text(int number) => new RandomCards((ulong)number).Write(number);

    private string Write(int number)
    {
        Line($"card \"Card {number}\"").Line($"base {Any(Bases)}, of white");
        foreach (var role in (string[])["sky", "band", "shape"])
        {
            Line($"role {role}: {Any(Papers)}");
        }

        Line("role deep: navy #16324f").Line("role light: foil gold").Line("front");
        Line($"  sky: panel, showing {Sixteenths(2, 4)}, of sky");
        for (var mats = Below(3); mats >= 0; mats--)
        {
            Line($"    mat +1/{4 << Below(2)}, of {(mats % 2 == 0 ? "deep" : "band")}");
        }

        Strip();
        Group();
        Line($"    words: banner fit x 5/8 \"{Any(Words)}\", bottom {Sixteenths(4, 20)}, left {Sixteenths(2, 6)}, swallowtail right, "
            + $"of kraft, letters 3/16, raised {Below(3)} mm")
            .Line("      mat +1/8, of deep")
            .Line($"    {2 + Below(4)} gem 1/8, in a row, gap 1/16, right 1/4, top {Sixteenths(2, 8)}, of red")
            .Line("inside")
            .Line("  strip full x 1/2, bottom 1/4, of band")
            .Line($"  text \"{Any(Words)}\" \"{Any(Words)}\", top 1 1/2, of deep");
        return _text.ToString();
    }

    private void Strip()
    {
        var (size, place, side) = Below(2) == 0
            ? ($"full x {Sixteenths(8, 20)}", $"bottom {Sixteenths(8, 16)}", "top")
            : ($"{Sixteenths(8, 20)} x full", $"left {Sixteenths(8, 16)}", "left");
        Line($"    band: strip {size}, {place}, of band")
            .Line($"      line 1/16, along {side}, of light, wrap 1/2")
            .Line($"      line 1/16, along {(side == "top" ? "bottom" : "right")}, of light, wrap 1/2");
    }

    private void Group()
    {
        var count = 1 + Below(4);
        var width = Sixteenths(10, 16);
        Line($"    {count} {Any(Shapes)} "
            + $"{width}{(count == 1 ? "" : Below(2) == 0 ? ", in a row, gap 1/8" : ", in a column, gap 1/8")}, of "
            + $"shape{(Below(2) == 0 ? ", on foam" : "")}")
            .Line($"      mat border 1/16, of {(Below(2) == 0 ? "deep" : "light")}")
            .Line("      star 3/8, of light");
    }

    private RandomCards Line(string line)
    {
        _text.Append(line).Append('\n');
        return this;
    }

    private string Any(string[] words) => _draws.Any(words);

    private string Sixteenths(int least, int most) => _draws.Sixteenths(least, most);

    private int Below(int count) => _draws.Below(count);
}
