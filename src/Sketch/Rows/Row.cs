using System.Collections.Immutable;

namespace Sketch.Rows;

/// <summary>A line of a stash or batch as a row of a table.</summary>
/// <param name="Kind">What it lists: the word that begins its line, such as <c>paper</c> or <c>make</c>.</param>
/// <param name="Line">The number of its line, from 1.</param>
/// <param name="Cells">What is written in it, for each field of its kind in their order; empty for what is not.</param>
public sealed record Row(string Kind, int Line, ImmutableArray<string> Cells)
{
    /// <summary>Why its cells cannot be changed here; null where they can.</summary>
    public string? Locked { get; init; }
}

/// <summary>Rows of like things.</summary>
/// <param name="Title">What they are, for a heading.</param>
/// <param name="One">One of them, for a button that adds one.</param>
/// <param name="Kinds">The kinds of row that it has.</param>
/// <param name="Rows">The rows, in the order of the text.</param>
public sealed record RowTable(string Title, string One, ImmutableArray<RowKind> Kinds, ImmutableArray<Row> Rows)
{
    /// <summary>Whether rows can be added and deleted: what a file says of itself is always one row.</summary>
    public bool IsList { get; init; } = true;
}
