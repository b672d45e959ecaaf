using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>A change of one piece of a card; <see cref="PieceEditing"/> writes it into the text.</summary>
public abstract record PieceChange;

/// <summary>Move it, with its mats and all that lies on it, as if nothing were turned.</summary>
/// <param name="Across">How far to the right; negative to the left.</param>
/// <param name="Down">How far down; negative up.</param>
public sealed record MoveChange(Length Across, Length Down) : PieceChange
{
    /// <summary>Whether it is to stay in the middle from left to right, and from top to bottom, wherever that is.</summary>
    public (bool Across, bool Down) Centred { get; init; }
}

/// <summary>Move it so that it lies that far from an edge of what it lies on.</summary>
public sealed record PlaceChange(Edge From, Length Distance) : PieceChange;

/// <summary>Make it larger or smaller.</summary>
/// <param name="Width">The new width without mats; null to leave it.</param>
/// <param name="Height">The new height without mats; null to leave it.</param>
public sealed record SizeChange(Length? Width, Length? Height) : PieceChange
{
    /// <summary>The edges that stay where they are; null where the place that is written decides.</summary>
    public (Edge? Across, Edge? Down) Held { get; init; }

    /// <summary>Whether what gives the size now is given up: <c>full</c>, <c>showing</c>, <c>same size as</c>, its words.</summary>
    public bool LetsGo { get; init; }
}

/// <summary>Turn it to that many degrees clockwise in total; 0 to lie straight.</summary>
public sealed record TurnChange(double Degrees) : PieceChange;

/// <summary>Put foam of that height beneath it; null for none.</summary>
public sealed record FoamChange(Length? Height) : PieceChange;

/// <summary>Write other words, one for each line or copy; none to leave it without words.</summary>
public sealed record WordsChange(ImmutableArray<string> Lines) : PieceChange;

/// <summary>Make its letters that high; null for the usual height.</summary>
public sealed record LettersChange(Length? Height) : PieceChange;

/// <summary>Take a kind of lettering; null for that of the card.</summary>
public sealed record LetteringChange(string? Kind) : PieceChange;

/// <summary>Make it of another role, paper or colour, as written after <c>of</c>.</summary>
public sealed record PaperChange(string Paper) : PieceChange;

/// <summary>Let a mat show that much on each side.</summary>
public sealed record BorderChange(Length Border) : PieceChange;

/// <summary>Let that much of what lies below show on every side.</summary>
public sealed record ShowingChange(Length Amount) : PieceChange;

/// <summary>Lay it over the next piece, or under the one before.</summary>
public sealed record OrderChange(bool Up) : PieceChange;

/// <summary>Put a copy of it on top, a little further to the right and down.</summary>
public sealed record CopyChange : PieceChange;

/// <summary>Take it away with its mats and all that lies on it.</summary>
public sealed record DeleteChange : PieceChange;
