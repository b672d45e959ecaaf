using System.Text.Json;

namespace Sketch.Fuzz.Invariants;

/// <summary>Cuts the sheets of a written plan by its <c>steps</c> alone, in whole nanometres.</summary>
internal static class StepFollower
{
    private readonly record struct Part(long Left, long Top, long Right, long Bottom);

    /// <summary>The steps that cannot be followed and the pieces that they do not give; empty if the plan is correct.</summary>
    public static List<string> Faults(JsonElement plan, long kerf)
    {
        var faults = new List<string>();
        foreach (var paper in plan.GetProperty("papers").EnumerateArray())
        {
            foreach (var layout in paper.GetProperty("layouts").EnumerateArray())
            {
                Follow(layout, kerf, paper.GetProperty("paper").GetString()!, faults);
            }
        }

        return faults;
    }

    private static void Follow(JsonElement layout, long kerf, string paper, List<string> faults)
    {
        var stock = layout.GetProperty("stock");
        var hand = new List<Part> { new(0, 0, Nanometres(stock, "width"), Nanometres(stock, "height")) };
        foreach (var step in layout.GetProperty("steps").EnumerateArray())
        {
            var corners = step.GetProperty("part");
            var part = new Part(Nanometres(corners, "x1"), Nanometres(corners, "y1"), Nanometres(corners, "x2"), Nanometres(corners, "y2"));
            if (!hand.Remove(part))
            {
                faults.Add($"{paper}: {part} is not in hand");
                return;
            }

            hand.AddRange(Strips(part, step, kerf).Where(p => p.Right > p.Left && p.Bottom > p.Top));
        }

        foreach (var piece in layout.GetProperty("pieces").EnumerateArray().Concat(layout.GetProperty("leftovers").EnumerateArray()))
        {
            var (left, top) = (Nanometres(piece, "left"), Nanometres(piece, "top"));
            var place = new Part(left, top, left + Nanometres(piece, "width"), top + Nanometres(piece, "height"));
            if (!hand.Remove(place))
            {
                faults.Add($"{paper}: {place} is not cut out");
            }
        }

        // What remains is the trim of a full sheet.
        if (hand.Count > (layout.GetProperty("offcut").GetBoolean() ? 0 : 4))
        {
            faults.Add($"{paper}: {hand.Count} parts are neither piece nor leftover");
        }
    }

    private static IEnumerable<Part> Strips(Part part, JsonElement step, long kerf)
    {
        var isDown = step.GetProperty("axis").GetString() == "down";
        var at = Nanometres(step, "at");
        var strip = at - (isDown ? part.Left : part.Top);
        for (var cut = 0; cut < step.GetProperty("repeat").GetInt32(); cut++)
        {
            var rest = isDown ? part with { Left = at + kerf } : part with { Top = at + kerf };
            yield return isDown ? part with { Right = at } : part with { Bottom = at };
            (part, at) = (rest, at + kerf + strip);
        }

        yield return part;
    }

    private static long Nanometres(JsonElement of, string name) => (long)(of.GetProperty(name).GetProperty("mm").GetDecimal() * 1_000_000);
}
