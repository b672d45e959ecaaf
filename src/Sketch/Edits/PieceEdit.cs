using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>The changes to a text that do what was wished of a piece.</summary>
/// <param name="Edits">The changes; none if nothing can be done or all is so already.</param>
/// <param name="Refusals">What of the wish the text does not allow.</param>
public sealed record PieceEdit(ImmutableArray<TextEdit> Edits, ImmutableArray<Refusal> Refusals)
{
    /// <summary>Where the line of the piece, or of its copy, begins after the changes; null where it stays what it was.</summary>
    public int? LineStart { get; init; }

    /// <summary>Changes that do all that was wished.</summary>
    internal static PieceEdit Of(IEnumerable<TextEdit> edits) => new([.. edits], []);

    /// <summary>No change, and why.</summary>
    internal static PieceEdit Refused(string reason, Offer? offer = null) => new([], [new(reason, offer)]);
}

/// <summary>Why something cannot be done with a piece.</summary>
/// <param name="Reason">The reason in sentences.</param>
/// <param name="Offer">What to do instead; null for nothing.</param>
public sealed record Refusal(string Reason, Offer? Offer);

/// <summary>What can be done instead.</summary>
/// <param name="Label">What it does, for a button.</param>
/// <param name="Of">The piece to which it is done.</param>
/// <param name="Wish">The size that it gets.</param>
public sealed record Offer(string Label, PiecePath Of, SizeWish Wish);
