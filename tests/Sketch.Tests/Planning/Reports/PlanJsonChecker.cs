using System.Text.Json;

namespace Sketch.Tests.Planning.Reports;

/// <summary>
/// Checks written plans independently: carries out every cut on rectangles in whole nanometres and counts the parts that fall
/// off.
/// </summary>
internal static class PlanJsonChecker
{
    private readonly record struct Part(long Left, long Top, long Width, long Height);

    /// <summary>The errors of a plan; empty if it is correct.</summary>
    /// <param name="plan">The JSON document.</param>
    /// <param name="wanted">The number of pieces asked for by card (null for loose ones) and path or line.</param>
    /// <param name="kerf">The width lost in a cut, in nanometres.</param>
    /// <param name="mayTurn">Whether a piece with this key may be turned; null if all may.</param>
    public static List<string> Faults(
        JsonElement plan, IReadOnlyDictionary<string, long> wanted, long kerf = 0, Func<string, bool>? mayTurn = null)
    {
        var faults = new List<string>();
        var made = new Dictionary<string, long>();
        foreach (var paper in plan.GetProperty("papers").EnumerateArray())
        {
            var name = paper.GetProperty("paper").GetString();
            var layouts = paper.GetProperty("layouts").EnumerateArray().ToList();
            var (sheets, bound) = (paper.GetProperty("sheets").GetInt32(), paper.GetProperty("lowerBound").GetInt32());
            int? onHand = paper.GetProperty("onHand") is { ValueKind: JsonValueKind.Number } number ? number.GetInt32() : null;
            Expect(faults, sheets == layouts.Where(l => !l.GetProperty("offcut").GetBoolean())
                .Sum(l => l.GetProperty("times").GetInt32()), $"{name}: sheets differ from the layouts");
            Expect(faults, bound <= sheets
                && paper.GetProperty("proved")
                .GetBoolean() == (bound == sheets), $"{name}: the bound {bound} of {sheets} sheets contradicts proved");
            Expect(faults, paper.GetProperty("short")
                .GetInt32() == (onHand is { } there ? Math.Max(0, sheets - there) : 0), $"{name}: short is not sheets - onHand");
            foreach (var layout in layouts)
            {
                CarryOut(layout, kerf, $"{name}", faults);
                foreach (var piece in layout.GetProperty("pieces").EnumerateArray())
                {
                    var key = KeyOf(piece);
                    made[key] = made.GetValueOrDefault(key) + layout.GetProperty("times").GetInt32();
                    Expect(faults, !piece.GetProperty("turned").GetBoolean() || mayTurn?.Invoke(key) != false, $"{key} is turned");
                }
            }
        }

        foreach (var key in wanted.Keys.Union(made.Keys).Order(StringComparer.Ordinal))
        {
            Expect(faults, wanted.GetValueOrDefault(key) == made.GetValueOrDefault(key),
                $"{key}: {made.GetValueOrDefault(key)} cut of {wanted.GetValueOrDefault(key)}");
        }

        return faults;
    }

    /// <summary>The key of a piece in the counts: its card and path with its upright size, or the line of a loose piece.</summary>
    public static string Key(string? card, string what, long width, long height) => $"{card}|{what}|{width}x{height}";

    private static string KeyOf(JsonElement piece)
    {
        var (width, height) = (Nanometres(piece, "width"), Nanometres(piece, "height"));
        (width, height) = piece.GetProperty("turned").GetBoolean() ? (height, width) : (width, height);
        var path = piece.GetProperty("path").GetString() ?? $"line {piece.GetProperty("line").GetInt32()}";
        return Key(piece.GetProperty("card").GetString(), path, width, height);
    }

    private static void CarryOut(JsonElement layout, long kerf, string name, List<string> faults)
    {
        var stock = layout.GetProperty("stock");
        var parts = new List<Part> { new(0, 0, Nanometres(stock, "width"), Nanometres(stock, "height")) };
        foreach (var cut in layout.GetProperty("cuts").EnumerateArray())
        {
            var (x1, y1, x2, y2) = (Nanometres(cut, "x1"), Nanometres(cut, "y1"), Nanometres(cut, "x2"), Nanometres(cut, "y2"));
            var hit = parts.FindIndex(p => x1 == x2
                ? y1 == p.Top && y2 == p.Top + p.Height && x1 > p.Left - kerf && x1 < p.Left + p.Width
                : y1 == y2 && x1 == p.Left && x2 == p.Left + p.Width && y1 > p.Top - kerf && y1 < p.Top + p.Height);
            if (hit < 0)
            {
                faults.Add($"{name}: the cut {x1},{y1} to {x2},{y2} does not run from edge to edge of a part");
                return;
            }

            var part = parts[hit];
            parts.RemoveAt(hit);
            Part[] halves = x1 == x2
                ? [part with { Width = x1 - part.Left }, part with { Left = x1 + kerf, Width = part.Left + part.Width - x1 - kerf }]
                : [part with { Height = y1 - part.Top }, part with { Top = y1 + kerf, Height = part.Top + part.Height - y1 - kerf }];
            parts.AddRange(halves.Where(h => h is { Width: > 0, Height: > 0 }));
        }

        foreach (var said in layout.GetProperty("pieces").EnumerateArray().Concat(layout.GetProperty("leftovers").EnumerateArray()))
        {
            var place = new Part(Nanometres(said, "left"), Nanometres(said, "top"), Nanometres(said, "width"), Nanometres(said, "height"));
            Expect(faults, parts.Remove(place), $"{name}: {place} is not cut out");
        }

        // The parts that are neither piece nor leftover are the trim at the edges of a full sheet.
        Expect(faults, parts.Count == 0
            || (!layout.GetProperty("offcut").GetBoolean() && parts.Count <= 4), $"{name}: {parts.Count} parts are not listed");
    }

    private static long Nanometres(JsonElement of, string name) => (long)(of.GetProperty(name).GetProperty("mm").GetDecimal() * 1_000_000);

    private static void Expect(List<string> faults, bool holds, string otherwise)
    {
        if (!holds)
        {
            faults.Add(otherwise);
        }
    }
}
