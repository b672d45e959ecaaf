using System.Text;

namespace Sketch.Fuzz.Inputs;

/// <summary>Random stashes of every kind of stock, and batches that use them.</summary>
/// <param name="draws">The random numbers.</param>
internal sealed class GrammarStashes(Draws draws)
{
    private static readonly string[] Patterns = ["dots", "stripes #f1e4c8 #c39a63", "plain white", "waves", "woodgrain #c7a884",
        "foil gold",
        "pearl", "#123456", "\"scan.png\" 12 in wide", "\"none.jpg\"", "gingham #fdfaf3 #b7463c"];

    private static readonly string[] Papers = [.. GrammarClauses.Roles, "white", "navy", "gold", "kraft"];

    private static readonly string[] Ways = ["", "", "", ", kerf 1/32", ", hollow", ", blanks exact", ", blanks 1/8"];

    private readonly GrammarLengths _lengths = new(draws, isMetric: false);

    /// <summary>A stash with a few papers and some of what is bought.</summary>
    public string Stash()
    {
        var text = new StringBuilder("stash \"Shelf\"\n");
        Maybe(text, 8, "note \"In the attic of the lighthouse\"");
        foreach (var paper in Papers)
        {
            Maybe(text, 1, $"{draws.Any<string>(["paper", "cardstock"])} {paper}: {Sheet}, {Supply("sheets")}{Sides()}");
            Maybe(text, 5, $"offcut {paper}: {_lengths.Between(16, 96)} x {_lengths.Between(16, 96)}, {draws.From(1, 5)}");
        }

        Maybe(text, 2, $"gem red: 1/8, {draws.From(1, 60)} pieces, price 0.05");
        Maybe(text, 2, $"line silver: 1/16, {draws.From(1, 40)} ft long");
        Maybe(text, 3, $"ribbon navy: 3/8, {draws.From(1, 2)} rolls, {draws.From(1, 30)} ft long, front #1d3557, price 3.2");
        Maybe(text, 3, $"line copper: 1/16, {draws.From(1, 12)} strips, 9 long");
        Maybe(text, 3, $"tape sail: 1/2, 2 rolls, 10 m long, front stripes");
        Maybe(text, 3, $"sticker anchor: 1 x 1 1/4, {draws.From(1, 24)} pieces");
        Maybe(text, 3, $"foam white: {draws.From(1, 3)} mm, {draws.From(1, 400)} pieces, price 0.01");
        Maybe(text, 3, $"envelope plain: {draws.Any<string>(["US A2", "US A7", "C6", "5 x 7"])}, {draws.From(1, 50)}");
        Maybe(text, 4, $"stamp lighthouse: 1 1/4 x 1 1/4");
        Maybe(text, 4, $"die small-tag: 1 x 2");
        return text.ToString();
    }

    /// <summary>A batch of the cards with these names, from the stash <c>shelf.stash</c>.</summary>
    public string Batch(IReadOnlyList<string> cards)
    {
        var text = new StringBuilder($"batch \"Lamp day\"{draws.Any(Ways)}\n");
        Maybe(text, 8, "units mm");
        Maybe(text, 1, draws.OnceIn(10) ? "" : $"stash \"shelf.stash\"{(draws.OnceIn(8) ? ", kerf 1 mm" : "")}");
        Maybe(text, 6, "rules \"Care home\"\n  rule \"no glitter\" \"at most 5 x 7 in\" \"no date\" \"avoid bless, prayer\"");
        Maybe(text, 3, "date \"the first Sunday in June\"");
        Maybe(text, 4, $"spare {draws.From(0, 3)}");
        Maybe(text, 5, draws.Any<string>(["makers 2", "makers \"Ann\" \"Beth\"", "makers 3"]));
        Maybe(text, 3, $"for \"Cliff ward\", {draws.From(1, 20)} cards{draws.Any<string>(["", ", by post", ", by hand"])}");
        Maybe(text, 4, $"for \"Reading room\", {draws.From(1, 20)} cards");
        if (draws.OnceIn(5))
        {
            Maybe(text, 1, "for \"Harbour home\"");
            Maybe(text, 1, $"  {draws.Any<string>(["names \"names.csv\"", "rules \"Care home\"", "date \"2026-11-20\"",
                "message \"Ahoy\""])}");
        }

        foreach (var card in cards)
        {
            Maybe(text, 1, $"make {(draws.OnceIn(30) ? draws.From(100, 30_000) : draws.From(1, 16))} of \"{card}\"");
            for (var more = draws.Below(3); more > 0; more--)
            {
                Maybe(text, 1, $"  {Order()}");
            }
        }

        Maybe(text, 4, $"cut {draws.From(1, 20)} of {_lengths.Between(8, 64)} x {_lengths.Between(8, 64)} from {draws.Any(Papers)}");
        Maybe(text, 8, $"cut {draws.From(1, 9)} of {_lengths.Between(8, 64)} x {_lengths.Between(8, 64)} from sky, front");
        Maybe(text, 8, $"use {draws.From(1, 4)} of \"{draws.Any(cards)}\" on hand");
        return text.ToString();
    }

    private string Sheet => draws.Any<string>(["12 x 12", "letter", "A4", "legal", "12 x 12", "300 mm x 200 mm"])
        + draws.Any<string>(["", "", ", trim 1/4 bottom", ", upright", ", trim 1/4 left, trim 1/2 top", ", landscape"]);

    private string Supply(string what) => draws.OnceIn(3) ? "any sheets" : $"{draws.From(1, 12)} {what}";

    private string Sides()
    {
        var sides = draws.OnceIn(2) ? "" : $", front {draws.Any(Patterns)}";
        sides += draws.OnceIn(3) ? $", back {draws.Any(Patterns)}" : "";
        sides += draws.OnceIn(3) ? draws.Any<string>([", weight 160 gsm", ", weight 80 lb cover", ", thick 0.3 mm"]) : "";
        return sides + (draws.OnceIn(4) ? ", price 0.99" : "") + (draws.OnceIn(8) ? ", collection \"Sea air\"" : "");
    }

    private string Order() => draws.Below(7) switch
    {
        0 or 1 or 2 => $"role {draws.Any(GrammarClauses.Roles)}: {draws.Any(Papers)}{draws.Any<string>(["", ", back", ", front"])}",
        3 => "message \"Keep a good light\"",
        4 => $"role {draws.Any(GrammarClauses.Roles)}: any offcut{draws.Any<string>(["", " of red", " of navy"])}",
        5 => $"change {draws.Any<string>(["sky", "lamp", "front/sky"])}: of {draws.Any(Papers)}",
        _ => draws.Any<string>(["for \"Cliff ward\"", "leave out words", "spare 2", "2 makers", "by post"]),
    };

    private void Maybe(StringBuilder text, int times, string line)
    {
        if (draws.OnceIn(times))
        {
            text.Append(line).Append('\n');
        }
    }
}
