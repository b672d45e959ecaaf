using System.Text.Json;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>The papers of a stash as swatches at true scale.</summary>
public static class StashView
{
    private static readonly Size Swatched = new(Length.Inch(1, 1, 4), Length.Inch(1, 1, 4));

    /// <summary>Writes the property <c>papers</c>: each side with the choice that assigns it to a role.</summary>
    public static void Write(Utf8JsonWriter json, Stash? stash)
    {
        json.WriteStartArray("papers");
        foreach (var paper in stash?.Papers ?? [])
        {
            Side(json, stash!, paper, PaperSide.Front);
            if (paper.Kind == StockKind.Patterned)
            {
                Side(json, stash!, paper, PaperSide.Back);
            }
        }

        json.WriteEndArray();
    }

    private static void Side(Utf8JsonWriter json, Stash stash, StockPaper paper, PaperSide side)
    {
        var face = paper.Side(side);
        var name = paper.Kind == StockKind.Cardstock ? paper.Name : $"{paper.Name}, {(side == PaperSide.Back ? "back" : "front")}";
        json.WriteStartObject();
        json.WriteString("choice", side == PaperSide.Back ? $"{paper.Name}/back" : paper.Name);
        json.WriteString("name", face.Label is { } label ? $"{name} ({label})" : name);
        json.WriteString("stock", Stock(stash, paper));
        json.WriteNumber("line", paper.Location.Start.Line);
        json.WriteString("svg", Swatch.Draw(face.Look, Swatched, name, stash.Units));
        json.WriteEndObject();
    }

    private static string Stock(Stash stash, StockPaper paper)
    {
        var sheets = paper.Sheets switch
        {
            null => "any sheets",
            { } count => Counted.Of(count, "sheet"),
        };
        var offcuts = stash.OffcutsOf(paper).Sum(o => o.Count);
        return $"{sheets}, {PieceTitle.Size(paper.Size, stash.Units)}"
            + (offcuts > 0 ? $", {Counted.Of(offcuts, "offcut")}" : "")
            + (paper.Upright ? ", print stands upright" : "");
    }
}
