using System.Collections.Immutable;
using System.Globalization;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>One line of a size table: pieces with the same text, counted.</summary>
/// <param name="Path">The path without the numbers of copies, such as <c>front/gem</c>.</param>
/// <param name="What">The kind, with the words on it in quotes, and the number of parts it falls into if there are several.</param>
/// <param name="First">The first of the pieces.</param>
internal sealed record SizeRow(PiecePath Path, string What, SizeEntry First)
{
    /// <summary>The cut size, or empty for what is not cut from paper.</summary>
    public string Cut { get; init; } = "";

    /// <summary>The finished size if it differs from the cut size, else empty.</summary>
    public string Finished { get; init; } = "";

    /// <summary>What a mat shows, else empty.</summary>
    public string Border { get; init; } = "";

    /// <summary>The role, or empty.</summary>
    public string Role { get; init; } = "";

    /// <summary>The paper, with its side if that is the back, or empty.</summary>
    public string Paper { get; init; } = "";

    /// <summary>How many pieces there are.</summary>
    public int Count { get; init; } = 1;

    /// <summary>
    /// The rows of a list, in its order. Copies of one line are one row if their text is the same, so equal parts that differ by a
    /// nanometre do not split it. Groups are left out: there is nothing to cut or stick.
    /// </summary>
    public static ImmutableArray<SizeRow> Of(SizeList list, LengthFormat lengths)
    {
        var rows = new List<SizeRow>();
        var places = new Dictionary<SizeRow, int>();
        foreach (var entry in list.Entries.Where(e => e.Kind != PieceKind.Group))
        {
            var row = RowOf(entry, lengths);
            var likeness = row with { First = list.Entries[0] };
            if (places.TryGetValue(likeness, out var place))
            {
                rows[place] = rows[place] with { Count = rows[place].Count + 1 };
            }
            else
            {
                places[likeness] = rows.Count;
                rows.Add(row);
            }
        }

        return [.. rows];
    }

    private static SizeRow RowOf(SizeEntry entry, LengthFormat lengths)
    {
        var cut = entry.Cut is { } size ? Text(size) : "";
        var finished = Text(entry.Finished);
        return new(
            entry.Path.WithoutCopies,
            (entry.Words is { } words ? $"{entry.KindWord} \"{words.ReplaceLineEndings(" / ")}\"" : entry.KindWord)
                + (entry.Parts > 1 ? $", {entry.Parts.ToString(CultureInfo.InvariantCulture)} parts" : ""),
            entry)
        {
            Cut = cut,
            Finished = finished == cut ? "" : finished,
            Border = entry.Border is { } border ? lengths.Text(border) : "",
            Role = entry.Paint.Role ?? "",
            Paper = PaperOf(entry.Paint),
        };

        string Text(Size size) => entry.IsReadyMade ? lengths.ReadyMade(size) : lengths.Text(size);
    }

    /// <summary>Most papers are used front side up, so only the back is named.</summary>
    private static string PaperOf(Paint paint) =>
        paint.AnyOffcut ? paint.OffcutName : paint is { Paper: { } name, Side: PaperSide.Front } ? name : PaperText.Of(paint) ?? "";
}
