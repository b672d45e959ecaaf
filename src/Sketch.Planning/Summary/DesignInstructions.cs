using System.Collections.Immutable;
using System.Globalization;
using Sketch.Assembly;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Stationery;
using Sketch.Text;

namespace Sketch.Planning.Summary;

/// <summary>How the cards of one design are made once their pieces are cut.</summary>
/// <param name="Design">The design.</param>
/// <param name="Title">Its title and how many are made.</param>
/// <param name="Introduction">What holds for all steps.</param>
/// <param name="Steps">The steps of the assembly.</param>
/// <param name="After">What follows: the inside and the envelope.</param>
public sealed record DesignInstructions(
    Design Design, string Title, string Introduction, ImmutableArray<AssemblyStep> Steps, ImmutableArray<ReportSection> After)
{
    /// <summary>The instructions for every design of a batch, in its order.</summary>
    public static ImmutableArray<DesignInstructions> Of(BatchFiles files) =>
        [.. files.Designs.Select(d => Of(d, MessageList.Of(files)))];

    /// <summary>A step as a sentence, with the foam for all cards.</summary>
    public string TextOf(AssemblyStep step)
    {
        var lengths = Design.Card.Units.Format();
        var inAll = step.FoamPads > 0 && Design.ToGlue > 1
            ? string.Create(CultureInfo.InvariantCulture, $" For all cards: {step.FoamPads * Design.ToGlue} pads or ")
                + $"{lengths.About(step.FoamStrips * Design.ToGlue)} of strip."
            : "";
        return StepText.Of(Design.Card, step) + inAll;
    }

    private static DesignInstructions Of(Design design, ImmutableArray<WrittenMessage> messages)
    {
        var cards = Counted.Of(design.ToEnclose, "card");
        var inARow = design.ToEnclose > 1 ? "Do each step for all cards before the next. " : "";
        return new(
            design,
            $"{design.Card.Title}: {cards}",
            $"{inARow}Stamp or print the words on a piece before it is glued. Distances are from the edges of what a piece lies on.",
            AssemblyOrder.Of(design.Card),
            [.. Inside(design, messages), .. Envelope(design.Card)]);
    }

    private static IEnumerable<ReportSection> Inside(Design design, ImmutableArray<WrittenMessage> messages)
    {
        var own = messages.Where(w => w.Design == design).ToList();
        if (own.Count == 0)
        {
            yield break;
        }

        var same = own.GroupBy(w => w.Message.ToString()).ToList();
        yield return new("Inside", same.Count == 1
            ? [.. own[0].Message.Lines.Select(m => $"Write or stamp: “{m}”")]
            : [.. same.Select(m => $"{string.Join(", ", m.Select(Whom).Distinct())}: “{m.Key}”")]);
    }

    private static string Whom(WrittenMessage written) => written.Person ?? written.For?.Whom ?? "Spare cards";

    private static IEnumerable<ReportSection> Envelope(LaidOutCard card)
    {
        var lengths = card.Units.Format();
        var face = card.Find(FaceKind.Envelope) ?? card.Find(FaceKind.EnvelopeBack);
        if (face is not null)
        {
            var name = face.SizeName is { } known ? $"{known}, " : "";
            yield return new("Envelope", [$"{name}{lengths.About(face.Size)}{(card.IsHandedOver ? ", handed over and not posted" : "")}."]);
        }
        else if (NamedSizes.UsualEnvelope(card.Base.Closed) is { } usual)
        {
            yield return new("Envelope", [$"The usual one is {usual.Name}, {lengths.About(usual.Size)}."]);
        }
    }
}
