using System.Collections.Frozen;
using System.Collections.Immutable;
using Sketch.Stashes;

namespace Sketch.Rows;

/// <summary>All kinds of row, by the word that begins their lines.</summary>
internal static class RowKinds
{
    private static readonly FrozenDictionary<string, RowKind> Table =
        StockRows.All.Concat(BatchRows.All).ToFrozenDictionary(s => s.Word, StringComparer.OrdinalIgnoreCase);

    /// <summary>The tables of a stash, without rows.</summary>
    public static ImmutableArray<RowTable> OfStash { get; } =
    [
        new("This stash", "", [StockRows.Title], []) { IsList = false },
        new("Papers", "a paper", [Table["paper"]], []),
        new("Cardstock", "cardstock", [Table["cardstock"]], []),
        new("Offcuts", "an offcut", [Table["offcut"]], []),
        new("Supplies", "a supply", [.. SupplyKinds.Lines.Select(k => Table[k.Traits.Word])], []),
    ];

    /// <summary>The tables of a batch, without rows.</summary>
    public static ImmutableArray<RowTable> OfBatch { get; } =
    [
        new("This batch", "", [BatchRows.Title], []) { IsList = false },
        new("Designs", "a design", [Table["make"]], []),
        new("Recipients", "a recipient", [Table["for"]], []),
        new("Finished cards on hand", "finished cards", [Table["use"]], []),
        new("Loose pieces to cut", "loose pieces", [Table["cut"]], []),
    ];

    /// <summary>The kind that a word begins; null for none.</summary>
    public static RowKind? Find(string word) => Table.GetValueOrDefault(word);
}
