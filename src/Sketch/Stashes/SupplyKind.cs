namespace Sketch.Stashes;

/// <summary>The kinds of thing that are not paper; <see cref="SupplyKinds"/> holds their words and traits.</summary>
public enum SupplyKind
{
    /// <summary>Stick-on or foil line.</summary>
    Line,

    /// <summary>Gems.</summary>
    Gem,

    /// <summary>Domed dots.</summary>
    Dot,

    /// <summary>Brads.</summary>
    Brad,

    /// <summary>Buttons.</summary>
    Button,

    /// <summary>Bows.</summary>
    Bow,

    /// <summary>Stickers.</summary>
    Sticker,

    /// <summary>Tape.</summary>
    Tape,

    /// <summary>Ribbon.</summary>
    Ribbon,

    /// <summary>Twine.</summary>
    Twine,

    /// <summary>Rubber stamps, which are not used up.</summary>
    Stamp,

    /// <summary>Dies, which are not used up.</summary>
    Die,

    /// <summary>Envelopes.</summary>
    Envelope,

    /// <summary>Foam.</summary>
    Foam,

    /// <summary>Adhesive; a stash lists it as tape with that name.</summary>
    Adhesive,
}
