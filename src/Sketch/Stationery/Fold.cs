namespace Sketch.Stationery;

/// <summary>How a card base is folded, looking at the front.</summary>
public enum Fold
{
    /// <summary>On the left: the card opens like a book.</summary>
    Left,

    /// <summary>At the top: the card stands like a tent.</summary>
    Top,

    /// <summary>On the left and right: the front is two doors that meet in the middle.</summary>
    Gate,

    /// <summary>
    /// In three equal panels like the letter z: the front folds back on the right to the panel behind it, that one on the left to the
    /// inside.
    /// </summary>
    Z,
}
