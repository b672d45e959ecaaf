using Sketch.Planning.Demand;
using Sketch.Planning.Post;
using Sketch.Units;

namespace Sketch.Planning.Reports;

/// <summary>A card in its envelope, and as what each postal service carries it.</summary>
internal sealed record PostRecord
{
    public required string Card { get; init; }

    public required string? Envelope { get; init; }

    public required SizeRecord EnvelopeSize { get; init; }

    public required SpreadRecord<Length> Thickness { get; init; }

    public required SpreadRecord<double> Weight { get; init; }

    public required IEnumerable<PostalVerdict> Services { get; init; }

    public static IEnumerable<PostRecord> Of(BatchFiles files) =>
        from design in files.Posted
        let item = PostalItem.Of(design.Card, files.Stash)
        where item is not null
        select new PostRecord
        {
            Card = design.Card.Title,
            Envelope = item.EnvelopeName,
            EnvelopeSize = new(item.Envelope.Width, item.Envelope.Height),
            Thickness = new(Millimetres(item.Thickness.Low), Millimetres(item.Thickness.High)),
            Weight = new(Math.Round(item.Weight.Low, 3), Math.Round(item.Weight.High, 3)),
            Services = PostalVerdict.Of(item, files.LetterClasses),
        };

    private static Length Millimetres(double measure) => Length.Millimetre(Math.Round((decimal)measure, 4));
}

/// <summary>A measure that is not known exactly; a weight is in grams.</summary>
internal sealed record SpreadRecord<T>(T Low, T High);
