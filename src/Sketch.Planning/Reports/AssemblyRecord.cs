using System.Globalization;
using Sketch.Assembly;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Units;

namespace Sketch.Planning.Reports;

/// <summary>A step of the assembly of a card, as written in JSON.</summary>
internal sealed record AssemblyRecord
{
    public required int N { get; init; }

    public required IEnumerable<string> Pieces { get; init; }

    public required string Face { get; init; }

    public required string Action { get; init; }

    public required FoamRecord? Foam { get; init; }

    public required PlaceRecord? Place { get; init; }

    public required IEnumerable<PlaceRecord> Places { get; init; }

    public required string Text { get; init; }

    /// <summary>
    /// The steps by the title of the card. If two designs have the same title, the key of the second also names the line that makes it.
    /// </summary>
    public static Dictionary<string, IEnumerable<AssemblyRecord>> Of(IEnumerable<Design> designs)
    {
        var steps = new Dictionary<string, IEnumerable<AssemblyRecord>>();
        foreach (var design in designs)
        {
            var (card, line) = (design.Card, design.Order.Location.Start.Line.ToString(CultureInfo.InvariantCulture));
            var records = AssemblyOrder.Of(card).Select(s => Of(card, s));
            if (!steps.TryAdd(card.Title, records))
            {
                steps[$"{card.Title} (line {line})"] = records;
            }
        }

        return steps;
    }

    private static AssemblyRecord Of(LaidOutCard card, AssemblyStep step) => new()
    {
        N = step.Number,
        Pieces = step.Pieces.IsEmpty ? [PiecePath.Base.ToString()] : step.Pieces.Select(p => p.Path.ToString()),
        Face = Panels.Face.NameOf(step.Face),
        Action = step.Action.ToString().ToLowerInvariant(),
        Foam = step.Foam > Length.Zero ? new(step.Foam, step.FoamPads, step.FoamStrips) : null,
        Place = step.Places.IsEmpty ? null : PlaceRecord.Of(step.Places[0]),
        Places = step.Places.Select(PlaceRecord.Of),
        Text = StepText.Of(card, step),
    };
}

/// <summary>The foam of a step: its height, and an estimate of the pads or the length of strip for all its pieces.</summary>
internal sealed record FoamRecord(Length Height, long Pads, Length Strips);

/// <summary>The distances of a piece from the edges of what it lies on, and its turn in degrees clockwise.</summary>
internal sealed record PlaceRecord(string? On, Length Left, Length Top, Length Right, Length Bottom, double Turn)
{
    public static PlaceRecord Of(PiecePlace place) =>
        new(place.On?.Path.ToString(), place.Left, place.Top, place.Right, place.Bottom, place.Turn);
}
