using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>Where a piece can be taken hold of, and what its line allows.</summary>
/// <param name="Piece">The piece; the one above it if a mat or shadow was asked for.</param>
/// <param name="Box">The box of all copies of its line, with their mats, to which its place refers.</param>
/// <param name="Reference">What its distances are measured from.</param>
/// <param name="Across">From left to right.</param>
/// <param name="Down">From top to bottom.</param>
public sealed record PieceHold(Piece Piece, Rect Box, Rect Reference, AxisHold Across, AxisHold Down)
{
    /// <summary>All copies that its line makes here.</summary>
    public ImmutableArray<Piece> Copies { get; init; } = [];

    /// <summary>What its line says besides size and place.</summary>
    public PieceDescription Described { get; init; } = new("", []);

    /// <summary>Its mats, innermost first, each with what its line says.</summary>
    public ImmutableArray<(Piece Mat, PieceDescription Described)> Mats { get; init; } = [];
}

/// <summary>What the line of a piece says besides its size and place.</summary>
/// <param name="Text">The line as written, without indentation and comment at its end.</param>
/// <param name="Words">The words, one for each line or copy.</param>
public sealed record PieceDescription(string Text, ImmutableArray<string> Words)
{
    /// <summary>What stands after <c>of</c>; null where nothing does.</summary>
    public string? Paper { get; init; }

    /// <summary>The height of letters; null where none is written.</summary>
    public Length? Letters { get; init; }

    /// <summary>The kind of lettering; null where none is written.</summary>
    public string? Lettering { get; init; }

    /// <summary>What shows on every side; null where that is not written.</summary>
    public Length? Showing { get; init; }

    /// <summary>The height of the foam beneath; null for none.</summary>
    public Length? Foam { get; init; }

    /// <summary>Degrees clockwise by which it is turned on what it lies on.</summary>
    public double Turn { get; init; }
}

/// <summary>What the line of a piece allows in one direction.</summary>
/// <param name="Move">Why it cannot be moved; null when it can.</param>
/// <param name="Size">Why it cannot be resized; null when it can.</param>
/// <param name="Held">The edge from which it is measured; null for the middle, or where it cannot be resized.</param>
/// <param name="IsCentred">Whether it stands in the middle because nothing else is written.</param>
public sealed record AxisHold(Refusal? Move, Refusal? Size, Edge? Held, bool IsCentred);
