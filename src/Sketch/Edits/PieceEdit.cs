using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>The edits of a text that change a piece.</summary>
/// <param name="Edits">The changes; none if nothing can be done or all is so already.</param>
/// <param name="Refusals">What of the change the text does not allow.</param>
public sealed record PieceEdit(ImmutableArray<TextEdit> Edits, ImmutableArray<Refusal> Refusals)
{
    /// <summary>Where the line of the piece, or of its copy, begins after the changes; null where it stays what it was.</summary>
    public int? LineStart { get; init; }

    /// <summary>Edits that make the whole change.</summary>
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
/// <param name="Change">The size that it gets.</param>
public sealed record Offer(string Label, PiecePath Of, SizeChange Change);
