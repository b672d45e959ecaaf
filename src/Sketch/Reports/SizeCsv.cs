using System.Globalization;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Reports;

/// <summary>
/// The size list as comma-separated values for a spreadsheet. Lengths are decimal
/// numbers, since a spreadsheet reads 3/4 as a date; the column <c>unit</c> gives the unit.
/// </summary>
public static class SizeCsv
{
    /// <summary>Writes the line of column names, once before all cards.</summary>
    public static void WriteHeader(TextWriter output) => output.Write(
        "file,card,face,piece,kind,count,unit,cut_width,cut_height,finished_width,finished_height,"
        + "border_left,border_right,border_top,border_bottom,role,paper\r\n");

    /// <summary>Writes one line for each kind of piece of a card.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="list">The card's pieces.</param>
    /// <param name="file">The name of its file.</param>
    /// <param name="lengths">Inches to 6 decimals, or millimetres.</param>
    public static void Write(TextWriter output, SizeList list, string file, LengthFormat lengths)
    {
        foreach (var row in SizeRow.Of(list, lengths))
        {
            var entry = row.First;
            string[] cells =
            [
                CsvText.Words(file), CsvText.Words(list.Card.Title), Face.NameOf(entry.Face),
                CsvText.Words(row.Path.ToString()), entry.KindWord,
                    row.Count.ToString(CultureInfo.InvariantCulture),
                lengths.Unit,
                Number(entry.Cut?.Width), Number(entry.Cut?.Height), Number(entry.Finished.Width), Number(entry.Finished.Height),
                Number(entry.Border?.Left), Number(entry.Border?.Right), Number(entry.Border?.Top), Number(entry.Border?.Bottom),
                CsvText.Words(row.Role), CsvText.Words(row.Paper),
            ];
            output.Write(CsvText.Line(cells));
        }

        string Number(Length? length) => length is { } known ? lengths.Number(known) : "";
    }
}
