using System.Globalization;

namespace Sketch.Edits;

/// <summary>The first text of a new file: short, free of findings, and with a comment wherever something is to be changed.</summary>
public static class StartingText
{
    /// <summary>A first card, with inches or millimetres.</summary>
    public static string Card(string title, bool isMetric) => isMetric
        ? $"""
          card {Quoted(title)}
          # One thing per line; an indented line lies on the line above it.
          units mm
          base ISO A6, fold left, of white
          role sky: blue
          role deep: navy

          front
            sky: panel, showing 3, of sky
              mat +3, of deep
              star 40, top 20, of gold, raised 2 mm
            words: banner 70 x 18 "with love", bottom 20, swallowtail right, of cream
          inside
            text "Fair winds", letters 6
          envelope C6, of white

          """
        : $"""
          card {Quoted(title)}
          # One thing per line; an indented line lies on the line above it.
          base A2, fold left, of white
          role sky: blue
          role deep: navy

          front
            sky: panel, showing 1/8, of sky
              mat +1/8, of deep
              star 1 3/4, top 3/4, of gold, raised 2 mm
            words: banner 2 3/4 x 3/4 "with love", bottom 7/8, swallowtail right, of cream
          inside
            text "Fair winds", letters 1/4
          envelope US A2, of white

          """;

    /// <summary>A first stash, with inches or millimetres.</summary>
    public static string Stash(string title, bool isMetric) => isMetric
        ? $"""
          stash {Quoted(title)}
          # Papers and supplies on hand: a name, the size of a sheet, and how many.
          units mm
          cardstock white: A4, 20 sheets, weight 216 gsm
          cardstock cream: A4, 10 sheets
          cardstock navy: A4, 10 sheets
          cardstock blue: A4, 10 sheets
          cardstock gold: A4, 5 sheets
          paper waves: 305 x 305, 2 sheets, trim 6 bottom, front waves, back dots navy cream
          offcut white: 100 x 150, 2
          foam white: 2 mm, 100 pieces
          envelope plain: C6, 20

          """
        : $"""
          stash {Quoted(title)}
          # Papers and supplies on hand: a name, the size of a sheet, and how many.
          cardstock white: letter, 20 sheets, weight 80 lb cover
          cardstock cream: letter, 10 sheets
          cardstock navy: letter, 10 sheets
          cardstock blue: letter, 10 sheets
          cardstock gold: letter, 5 sheets
          paper waves: 12 x 12, 2 sheets, trim 1/4 bottom, front waves, back dots navy cream
          offcut white: 4 x 6, 2
          foam white: 2 mm, 100 pieces
          envelope plain: US A2, 20

          """;

    /// <summary>A stash that lists nothing yet.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="isMetric">Whether it is in millimetres; otherwise in inches.</param>
    public static string EmptyStash(string title, bool isMetric) =>
        $"stash {Quoted(title)}\n# Papers and supplies on hand: a name, the size of a sheet, and how many.\n"
            + (isMetric ? "units mm\n" : "");

    /// <summary>A first batch; where a file is missing, a comment stands in its place.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="isMetric">Whether it is in millimetres; otherwise in inches.</param>
    /// <param name="makes">The files of the cards to make, with their numbers.</param>
    /// <param name="stash">The file of the stash, or null.</param>
    public static string Batch(string title, bool isMetric, IEnumerable<(string Card, int Count)> makes, string? stash)
    {
        var lines = makes.Select(m => string.Create(CultureInfo.InvariantCulture, $"make {m.Count} of {Quoted(m.Card)}\n")).ToList();
        return $"batch {Quoted(title)}\n"
            + "# One run of cards: what is made, how often, and from which stash.\n"
            + (isMetric ? "units mm\n" : "")
            + (stash is null ? "# stash \"museum.stash\"\n" : $"stash {Quoted(stash)}\n")
            + (lines.Count == 0 ? "# make 12 of \"fair-winds.card\"\n" : string.Concat(lines));
    }

    /// <summary>The words of a file's name, the first with a capital: <c>keepers-watch</c> is titled "Keepers watch".</summary>
    /// <param name="stem">The name without its ending.</param>
    /// <returns>The title; empty if the name has no words.</returns>
    public static string TitleOf(string stem)
    {
        // Each of these quotes ends a title.
        var title = string.Join(' ', stem.Split([' ', '-', '_', '"', '“', '”', '„'], StringSplitOptions.RemoveEmptyEntries));
        return title.Length == 0 ? "" : char.ToUpper(title[0], CultureInfo.InvariantCulture) + title[1..];
    }

    /// <summary>Words in quotes, to be read again: each quotation mark in them is doubled, and line ends are blanks.</summary>
    internal static string Quoted(string words) =>
        $"\"{string.Concat(words.Select(c => c is '"' or '“' or '”' or '„' ? "\"\"" : char.IsControl(c) ? " " : c.ToString()))}\"";
}
