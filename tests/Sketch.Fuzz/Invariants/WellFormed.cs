using System.Text.Json;
using System.Xml;

namespace Sketch.Fuzz.Invariants;

/// <summary>What is written can be read by others.</summary>
internal static class WellFormed
{
    private static readonly XmlReaderSettings Strict = new() { DtdProcessing = DtdProcessing.Prohibit, CheckCharacters = true };

    /// <summary>The rule that SVG is well-formed XML with finite numbers.</summary>
    public static void Svg(string svg)
    {
        try
        {
            using var reader = XmlReader.Create(new StringReader(svg), Strict);
            while (reader.Read())
            {
                for (var more = reader.MoveToFirstAttribute(); more; more = reader.MoveToNextAttribute())
                {
                    var isBad = reader.LocalName is not ("id" or "class" or "href") && reader.Value.AsSpan() is var value
                        && (value.Contains("NaN", StringComparison.Ordinal) || value.Contains("Infinity", StringComparison.Ordinal));
                    BrokenInvariantException.Unless(!isBad, "numbers in SVG are finite", $"{reader.LocalName}=\"{reader.Value}\"");
                }
            }
        }
        catch (XmlException broken)
        {
            throw new BrokenInvariantException("SVG is well-formed", broken.Message);
        }
    }

    /// <summary>The rule that JSON can be parsed.</summary>
    public static JsonElement Json(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            return document.RootElement.Clone();
        }
        catch (JsonException broken)
        {
            throw new BrokenInvariantException("JSON is valid", broken.Message);
        }
    }

    /// <summary>The rule that each row of a CSV table has the same number of cells and no cell is a formula (RFC 4180).</summary>
    public static void Csv(string csv)
    {
        var rows = new List<List<string>>();
        var (row, cell, isQuoted) = (new List<string>(), new System.Text.StringBuilder(), false);
        for (var i = 0; i < csv.Length; i++)
        {
            switch (csv[i])
            {
                case '"' when isQuoted && i + 1 < csv.Length && csv[i + 1] == '"':
                    cell.Append(csv[i++]);
                    break;
                case '"':
                    isQuoted = !isQuoted;
                    break;
                case ',' when !isQuoted:
                    EndCell();
                    break;
                case '\n' when !isQuoted:
                    EndCell();
                    rows.Add(row);
                    row = [];
                    break;
                case '\r' when !isQuoted:
                    break;
                default:
                    cell.Append(csv[i]);
                    break;
            }
        }

        BrokenInvariantException.Unless(!isQuoted && row.Count == 0 && cell.Length == 0, "CSV ends with a whole row", csv[^Math.Min(80,
            csv.Length)..]);
        foreach (var cells in rows)
        {
            BrokenInvariantException.Unless(cells.Count == rows[0].Count, "rows of CSV are equally long", string.Join('|', cells));
            BrokenInvariantException.Unless(!cells.Exists(IsFormula), "no cell of CSV is a formula", string.Join('|', cells));
        }

        void EndCell()
        {
            row.Add(cell.ToString());
            cell.Clear();
        }

        static bool IsFormula(string cell) => cell.Length > 0 && cell[0] is '=' or '+' or '-' or '@' or '\t' or '\r'
            && !(cell.Length > 1 && char.IsAsciiDigit(cell[1]) && cell.All(c => char.IsAsciiDigit(c) || c is '-' or '.'));
    }
}
