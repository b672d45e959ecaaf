using Sketch.Text;
using Sketch.Units;

namespace Sketch.Stashes;

/// <summary>Something in the stash that is not paper.</summary>
/// <param name="Kind">What.</param>
/// <param name="Name">Its name.</param>
/// <param name="Location">The line that lists it.</param>
public sealed record Supply(SupplyKind Kind, string Name, Location Location)
{
    /// <summary>Width of line, tape, ribbon and what is stuck on, thickness of foam; null for what has width and height.</summary>
    public Length? Measure { get; init; }

    /// <summary>Width and height of an envelope (landscape), a sticker, stamp or die; null for the rest.</summary>
    public Size? Size { get; init; }

    /// <summary>Pieces on hand, or null when it is counted by length.</summary>
    public int? Pieces { get; init; }

    /// <summary>Length on hand, all strips or rolls together; null when it is counted by pieces.</summary>
    public Length? Long { get; init; }

    /// <summary>The number of strips or rolls on hand, each as long as the others; null when their number does not matter.</summary>
    public int? Strips { get; init; }

    /// <summary>Whether they are called rolls.</summary>
    public bool IsOnRolls { get; init; }

    /// <summary>The length of a strip or roll; null when the number of strips does not matter.</summary>
    public Length? StripLength { get; init; }

    /// <summary>How it looks; null when its line does not describe it.</summary>
    public PaperFace? Face { get; init; }

    /// <summary>Price of a piece, strip or roll in the file's currency; null when not known.</summary>
    public decimal? Price { get; init; }
}
