using Sketch.Units;

namespace Sketch.Stationery;

/// <summary>How a card goes into an envelope, worst first.</summary>
public enum EnvelopeVerdict
{
    /// <summary>It does not go in: no room is left in one direction.</summary>
    TooLarge,

    /// <summary>It goes in, but is hard to put in or take out.</summary>
    Tight,

    /// <summary>Right for a flat card; a front with foam or gems needs more.</summary>
    Close,

    /// <summary>Roomy enough for raised fronts.</summary>
    Good,
}

/// <summary>
/// A closed card compared with its envelope; card and envelope are laid long side to long side, whichever way up they are given.
/// </summary>
/// <param name="Long">How much longer the envelope is than the card, in total; negative when it is shorter.</param>
/// <param name="Short">How much the envelope is larger along the short side, in total.</param>
/// <param name="Turned">Whether the card as given lies the other way up than the envelope as given.</param>
public sealed record EnvelopeFit(Length Long, Length Short, bool Turned)
{
    /// <summary>
    /// Below this, in either direction, an envelope is tight: a total of 1/8 in, the least that the usual US envelopes leave (A1, A2).
    /// </summary>
    public static readonly Length TightBelow = Length.Inch(0, 1, 8);

    /// <summary>From this, in both directions, an envelope is good: a total of 1/4 in, as the larger US envelopes leave.</summary>
    public static readonly Length GoodFrom = Length.Inch(0, 1, 4);

    /// <summary>How the card goes in, by the smaller of the two clearances.</summary>
    public EnvelopeVerdict Verdict
    {
        get
        {
            var least = Length.Min(Long, Short);
            return least <= Length.Zero ? EnvelopeVerdict.TooLarge
                : least < TightBelow ? EnvelopeVerdict.Tight
                : least < GoodFrom ? EnvelopeVerdict.Close
                : EnvelopeVerdict.Good;
        }
    }

    /// <summary>
    /// Compares a closed card with an envelope. Long side along long side leaves the most room, so no other way is tried.
    /// </summary>
    public static EnvelopeFit Of(Size closed, Size envelope) => new(
        LongSide(envelope) - LongSide(closed),
        ShortSide(envelope) - ShortSide(closed),
        closed.Width > closed.Height != envelope.Width > envelope.Height && closed.Width != closed.Height
            && envelope.Width != envelope.Height);

    private static Length LongSide(Size size) => Length.Max(size.Width, size.Height);

    private static Length ShortSide(Size size) => Length.Min(size.Width, size.Height);
}
