using System.Collections.Immutable;

namespace Sketch.Rows;

/// <summary>What is offered to be typed into a field.</summary>
public enum FieldOffer
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>Patterns and colours.</summary>
    Looks,

    /// <summary>Named sheets.</summary>
    Sheets,

    /// <summary>Any number of sheets.</summary>
    Counts,

    /// <summary>Named envelopes.</summary>
    Envelopes,

    /// <summary>The papers of the stash, or of the stash that the batch names.</summary>
    Papers,

    /// <summary>The cards of the folder.</summary>
    Cards,

    /// <summary>The stashes of the folder.</summary>
    Stashes,
}

/// <summary>One value of a row.</summary>
public sealed record RowField
{
    private readonly RowPart _part;

    internal RowField(string name, string title, string example, RowPart part) =>
        (Name, Title, Example, _part) = (name, title, example, part);

    /// <summary>Its name, in which a row has no other field.</summary>
    public string Name { get; }

    /// <summary>What it is, for a label.</summary>
    public string Title { get; init; }

    /// <summary>A value that is valid whatever the units of the file.</summary>
    public string Example { get; init; }

    /// <summary>Whether every row of its kind must have it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Whether it is shown in the row itself, and not only when more is asked for.</summary>
    public bool IsMain { get; init; }

    /// <summary>The values to choose from, beside none; empty where it is typed. A single one is a box to tick.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>What is offered to be typed.</summary>
    public FieldOffer Offers { get; init; }

    /// <summary>How it is read and written.</summary>
    internal RowPart Part => _part;
}

/// <summary>What a row can be.</summary>
public sealed record RowKind
{
    private readonly Func<Func<string, string>, string> _head;

    internal RowKind(string word, string title, ImmutableArray<RowField> fields, Func<Func<string, string>, string> head) =>
        (Word, Title, Fields, _head) = (word, title, fields, head);

    /// <summary>The word that begins its line.</summary>
    public string Word { get; }

    /// <summary>What it is called.</summary>
    public string Title { get; }

    /// <summary>Its fields, in the order in which a line gives them.</summary>
    public ImmutableArray<RowField> Fields { get; init; }

    /// <summary>Finds a field by its name.</summary>
    public RowField? Find(string field) => Fields.FirstOrDefault(f => f.Name == field);

    /// <summary>A new line up to its first clause, from the values of its fields.</summary>
    internal string HeadOf(Func<string, string> value) => _head(value);
}
