using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Rows;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>A stash or batch as tables that can be changed.</summary>
/// <param name="Tables">The tables.</param>
/// <param name="Offers">What is offered to be typed.</param>
/// <param name="Missing">What of the text no table shows, in a sentence; empty for nothing.</param>
internal sealed record RowsView(IEnumerable<TableView> Tables, IEnumerable<OfferedView> Offers, string Missing)
{
    private static readonly Size Swatched = new(Length.Inch(0, 3, 8), Length.Inch(0, 3, 8));

    /// <summary>The tables of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="own">The stash, if the text is one; its papers are shown beside their rows.</param>
    /// <param name="papers">The stash whose papers are offered; null for none.</param>
    /// <param name="files">The files that can be named, beside this one and below.</param>
    public static RowsView Of(SourceText text, Stash? own, Stash? papers, IReadOnlyList<string> files) => new(
        RowEditing.Tables(text).Select(t => TableView.Of(t, line => SwatchesOf(own, line))),
        [
            new(nameof(FieldOffer.Looks), BuiltIn.PatternWords.Concat(ColourWords.All).Distinct()),
            new(nameof(FieldOffer.Sheets), NamedSizes.Sheets.Select(s => s.Name)),
            new(nameof(FieldOffer.Counts), ["any sheets"]),
            new(nameof(FieldOffer.Envelopes), NamedSizes.Envelopes.Select(s => s.Name)),
            new(nameof(FieldOffer.Papers), papers?.Papers.Select(p => p.Name) ?? []),
            new(nameof(FieldOffer.Cards), Ending(files, ".card")),
            new(nameof(FieldOffer.Stashes), Ending(files, ".stash")),
        ],
        RowEditing.UnreadLines(text) switch
        {
            0 when RowEditing.Tables(text).IsEmpty =>
                "The text does not begin with the title of a stash or batch. Its findings say what to write.",
            0 => "",
            1 => "One line of the text cannot be read, so it is missing here. Its finding says how to fix it.",
            var count => $"{count} lines of the text cannot be read, so they are missing here. Their findings say how to fix them.",
        });

    private static IEnumerable<string> Ending(IReadOnlyList<string> files, string ending) =>
        files.Where(f => f.EndsWith(ending, StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<string> SwatchesOf(Stash? stash, int line)
    {
        if (stash?.Papers.FirstOrDefault(p => p.Location.Start.Line == line) is not { } paper)
        {
            return [];
        }

        PaperSide[] sides = paper.Kind == StockKind.Patterned ? [PaperSide.Front, PaperSide.Back] : [PaperSide.Front];
        return sides.Select(side => Swatch.Draw(paper.Side(side).Look, Swatched, paper.Name, stash.Units));
    }
}

/// <summary>Values that a field offers to be typed.</summary>
/// <param name="Name">The name of the offer.</param>
/// <param name="Values">The values.</param>
internal sealed record OfferedView(string Name, IEnumerable<string> Values);

/// <summary>Rows of like things.</summary>
/// <param name="Title">Their heading.</param>
/// <param name="One">One of them, for a button that adds one.</param>
/// <param name="IsList">Whether rows can be added and deleted.</param>
/// <param name="Kinds">What its rows can be.</param>
/// <param name="Rows">The rows.</param>
internal sealed record TableView(string Title, string One, bool IsList, IEnumerable<KindView> Kinds, IEnumerable<RowView> Rows)
{
    /// <summary>A table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="swatches">The pictures beside the row of a line.</param>
    public static TableView Of(RowTable table, Func<int, IEnumerable<string>> swatches) => new(
        table.Title,
        table.One,
        table.IsList,
        table.Kinds.Select(s => new KindView(s.Word, s.Title, s.Fields.Select(f =>
            new FieldView(f.Name, f.Title, f.Example, f.IsNeeded, f.IsMain, f.Choices, f.Offers.ToString())))),
        table.Rows.Select(r => new RowView(r.Kind, r.Line, r.Cells, r.Locked, swatches(r.Line))));
}

/// <summary>What a row can be.</summary>
internal sealed record KindView(string Word, string Title, IEnumerable<FieldView> Fields);

/// <summary>A field of a row.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">Its label.</param>
/// <param name="Example">A value to show where there is none.</param>
/// <param name="IsNeeded">Whether it cannot be empty.</param>
/// <param name="IsMain">Whether it is shown in the row itself.</param>
/// <param name="Choices">The values to choose from; none where it is typed.</param>
/// <param name="Offers">The name of what is offered to be typed.</param>
internal sealed record FieldView(
    string Name, string Title, string Example, bool IsNeeded, bool IsMain, IEnumerable<string> Choices, string Offers);

/// <summary>A row.</summary>
/// <param name="Kind">The word of its kind.</param>
/// <param name="Line">Its line.</param>
/// <param name="Cells">Its values, in the order of the fields of its kind.</param>
/// <param name="Locked">Why it cannot be changed here; null where it can.</param>
/// <param name="Swatches">Pictures of what it lists.</param>
internal sealed record RowView(string Kind, int Line, IEnumerable<string> Cells, string? Locked, IEnumerable<string> Swatches);

/// <summary>What came of something done to a row.</summary>
/// <param name="Text">The text after it; the same text where nothing was done.</param>
/// <param name="Said">What was done, in a sentence to be read aloud.</param>
/// <param name="Refused">Why nothing was done; empty where something was.</param>
internal sealed record RowDone(string Text, string Said, string Refused);
