using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stationery;

namespace Sketch.Checks;

/// <summary>
/// Envelopes that are no plain letter because of their size or shape, such as square and small ones: a note, for the services of the units
/// in which the card is written. Cards that are handed over are left out.
/// </summary>
internal sealed class LetterSize : IFitRule
{
    private static readonly string[] Inches = ["US Postal Service"];
    private static readonly string[] Metric = ["Royal Mail", "Post abroad (UPU)"];

    public void Check(FitView view, FindingBag findings)
    {
        var card = view.Card;
        var face = card.Find(FaceKind.Envelope) ?? card.Find(FaceKind.EnvelopeBack);
        var usual = NamedSizes.UsualEnvelope(card.Base.Closed);
        if (card.IsHandedOver || (face?.Size ?? usual?.Size) is not { } envelope)
        {
            return;
        }

        foreach (var service in card.Units == UnitSystem.Inches ? Inches : Metric)
        {
            var letter = LetterClass.Known.First(c => c.Service == service);
            var reasons = letter.AgainstSize(envelope).Concat(letter.AgainstRatio(envelope) is { } ratio ? [ratio] : []).ToList();
            if (reasons.Count > 0)
            {
                findings.Add(FindingCatalogue.NoPlainLetter, face?.Location ?? card.Base.Location,
                    $"{service}: the envelope, {face?.SizeName ?? usual?.Name ?? view.Say.Size(envelope)}, is no plain letter. "
                        + string.Join(" ", reasons),
                    "The local post office decides. The clause by hand says that a card is not posted.");
            }
        }
    }
}
