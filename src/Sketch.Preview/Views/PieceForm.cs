using System.Globalization;
using Sketch.Drawing;
using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Lettering;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Units;

namespace Sketch.Preview.Views;

/// <summary>
/// What the form of a piece shows. Lengths are written as a file may write them, without the unit; null for what it has not.
/// </summary>
/// <param name="Title">What it is, in words.</param>
/// <param name="Text">Its line as written.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
/// <param name="Place">Where it lies, in words.</param>
/// <param name="Distances">Its distances from edges of what it lies on; none in a direction in which it cannot be moved.</param>
/// <param name="Words">Its words, one for each line or copy; null if it holds none.</param>
/// <param name="Letters">The height of its letters; null if it holds no words, empty where none is written.</param>
/// <param name="Lettering">The kind of lettering; null if it holds no words, empty for that of the card.</param>
/// <param name="Letterings">The kinds of lettering.</param>
/// <param name="Paper">What it is made of, as written; null if it has no paper, empty where none is written.</param>
/// <param name="Papers">The roles of the card, then the plain colours.</param>
/// <param name="Showing">What shows on every side.</param>
/// <param name="Foam">The height of the foam beneath in millimetres; null if it cannot be raised, empty for none.</param>
/// <param name="Turn">Degrees clockwise; null if it cannot be turned.</param>
/// <param name="Mats">Its mats, innermost first.</param>
internal sealed record PieceForm(
    string Title,
    string Text,
    string Width,
    string Height,
    string Place,
    IEnumerable<DistanceField> Distances,
    IEnumerable<string>? Words,
    string? Letters,
    string? Lettering,
    IEnumerable<string> Letterings,
    string? Paper,
    IEnumerable<PaperChip> Papers,
    string? Showing,
    string? Foam,
    string? Turn,
    IEnumerable<MatForm> Mats)
{
    /// <summary>The form of a piece.</summary>
    /// <param name="card">The card.</param>
    /// <param name="hold">The piece and what its line says.</param>
    public static PieceForm Of(LaidOutCard card, PieceHold hold)
    {
        var (piece, said, format) = (hold.Piece, hold.Described, card.Units.Format());
        var holdsWords = piece.Kind.Traits.HoldsWords && piece.Matter != PieceMatter.Unseen;
        return new(
            PieceTitle.Of(piece, card.Units),
            said.Text,
            Mark(piece.Box.Width, format),
            Mark(piece.Box.Height, format),
            PlaceOf(card, hold),
            DistancesOf(hold, format),
            holdsWords ? said.Words : null,
            holdsWords ? said.Letters is { } letters ? format.Written(letters) : "" : null,
            holdsWords ? said.Lettering is { } kind && kind.StartsWith("lettering ", StringComparison.OrdinalIgnoreCase)
                ? kind["lettering ".Length..] : said.Lettering ?? "" : null,
            LetteringKinds.All.Select(k => k.Word),
            piece.Matter is PieceMatter.Unseen or PieceMatter.Hole ? null : said.Paper ?? "",
            PaperChip.All(card),
            said.Showing is { } showing ? format.Written(showing) : null,
            piece.Kind.Traits.IsInkOrHole ? null : said.Foam is { } foam ? LengthFormat.MillimetreNumber(foam) : "",
            piece.Matter == PieceMatter.Hole ? null : said.Turn.ToString("0.##", CultureInfo.InvariantCulture),
            hold.Mats.Select(m => new MatForm(
                m.Mat.Path.ToString(),
                m.Mat is { Border: { IsEven: true } border } ? Mark(border.Left, format) : null,
                m.Mat.Border is { } uneven ? format.Text(uneven) : "",
                m.Described.Paper ?? "")));
    }

    /// <summary>From the edge that is written, else from the nearer one.</summary>
    private static IEnumerable<DistanceField> DistancesOf(PieceHold hold, LengthFormat format)
    {
        var (box, around) = (hold.Box, hold.Reference);
        return new[]
        {
            On(hold.Across, (Edge.Left, box.Left - around.Left), (Edge.Right, around.Right - box.Right)),
            On(hold.Down, (Edge.Top, box.Top - around.Top), (Edge.Bottom, around.Bottom - box.Bottom)),
        }.OfType<DistanceField>();

        DistanceField? On(AxisHold axis, (Edge Edge, Length Distance) low, (Edge Edge, Length Distance) high)
        {
            var (edge, distance) = axis.Held == low.Edge || (axis.Held != high.Edge && low.Distance <= high.Distance) ? low : high;
            return axis.Move is null ? new(edge.Name(), Mark(distance, format)) : null;
        }
    }

    /// <summary>Where a piece lies, from the nearer edges of what it lies on: "1/4 in from the left, 3/8 in from the top".</summary>
    public static string PlaceOf(LaidOutCard card, PieceHold hold)
    {
        var (box, around, format) = (hold.Box, hold.Reference, card.Units.Format());
        return $"{Side(box.Left - around.Left, around.Right - box.Right, "left", "right", "left to right")}, "
            + Side(box.Top - around.Top, around.Bottom - box.Bottom, "top", "bottom", "top to bottom");

        string Side(Length low, Length high, string lowName, string highName, string middle) =>
            (low - high).Abs() <= LengthFormat.Crumb ? $"in the middle from {middle}"
                : low <= high ? From(low, lowName) : From(high, highName);

        string From(Length distance, string name) => distance < Length.Zero
            ? $"{format.About(-distance)} past the {name}" : $"{format.About(distance)} from the {name}";
    }

    private static string Mark(Length length, LengthFormat format) =>
        format.Metric || LengthFormat.IsOnMark(length, LengthFormat.FinestMarks) ? format.Written(length) : format.Text(length);
}

/// <summary>A distance from an edge.</summary>
/// <param name="Edge">left, right, top or bottom.</param>
/// <param name="Distance">The distance as a file may write it.</param>
internal sealed record DistanceField(string Edge, string Distance);

/// <summary>A mat in the form of its piece.</summary>
/// <param name="Piece">Its path.</param>
/// <param name="Border">What it shows on each side; null if that differs.</param>
/// <param name="Shown">What it shows, in words.</param>
/// <param name="Paper">What it is made of, as written.</param>
internal sealed record MatForm(string Piece, string? Border, string Shown, string Paper);

/// <summary>A paper to choose, with its colour.</summary>
/// <param name="Name">The role or colour as written after <c>of</c>.</param>
/// <param name="Colour">Its ground in hex digits with the sign.</param>
/// <param name="IsRole">Whether it is a role of the card.</param>
internal sealed record PaperChip(string Name, string Colour, bool IsRole)
{
    /// <summary>The roles of a card, then the plain colours.</summary>
    public static IEnumerable<PaperChip> All(LaidOutCard card) =>
        card.Roles.Select(r => new PaperChip(r.Name, r.Paint.Look.Ground.Hex, true))
            .Concat(ColourWords.All.Select(w => new PaperChip(w, BuiltIn.Find(w, [])!.Ground.Hex, false)).DistinctBy(p => p.Colour));
}
