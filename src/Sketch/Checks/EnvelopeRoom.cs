using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Whether the closed card goes into the envelope that the file names, else into the usual one for its size. A front thicker than 1 mm
/// takes up its thickness in both directions (common practice, no source); as foam compresses and seldom reaches the edge, that alone is
/// never more than a note, and not even that in the usual envelope of this size or where the card is handed over.
/// </summary>
internal sealed class EnvelopeRoom : IFitRule
{
    private static readonly Length ThickFrom = Length.Millimetre(1);

    public void Check(FitView view, FindingBag findings)
    {
        var card = view.Card;
        var face = card.Find(FaceKind.Envelope) ?? card.Find(FaceKind.EnvelopeBack);
        var usual = NamedSizes.UsualEnvelope(card.Base.Closed);
        if ((face?.Size ?? usual?.Size) is not { } envelope)
        {
            return;
        }

        var thickness = StackHeight.Of(card).Front is var front && front > ThickFrom ? front : Length.Zero;
        var flat = EnvelopeFit.Of(card.Base.Closed, envelope);
        var thick = new EnvelopeFit(flat.Long - thickness, flat.Short - thickness, flat.Turned);
        var room = new Room(view, findings, face?.Location ?? card.Base.Location, Called(view, face, usual), thickness);
        if (flat.Verdict == EnvelopeVerdict.TooLarge)
        {
            room.Report(FindingCatalogue.TooLargeForEnvelope,
                $"The card, {view.Say.Size(card.Base.Closed)}, does not fit {room.Envelope}: {Missing(view, flat)}.");
        }
        else if (flat.Verdict == EnvelopeVerdict.Tight)
        {
            room.Report(FindingCatalogue.TightEnvelope,
                $"The card, {view.Say.Size(card.Base.Closed)}, is tight in {room.Envelope}, which is only "
                    + $"{view.Say.Length(Length.Min(flat.Long, flat.Short))} larger one way.");
        }
        else if (face is null || card.IsHandedOver || (thickness > Length.Zero && envelope == usual?.Size))
        {
            return;
        }
        else if (thick.Verdict == EnvelopeVerdict.TooLarge)
        {
            room.Report(FindingCatalogue.CloseEnvelope,
                $"With a front about {LengthFormat.Millimetres(thickness)} thick the card fills {room.Envelope}, which is only "
                    + $"{view.Say.Length(Length.Min(flat.Long, flat.Short))} larger one way.");
        }
        else if (thick.Verdict == EnvelopeVerdict.Tight || Length.Max(flat.Long, flat.Short) < EnvelopeFit.GoodFrom)
        {
            var beside = thickness > Length.Zero ? $" beside a front about {LengthFormat.Millimetres(thickness)} thick" : "";
            room.Report(FindingCatalogue.CloseEnvelope,
                $"The card leaves {view.Say.Length(thick.Long)} along and "
                + $"{view.Say.Length(thick.Short)} across in {room.Envelope}{beside}.");
        }
    }

    private static string Called(FitView view, Face? face, NamedSize? usual) =>
        face is { SizeName: { } name } ? $"its envelope, {name} ({view.Say.Size(face.Size)})"
        : face is not null ? $"its envelope of {view.Say.Size(face.Size)}"
        : $"the usual envelope for its size, {usual!.Name} ({view.Say.Size(usual.Size)})";

    private static string Missing(FitView view, EnvelopeFit fit)
    {
        var missing = new List<string>();
        if (fit.Long <= Length.Zero)
        {
            missing.Add($"the long side {Short(fit.Long)}");
        }

        if (fit.Short <= Length.Zero)
        {
            missing.Add($"the short side {Short(fit.Short)}");
        }

        return CheckText.List(missing);

        string Short(Length by) => by == Length.Zero ? "is just as long" : $"is {view.Say.Length(-by)} too long";
    }

    /// <summary>Where to report, which envelope to name, and what to take instead.</summary>
    private sealed record Room(FitView View, FindingBag Findings, Location Location, string Envelope, Length Thickness)
    {
        public void Report(FindingKind kind, string message)
        {
            // An envelope that this rule accepts when the file names it.
            var needed = Length.Max(EnvelopeFit.TightBelow + Thickness, EnvelopeFit.GoodFrom);
            var larger = NamedSizes.Envelopes
                .Where(e => EnvelopeFit.Of(View.Card.Base.Closed, e.Size) is var fit
                    && Length.Min(fit.Long, fit.Short) >= EnvelopeFit.TightBelow + Thickness
                    && Length.Max(fit.Long, fit.Short) >= EnvelopeFit.GoodFrom)
                .MinBy(e => (Int128)e.Size.Width.Nanometres * e.Size.Height.Nanometres);
            var least = new Size(
                View.Say.UpToMark(View.Card.Base.Closed.Width + needed), View.Say.UpToMark(View.Card.Base.Closed.Height + needed));
            Findings.Add(kind, Location, message, larger is null
                ? $"It needs an envelope of at least {View.Say.Size(least)}."
                : $"Take a larger one, such as envelope {larger.Name}, or make the card smaller or flatter.");
        }
    }
}
