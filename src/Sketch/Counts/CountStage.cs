using System.Collections.Immutable;

namespace Sketch.Counts;

/// <summary>What a line of the log counts, in the order of work. Each stage includes the ones before it.</summary>
public enum CountStage
{
    /// <summary>All pieces of the card are cut.</summary>
    Cut,

    /// <summary>The front is glued.</summary>
    Glued,

    /// <summary>The inside is done.</summary>
    Inside,

    /// <summary>The card is in its envelope, and so finished.</summary>
    Enveloped,

    /// <summary>The card is given away or posted.</summary>
    Given,

    /// <summary>Not a stage: the pieces of a card are spoilt, so that they have to be cut again.</summary>
    Spoilt,
}

/// <summary>The words for stages.</summary>
public static class CountStages
{
    /// <summary>The stages of work, in their order.</summary>
    public static ImmutableArray<CountStage> OfWork { get; } =
        [CountStage.Cut, CountStage.Glued, CountStage.Inside, CountStage.Enveloped, CountStage.Given];

    /// <summary>All words that may be counted.</summary>
    public static ImmutableArray<string> Words { get; } = [.. OfWork.Select(Word), Word(CountStage.Spoilt)];

    /// <summary>The word for a stage, as on the command line and in the log.</summary>
    public static string Word(this CountStage stage) => stage switch
    {
        CountStage.Cut => "cut",
        CountStage.Glued => "glued",
        CountStage.Inside => "inside",
        CountStage.Enveloped => "enveloped",
        CountStage.Given => "given",
        _ => "spoilt",
    };

    /// <summary>What people read for a stage, on the page, in tables and beside boxes to tick.</summary>
    public static string Title(this CountStage stage) => stage switch
    {
        CountStage.Cut => "Cut",
        CountStage.Glued => "Glued",
        CountStage.Inside => "Inside done",
        CountStage.Enveloped => "In envelope",
        CountStage.Given => "Given",
        _ => "Spoilt",
    };

    /// <summary>The stage of a word, or null.</summary>
    public static CountStage? Of(string word) =>
        Words.IndexOf(word) is var index and >= 0 ? (CountStage)index : null;
}
